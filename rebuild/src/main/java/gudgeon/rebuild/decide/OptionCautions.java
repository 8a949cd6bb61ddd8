package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.FamilyMember;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What an option may cost a person who takes it unaware. */
final class OptionCautions {
    /** Smaller changes of capacity than this are no change, in cm³. */
    private static final double SAME_CAPACITY = 0.05;

    private final Structure structure;
    private final List<OptionLine> lines;

    OptionCautions(Structure structure, List<OptionLine> lines) {
        this.structure = structure;
        this.lines = lines;
    }

    List<String> all(FiguresOf.Answer before, FiguresOf.Answer after) {
        List<String> cautions = new ArrayList<>();
        capacity(before.figure(FiguresOf.CAPACITY), after.figure(FiguresOf.CAPACITY))
                .ifPresent(cautions::add);
        piston().ifPresent(cautions::add);
        lines.stream()
                .map(OptionLine::family)
                .distinct()
                .flatMap(family -> structure.member(family).stream())
                .forEach(member -> family(member, cautions));
        return cautions;
    }

    private static Optional<String> capacity(Optional<OptionFigure> before, Optional<OptionFigure> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double was = before.get().low();
        double is = after.get().low();
        return Math.abs(is - was) < SAME_CAPACITY
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "The capacity changes from %.1f to %.1f cm³. What the law lets one ride or run, on which licence and"
                                + " at what age or tax, often hangs on the capacity, and so do insurance, type approval and"
                                + " registration. Ask the authority and the insurer before money is spent.",
                        was,
                        is));
    }

    /** Common practice, no source. */
    private Optional<String> piston() {
        return lines.stream()
                .filter(Applied::isNew)
                .flatMap(line -> structure.position(line.position()).stream())
                .filter(position -> position.sizes().equals("pistons"))
                .findFirst()
                .map(position -> "Weigh the new " + position.name()
                        + " with pin and rings against the old one: another weight changes the balance of the crank.");
    }

    /** The family's parts that go with those of the option and are left as they are. */
    private void family(FamilyMember member, List<String> cautions) {
        List<String> left = member.parts().keySet().stream()
                .filter(position ->
                        lines.stream().noneMatch(line -> line.position().equals(position)))
                .filter(position -> structure.position(position).isPresent())
                .sorted()
                .map(structure::name)
                .toList();
        if (!left.isEmpty()) {
            cautions.add("The " + member.name() + " differs in more than this option takes from it: "
                    + Sentence.list(left) + " would stay as they are.");
        }
        if (!member.note().isEmpty()) {
            cautions.add("The book says of the " + member.name() + ": " + Sentence.of(member.note()));
        }
    }
}
