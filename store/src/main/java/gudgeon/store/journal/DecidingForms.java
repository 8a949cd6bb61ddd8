package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionDropped;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Deciding.OptionTaken;
import gudgeon.rebuild.journal.Origin;
import java.util.List;

/** The forms of facts about options. */
final class DecidingForms {
    private DecidingForms() {}

    static final List<FactForm<?>> ALL = List.of(
            form(
                    "option-drawn",
                    OptionDrawn.class,
                    (fact, to) -> to.put("option", fact.option())
                            .put("name", fact.name())
                            .put("why", fact.why()),
                    from -> new OptionDrawn(from.said("option"), from.text("name"), from.text("why"))),
            form(
                    "option-line",
                    OptionLine.class,
                    (fact, to) -> {
                        to.put("option", fact.option())
                                .put("position", fact.position())
                                .put("what", fact.what());
                        fact.origin().ifPresent(origin -> to.put("origin", JsonFields.word(origin)));
                        to.put("family", fact.family()).put("price", fact.price());
                        FactForms.days(to, fact.days());
                        FactForms.named(to, "sizes", fact.sizes());
                    },
                    from -> new OptionLine(
                            from.said("option"),
                            from.said("position"),
                            from.text("what"),
                            from.maybe("origin", Origin.class),
                            from.text("family"),
                            from.text("price"),
                            from.days("days"),
                            from.namedOrNone("sizes"))),
            form(
                    "option-taken",
                    OptionTaken.class,
                    (fact, to) -> to.put("option", fact.option()).put("why", fact.why()),
                    from -> new OptionTaken(from.said("option"), from.text("why"))),
            form(
                    "option-dropped",
                    OptionDropped.class,
                    (fact, to) -> to.put("option", fact.option()).put("why", fact.why()),
                    from -> new OptionDropped(from.said("option"), from.text("why"))));
}
