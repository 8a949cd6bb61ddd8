package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Proof;
import gudgeon.rebuild.measure.Proofs;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.stream.Stream;

/** A part was passed on a reading that does not prove it in limits, as one of too coarse an instrument. */
final class UnprovenRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return Passed.all(build).flatMap(passed -> alarm(build, passed));
    }

    private static Stream<Alarm> alarm(Build build, Passed passed) {
        // places left out are the person's choice; a doubt that spans the limit is not
        List<Verdict> open =
                passed.verdicts(verdict -> verdict.outcome() == Outcome.UNPROVEN && !verdict.waitsForPlaces());
        if (open.isEmpty()) {
            return Stream.empty();
        }
        List<String> names =
                open.stream().map(verdict -> verdict.dimension().name()).toList();
        String todo = open.stream()
                .flatMap(verdict -> Proofs.of(build, verdict).stream())
                .map(Proof::sentence)
                .findFirst()
                .orElse("Measure it with a better instrument before it is passed.");
        return Stream.of(new Alarm(
                AlarmKind.UNPROVEN,
                Severity.LOOK,
                passed.position().id(),
                "The " + passed.position().name() + (passed.goesIn() ? " goes in" : " is to be used again") + " though "
                        + Sentence.list(names) + (names.size() == 1 ? " is" : " are") + " not proved in limits.",
                "A reading whose doubt spans the limit is no pass: the part may as well be worn out.",
                todo,
                passed.evidence(open),
                open.stream().map(Verdict::sentence).toList()));
    }
}
