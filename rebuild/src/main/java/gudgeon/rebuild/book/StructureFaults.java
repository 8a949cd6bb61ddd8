package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells what does not hold together in a book's second part. */
final class StructureFaults {
    private final Structure structure;
    private final Faults faults;

    StructureFaults(Structure structure, Faults faults) {
        this.structure = structure;
        this.faults = faults;
    }

    /** Tells what can't be right, whatever else is wrong with the book. */
    void tellFaults(Optional<Geometry> figures) {
        structure.precedence().shortestCycle().ifPresent(this::cycle);
        fittedTwice();
        SeatFaults seats = new SeatFaults(faults);
        for (Position position : structure.positions()) {
            spaces(position);
            sizes(position, figures);
            seats.tell(position);
        }
        new DimensionFaults(structure, faults).tellFaults();
    }

    /** Tells what was most likely forgotten; of a book with faults it would tell what is only misspelt. */
    void tellDoubts(Optional<Geometry> figures) {
        new DimensionFaults(structure, faults).tellDoubts(figures);
        structure.positions().forEach(this::unfitted);
        structure.steps().forEach(this::alone);
        structure.precedence().buried().forEach(this::buried);
        structure.checks().forEach(this::clearsNothing);
        Set<String> tightened = structure.steps().stream()
                .flatMap(step -> step.tightens().stream())
                .collect(Collectors.toSet());
        structure.joints().stream()
                .filter(joint -> !tightened.contains(joint.id()))
                .forEach(this::untightened);
    }

    private void cycle(List<String> cycle) {
        Where where = whereOf(cycle.get(0));
        faults.fault(
                where,
                cycle.get(0),
                "These wait for each other in a circle: " + String.join(", then ", cycle) + ".",
                "Look at 'needs', 'covers', 'into', 'with' and 'holds' of each, and take out the one that is wrong.");
    }

    private Where whereOf(String id) {
        return structure
                .step(id)
                .map(Step::where)
                .or(() -> structure.check(id).map(Check::where))
                .orElse(new Where(1, 1));
    }

    private void fittedTwice() {
        Set<String> fitted = new HashSet<>();
        for (Step step : structure.steps()) {
            for (String position : step.fits()) {
                if (!fitted.add(position)) {
                    faults.fault(
                            step.where(),
                            "steps." + step.id(),
                            "The position '" + position + "' is fitted by this step too, though "
                                    + structure
                                            .stepFitting(position)
                                            .map(Step::id)
                                            .orElse("another") + " fits it.",
                            "Let one step fit it; make two positions of it where there are two places.");
                }
            }
        }
    }

    private void spaces(Position position) {
        if (position.spaces().size() > 2) {
            faults.fault(
                    position.where(),
                    "positions." + position.id(),
                    "A part can seal two spaces from each other, not "
                            + position.spaces().size() + ".",
                    "Name one space, or two.");
        }
    }

    /** Which figures are of the position's part must be said in the words by which they are looked up. */
    private void sizes(Position position, Optional<Geometry> figures) {
        String sizes = position.sizes();
        List<String> known = new ArrayList<>(List.of("pistons", "gaskets", "base-gasket", "cylinder", "head"));
        figures.ifPresent(geometry -> geometry.valves().forEach(valve -> known.add("valves." + valve.id())));
        boolean ofValve = figures.isEmpty() && sizes.matches("valves\\..+");
        if (!sizes.isEmpty() && !known.contains(sizes) && !ofValve) {
            faults.fault(
                    position.where(),
                    "positions." + position.id() + ".sizes",
                    "No figures of the book are called '" + Words.shortened(sizes) + "'.",
                    Words.nearest(sizes, known)
                                    .map(near -> "Did you mean '" + near + "'? ")
                                    .orElse("")
                            + "Write pistons, gaskets, base-gasket, cylinder, head, or valves and a valve's id, such as"
                            + " valves.exhaust.");
        }
    }

    private void unfitted(Position position) {
        if (structure.stepFitting(position.id()).isEmpty()) {
            faults.doubt(
                    position.where(),
                    "positions." + position.id(),
                    "No step fits the position '" + position.id() + "', so it could be forgotten.",
                    "Add it to 'fits' of a step.");
        }
    }

    private void alone(Step step) {
        Precedence precedence = structure.precedence();
        boolean alone = precedence.before(step.id()).isEmpty()
                && precedence.after(step.id()).isEmpty();
        if (alone && structure.steps().size() > 1) {
            faults.doubt(
                    step.where(),
                    "steps." + step.id(),
                    "Nothing leads to the step '" + step.id() + "', and it leads to nothing.",
                    "Say what it needs, or what needs it.");
        }
    }

    private void clearsNothing(Check check) {
        if (check.clears().isEmpty()) {
            faults.doubt(
                    check.where(),
                    "checks." + check.id(),
                    "The check '" + check.id()
                            + "' clears nothing, so nobody would know what to look at when it fails.",
                    "Name its suspects at 'clears'.");
        }
    }

    private void buried(String check, List<String> path) {
        faults.doubt(
                whereOf(check),
                "checks." + check,
                "The check '" + check + "' can never be done before its suspects are covered: "
                        + path.stream().map(id -> "'" + id + "'").collect(Collectors.joining(" comes before ")) + ".",
                "Do it with less in place, or say at 'late' why it has to be so.");
    }

    private void untightened(Joint joint) {
        faults.doubt(
                joint.where(),
                "joints." + joint.id(),
                "No step tightens the joint '" + joint.id() + "'.",
                "Add it to 'tightens' of the step that closes it.");
    }
}
