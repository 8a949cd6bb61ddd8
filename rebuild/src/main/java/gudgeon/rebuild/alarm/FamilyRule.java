package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.decide.Mate;
import gudgeon.rebuild.decide.Mate.Goes;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A part of another engine of the family that does not go with those it touches. */
final class FamilyRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        List<Told<PartEntered>> parts = build.told(PartEntered.class).stream()
                .filter(told -> !told.fact().family().isEmpty())
                .filter(told -> counts(build, told.fact()))
                .toList();
        if (parts.isEmpty()) {
            return Stream.empty();
        }
        List<Mate> wrong = Mate.of(build, parts.stream().map(FamilyRule::line).toList()).stream()
                .filter(mate -> mate.goes() == Goes.NOT_TOGETHER)
                .filter(mate -> !isMeasuredGood(build, mate))
                .toList();
        return parts.stream().flatMap(told -> alarm(build.structure(), told, wrong));
    }

    private static boolean counts(Build build, PartEntered entered) {
        return build.partFor(entered.position())
                .map(Part::name)
                .filter(entered.part()::equals)
                .isPresent();
    }

    private static OptionLine line(Told<PartEntered> told) {
        PartEntered part = told.fact();
        return new OptionLine(
                "",
                part.position(),
                part.part(),
                Optional.of(part.origin()),
                part.family(),
                "",
                Optional.empty(),
                Map.of());
    }

    /** What the parts themselves prove outweighs what is known of their kind. */
    private static boolean isMeasuredGood(Build build, Mate mate) {
        return build.structure()
                .dimension(mate.dimension())
                .filter(dimension -> Verdict.of(build, dimension).outcome() == Outcome.IN_LIMITS)
                .isPresent();
    }

    private static Stream<Alarm> alarm(Structure structure, Told<PartEntered> told, List<Mate> wrong) {
        PartEntered part = told.fact();
        List<String> sentences = wrong.stream()
                .filter(mate -> touches(structure, mate, part.position()))
                .map(Mate::sentence)
                .toList();
        return sentences.isEmpty()
                ? Stream.empty()
                : Stream.of(new Alarm(
                        AlarmKind.FAMILY,
                        Severity.STOP,
                        part.position(),
                        "The " + structure.name(part.position()) + " '" + part.part() + "' is from the "
                                + structure.name(part.family()) + " and does not go with the rest.",
                        "Parts of a family look alike and differ where they meet; forced together they break, or leak.",
                        "Measure both, and change or work on what it goes with, or use one made for this engine.",
                        List.of(told.number()),
                        sentences));
    }

    private static boolean touches(Structure structure, Mate mate, String position) {
        return structure.dimension(mate.dimension()).flatMap(Dimension::derived).stream()
                .flatMap(derived -> derived.of().stream())
                .flatMap(id -> structure.dimension(id).stream())
                .anyMatch(end -> end.of().equals(position));
    }
}
