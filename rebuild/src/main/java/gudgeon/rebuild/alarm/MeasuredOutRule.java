package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.stream.Stream;

/** A part was kept or put in although it is proved to be out of limits. */
final class MeasuredOutRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return Passed.all(build).flatMap(MeasuredOutRule::alarm);
    }

    private static Stream<Alarm> alarm(Passed passed) {
        List<Verdict> out = passed.verdicts(Outcome.OUT_OF_LIMITS);
        if (out.isEmpty()) {
            return Stream.empty();
        }
        List<String> names =
                out.stream().map(verdict -> verdict.dimension().name()).toList();
        return Stream.of(new Alarm(
                AlarmKind.MEASURED_OUT,
                Severity.STOP,
                passed.position().id(),
                "The " + passed.position().name() + (passed.goesIn() ? " goes in" : " is to be used again") + " though "
                        + Sentence.list(names) + (names.size() == 1 ? " is" : " are") + " out of limits.",
                "What is worn past its limit wears faster from there, and all is apart again soon.",
                "Repair or replace it, or correct the reading if it was wrong.",
                passed.evidence(out),
                out.stream().map(Verdict::sentence).toList()));
    }
}
