package gudgeon.bench.web.entry;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Draft;
import gudgeon.rebuild.decide.Drafts;
import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionDropped;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Deciding.OptionTaken;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import java.util.Optional;

/** Turns what a form about options sent into facts. */
final class DecidingForm {
    private final Build build;
    private final Form form;
    private final SourcingForm sourcing;

    DecidingForm(Build build, Form form) {
        this.build = build;
        this.form = form;
        this.sourcing = new SourcingForm(build, form);
    }

    /** The facts, none after a refusal; empty if the form is not about options. */
    Optional<List<Fact>> facts(String type) {
        String option = form.text("option");
        return switch (type) {
            case "option-drawn" -> Optional.of(List.of(new OptionDrawn(option, form.text("name"), form.text("why"))));
            case "option-draft" -> Optional.of(draft(option));
            case "option-line" -> Optional.of(List.of(line(option)));
            case "option-taken" -> Optional.of(List.of(new OptionTaken(option, form.text("why"))));
            case "option-dropped" -> Optional.of(List.of(new OptionDropped(option, form.text("why"))));
            default -> Optional.empty();
        };
    }

    private Fact line(String option) {
        return new OptionLine(
                option,
                form.text("position"),
                form.text("what"),
                sourcing.origin(""),
                form.text("family"),
                form.text("price"),
                sourcing.days(),
                sourcing.sizes(""));
    }

    private List<Fact> draft(String option) {
        Optional<Draft> draft = Drafts.of(build).stream()
                .filter(one -> one.option().equals(option))
                .findFirst();
        if (draft.isEmpty()) {
            form.refuse("There is no draft '" + option + "' any more; it may be drawn already. Open the page again.");
        }
        return draft.map(one -> List.<Fact>copyOf(one.facts())).orElse(List.of());
    }
}
