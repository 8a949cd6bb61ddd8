package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import gudgeon.rebuild.journal.Handing.LessonDecided;
import java.util.List;

/** The forms of facts about handing on. */
final class HandingForms {
    private HandingForms() {}

    static final List<FactForm<?>> ALL = List.of(form(
            "lesson-decided",
            LessonDecided.class,
            (fact, to) -> to.put("lesson", fact.lesson())
                    .put("accepted", fact.accepted())
                    .put("why", fact.why()),
            from -> new LessonDecided(from.said("lesson"), from.yes("accepted"), from.text("why"))));
}
