package gudgeon.rebuild.bore;

import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is to be done with a bore as it was measured.
 *
 * @param sentence the answer in a sentence
 * @param found what was found, sentences
 * @param oversizes the pistons to be had, each with why or why not
 * @param ask what to ask the machinist for; empty without a measured piston in hand whose bore may clean up
 * @param after what to expect afterwards, sentences
 * @param unproven what is not proved or not known, sentences
 * @param cautions what to mind, sentences
 */
public record BorePlan(
        String sentence,
        List<String> found,
        List<Oversize> oversizes,
        Optional<Ask> ask,
        List<String> after,
        List<String> unproven,
        List<String> cautions) {
    static final List<String> CAUTIONS = List.of(
            "The maker's manual comes first: its limits, its oversizes and its clearance.",
            "Hand the piston over with the barrel, and have the bore finished to that piston.",
            "Have the barrel clamped as it will run while it is bored and honed, square to its base.",
            "Have the edges at top, bottom and ports chamfered, and the bore washed with hot soapy water until a white cloth stays white, then oiled.",
            "Measure the finished bore at three heights and two directions before you pay, once it is cold.",
            "A larger crown can foul the mouth of the head: try the fit with the new piston's sizes.");
    static final List<String> SLEEVE = List.of(
            "Have a sleeve fitted and bored to standard size, or find another barrel; compare both as options.",
            "A sleeve needs wall enough around it: ask the machinist what would be left of the barrel.",
            "A barrel warmed for its sleeve burns hands: gloves, and nothing flammable near.");

    public BorePlan {
        found = List.copyOf(found);
        oversizes = List.copyOf(oversizes);
        after = List.copyOf(after);
        unproven = List.copyOf(unproven);
        cautions = List.copyOf(cautions);
    }

    /** The plan for a build's bore; empty where the book has no clearance of a piston in a bore. */
    public static Optional<BorePlan> of(Build build) {
        return BoreDimensions.of(build.structure())
                .map(dimensions -> FoundBore.of(build, dimensions)
                        .map(found -> found.reworked()
                                ? only(finished(build, dimensions))
                                : new BorePlanner(build, dimensions, found).plan())
                        .orElseGet(() -> only("The " + dimensions.bore().name()
                                + " has not been measured on this barrel as it is now; measure it first.")));
    }

    /** Back from the machinist there is nothing to plan, only to prove. */
    private static String finished(Build build, BoreDimensions dimensions) {
        return PistonClearance.of(build, dimensions)
                .map(clearance -> clearance.sentence()
                        + (clearance.isTight() || clearance.isLoose() ? " Do not build it so." : ""))
                .orElse(
                        "The barrel is back from the machinist and measured; measure the piston to know its clearance.");
    }

    private static BorePlan only(String sentence) {
        return new BorePlan(sentence, List.of(), List.of(), Optional.empty(), List.of(), List.of(), List.of());
    }

    /** All of it, line by line, to be printed. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentence);
        ask.ifPresent(asked -> lines.add(asked.bored()));
        lines.addAll(found);
        oversizes.forEach(row -> lines.add(row.name() + ": " + row.sentence()));
        lines.addAll(after);
        lines.addAll(unproven);
        lines.addAll(cautions);
        return lines;
    }
}
