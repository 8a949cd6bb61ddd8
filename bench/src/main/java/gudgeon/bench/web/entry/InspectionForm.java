package gudgeon.bench.web.entry;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns what was found on a part that came into facts: what was measured and compared, and that it is refused. */
final class InspectionForm {
    private final Build build;
    private final Form form;
    private final String position;
    private final String part;

    InspectionForm(Build build, Form form) {
        this.build = build;
        this.form = form;
        position = form.text("position");
        part = form.text("part");
    }

    /** The facts of a form of that type; empty if it is not one about an inspection. */
    Optional<List<Fact>> facts(String type) {
        return switch (type) {
            case "inspected" -> Optional.of(inspected());
            case "refused" -> Optional.of(refused());
            default -> Optional.empty();
        };
    }

    /** Readings, sizes of the book's figures, and what was looked at, whichever of them was filled in. */
    private List<Fact> inspected() {
        List<Fact> facts = new ArrayList<>();
        if (!form.starting("reading.").isEmpty()) {
            facts.addAll(new MeasuringForm(build, form).facts("readings").orElseThrow());
        }
        if (!form.starting("size.").isEmpty()) {
            facts.add(new Fact.Measured(position, part, form.starting("size.")));
        }
        looked("agrees", true).ifPresent(facts::add);
        looked("differs", false).ifPresent(facts::add);
        if (facts.isEmpty()) {
            form.refuse("Nothing was measured or looked at. Write a size, or say of one thing whether it agrees.");
        }
        return facts;
    }

    private Optional<Fact> looked(String said, boolean agrees) {
        List<String> what = form.starting("look.").values().stream()
                .filter(answer -> answer.startsWith(said + ":"))
                .map(answer -> answer.substring(said.length() + 1))
                .toList();
        return what.isEmpty()
                ? Optional.empty()
                : Optional.of(new Fact.Compared(position, part, what, agrees, form.text("remark")));
    }

    /** It is not to be used, and goes back if the person says so. */
    private List<Fact> refused() {
        String why = form.text("why");
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact.Disposed(position, part, Disposition.REPLACE, why));
        if (form.text("returned").equals("yes")) {
            facts.add(new Sourcing.Returned(
                    form.text("order"), position, part, form.whole("count", "Count", 1), why, form.text("refund")));
        }
        if (why.isEmpty()) {
            form.refuse("Write why it is refused; the seller and the next owner will want to know.");
        }
        return facts;
    }
}
