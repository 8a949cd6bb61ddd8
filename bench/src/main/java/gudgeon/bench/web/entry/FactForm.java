package gudgeon.bench.web.entry;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import gudgeon.rebuild.plan.Undo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns what a form sent into facts. */
final class FactForm {
    private final Build build;
    private final Form form;

    FactForm(Build build, Form form) {
        this.build = build;
        this.form = form;
    }

    /** The facts, in the order in which they are told; none after a refusal. */
    List<Fact> facts() {
        String type = form.text("type");
        return switch (type) {
            case "step-begun" -> List.of(new Fact.StepBegun(form.text("step")));
            case "step-done" -> stepDone();
            case "step-stopped" -> List.of(new Fact.StepStopped(form.text("step"), form.text("why")));
            case "check" -> check();
            case "check-waived" -> List.of(new Fact.CheckWaived(form.text("check"), form.text("why")));
            case "fault-found" -> List.of(new Fact.FaultFound(form.text("at"), form.text("what")));
            case "undone" -> undone();
            case "tight" ->
                List.of(new Fact.WentTight(
                        form.number("forward", "Angle turning forward"),
                        form.number("backward", "Angle turning backward"),
                        form.text("remark")));
            case "noted" -> List.of(new Fact.Noted(form.text("on"), form.text("text")));
            case "time-spent" -> List.of(new Fact.TimeSpent(form.text("on"), form.whole("minutes", "Minutes", 0)));
            case "corrected" -> List.of(new Fact.Corrected(form.text("entry"), form.text("why"), Optional.empty()));
            case "chance" ->
                List.of(new Fact.ChanceTaken(
                        form.choice("origin", "Origin", Origin.PATTERN),
                        form.number("percent", "Chance").orElse(-1) / 100));
            default ->
                new MeasuringForm(build, form)
                        .facts(type)
                        .or(() -> new DecidingForm(build, form).facts(type))
                        .or(() -> new FasteningForm(build, form).facts(type))
                        .or(() -> new InspectionForm(build, form).facts(type))
                        .or(() -> new FindingForm(form).facts(type))
                        .or(() -> new ProvingForm(build, form).facts(type))
                        .orElseGet(() -> ofPart(type));
        };
    }

    private List<Fact> ofPart(String type) {
        String position = form.text("position");
        String part = form.text("part");
        return switch (type) {
            case "taken-off" ->
                List.of(new Fact.TakenOff(
                        position, count(), form.text("bag"), form.text("place"), form.text("remark")));
            case "found-loose" -> foundLoose();
            case "part-entered" -> partEntered(position, part);
            case "measured" -> List.of(new Fact.Measured(position, part, form.starting("size.")));
            case "compared" ->
                List.of(new Fact.Compared(
                        position, part, form.texts("what"), !form.text("agrees").equals("no"), form.text("remark")));
            case "cleaned" ->
                List.of(new Fact.Cleaned(position, form.choice("how", "How", Cleaning.WASHED), form.text("remark")));
            case "disposed" ->
                List.of(new Fact.Disposed(
                        position,
                        part,
                        form.choice("disposition", "What becomes of it", Disposition.USE_AGAIN),
                        form.text("why")));
            case "fitted" -> List.of(fitted(position, part));
            default -> new SourcingForm(build, form).facts();
        };
    }

    /** What lies in the boxes of an engine that came in pieces, ticked off in one go. */
    private List<Fact> foundLoose() {
        List<Fact> facts = new ArrayList<>();
        for (String position : form.texts("in")) {
            facts.add(new Fact.TakenOff(
                    position, quantity(position), form.text("bag"), form.text("place"), "Found loose."));
        }
        if (facts.isEmpty()) {
            form.refuse("Nothing is ticked. Tick what lies in the box.");
        }
        return facts;
    }

    private int quantity(String position) {
        return build.structure().position(position).map(Position::quantity).orElse(1);
    }

    private int count() {
        return form.whole("count", "Count", 1);
    }

    private Fact fitted(String position, String part) {
        return new Fact.Fitted(
                position,
                part,
                form.whole("count", "Count", quantity(position)),
                form.choice("way", "Which way round", Way.NOT_SAID),
                form.text("remark"));
    }

    /** A new part is entered with the sizes that were measured on it at once. */
    private List<Fact> partEntered(String position, String part) {
        List<Fact> facts = new ArrayList<>();
        Origin origin = form.choice("origin", "Origin", Origin.ORIGINAL);
        String name = part.isEmpty() ? freeName(position) : part;
        facts.add(new Fact.PartEntered(
                name, position, origin, count(), form.text("family"), form.text("price"), form.text("remark")));
        if (!form.starting("size.").isEmpty()) {
            facts.add(new Fact.Measured(position, name, form.starting("size.")));
        }
        return facts;
    }

    /** A name for a part that nobody named: new, with what it is, and a number where there is one already. */
    private String freeName(String position) {
        String plain = "new " + build.structure().name(position);
        String name = plain;
        for (int n = 2; build.part(position, name).isPresent(); n++) {
            name = plain + " " + n;
        }
        return name;
    }

    /** A step with the parts ticked as in; whatever was not ticked stays open and is asked for before it is covered. */
    private List<Fact> stepDone() {
        String id = form.text("step");
        List<Fact> facts = new ArrayList<>();
        List<String> fits = build.structure().step(id).map(Step::fits).orElse(List.of());
        for (String position : form.texts("in")) {
            if (fits.contains(position) && !build.place(position).isFilled()) {
                facts.add(new Fact.Fitted(
                        position,
                        build.partFor(position).map(Part::name).orElse(""),
                        quantity(position),
                        form.choice("way." + position, "Which way round", Way.NOT_SAID),
                        ""));
            }
        }
        facts.add(new Fact.StepDone(id, form.text("remark")));
        return facts;
    }

    private List<Fact> check() {
        String check = form.text("check");
        String reading = form.text("reading");
        String remark = form.text("remark");
        return switch (form.text("outcome")) {
            case "passed" -> List.of(new Fact.CheckPassed(check, reading, remark));
            case "failed" -> List.of(new Fact.CheckFailed(check, reading, remark));
            default -> {
                form.refuse("It is not said whether the check passed. Press 'Passed' or 'Failed'.");
                yield List.of();
            }
        };
    }

    private List<Fact> undone() {
        String of = form.text("of");
        if (!build.structure().has(of)) {
            form.refuse("The engine book has nothing with the id '" + of + "' to undo. Choose it from the list.");
            return List.of();
        }
        List<Fact> facts = List.copyOf(Undo.of(build, of).facts(form.text("why")));
        if (facts.isEmpty()) {
            form.refuse("Nothing is together that would have to come off for this; there is nothing to undo.");
        }
        return facts;
    }
}
