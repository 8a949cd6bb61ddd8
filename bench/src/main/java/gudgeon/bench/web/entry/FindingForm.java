package gudgeon.bench.web.entry;

import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding.HuntClosed;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.Finding.SuspectTaken;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.LeakPath;
import gudgeon.rebuild.journal.Recurs;
import gudgeon.rebuild.journal.Trouble;
import gudgeon.rebuild.journal.Turning;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns what a form about looking for a fault sent into facts. */
final class FindingForm {
    /** By eye on a marked disc: common practice, no source. */
    private static final double DOUBT_DEG = 3;

    private final Form form;
    private final String hunt;

    FindingForm(Form form) {
        this.form = form;
        this.hunt = form.text("hunt");
    }

    /** The facts, none after a refusal; empty if the form is not about looking for a fault. */
    Optional<List<Fact>> facts(String type) {
        return switch (type) {
            case "hunt-opened" ->
                Optional.of(List.of(new HuntOpened(
                        hunt, form.choice("trouble", "What is wrong", Trouble.TIGHT_SPOT), form.text("what"))));
            case "tight-felt" -> Optional.of(felt());
            case "tried" ->
                Optional.of(List.of(new Tried(hunt, form.text("test"), form.text("answer"), form.text("remark"))));
            case "suspect-taken" ->
                Optional.of(List.of(new SuspectTaken(hunt, form.text("suspect"), form.text("why"))));
            case "hunt-closed" -> Optional.of(List.of(new HuntClosed(hunt, form.text("suspect"), form.text("what"))));
            case "pressure-read" ->
                Optional.of(List.of(new PressureRead(
                        form.choice("how", "How it was cranked", Cranking.DRY),
                        form.measure("pressure", "bar"),
                        form.text("throttle").equals("open"),
                        form.number("altitude", "Height above the sea"),
                        form.text("remark"))));
            case "leak-down-read" ->
                Optional.of(List.of(new LeakDownRead(form.measure("loss", "%"), out(), form.text("remark"))));
            default -> Optional.empty();
        };
    }

    private List<Fact> felt() {
        OptionalDouble angle = form.number("angle", "Crank angle");
        if (angle.isEmpty()) {
            if (form.text("angle").isEmpty()) {
                form.refuse("No crank angle is written. Write where it goes tight, in degrees.");
            }
            return List.of();
        }
        return List.of(new TightFelt(
                hunt,
                form.choice("turning", "Which way", Turning.FORWARD),
                angle.getAsDouble(),
                form.number("doubt", "How sure").orElse(DOUBT_DEG),
                !form.text("stroke").equals("unknown"),
                form.choice("recurs", "How often", Recurs.NOT_SAID),
                form.text("felt")));
    }

    private List<LeakPath> out() {
        return form.choices("out", "Where the air comes out", LeakPath.class);
    }
}
