package gudgeon.bench.web.entry;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Handing.LessonDecided;
import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StopTouched;
import gudgeon.rebuild.start.StartList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns what a form about proving, starting, running in and handing on sent into facts. */
final class ProvingForm {
    private final Build build;
    private final Form form;

    ProvingForm(Build build, Form form) {
        this.build = build;
        this.form = form;
    }

    /** The facts, none after a refusal; empty if the form is none of these. */
    Optional<List<Fact>> facts(String type) {
        return switch (type) {
            case "stop-touched" -> Optional.of(stop());
            case "lobe-read" ->
                Optional.of(List.of(new LobeRead(
                        form.text("valve"),
                        form.measure("lift", "mm"),
                        form.text("opening"),
                        form.text("closing"),
                        form.text("remark"))));
            case "ignition-read" ->
                Optional.of(List.of(new IgnitionRead(
                        form.choice("what", "What was read", IgnitionSize.OPENS),
                        form.text("value"),
                        form.text("remark"))));
            case "start-item-seen" ->
                Optional.of(List.of(
                        new StartItemSeen(form.text("item"), !form.text("good").equals("no"), form.text("remark"))));
            case "start-signed" ->
                Optional.of(
                        List.of(StartList.of(build, Alarms.of(build)).signature(form.text("by"), form.text("reason"))));
            case "fluid-changed" -> Optional.of(List.of(new FluidChanged(form.text("fluid"), form.text("found"))));
            case "ran-in" ->
                Optional.of(List.of(new RanIn(
                        form.text("stage"),
                        form.whole("minutes", "Minutes", 0),
                        form.text("cooled").equals("yes"),
                        form.text("found"))));
            case "lesson-decided" ->
                Optional.of(List.of(new LessonDecided(
                        form.text("lesson"), form.text("accepted").equals("yes"), form.text("why"))));
            default -> Optional.empty();
        };
    }

    private List<Fact> stop() {
        OptionalDouble forward = form.number("forward", "Turning forward");
        OptionalDouble backward = form.number("backward", "Turning backward");
        if (forward.isEmpty() || backward.isEmpty()) {
            form.refuse("Both readings of the disc are needed, turning forward and turning backward.");
            return List.of();
        }
        return List.of(new StopTouched(forward.getAsDouble(), backward.getAsDouble(), form.text("remark")));
    }
}
