package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import java.util.List;
import java.util.stream.Stream;

/** Parts go into a casting that was blasted and whose oilways were not proved clean since. */
final class BlastedRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return UnderHand.steps(build)
                .flatMap(step -> step.into().stream()
                        .filter(position -> wasBlastedBefore(build, position, step))
                        .filter(position -> !isProved(build, position))
                        .flatMap(position -> build.structure().position(position).stream())
                        .map(position -> alarm(build, step, position)));
    }

    private static boolean wasBlastedBefore(Build build, String position, Step step) {
        long blasted = build.place(position).blasted();
        return blasted > 0 && blasted < build.step(step.id()).begun();
    }

    private static boolean isProved(Build build, String position) {
        return provers(build, position).anyMatch(check -> {
            CheckState state = build.check(check.id());
            return state.lets() && state.at() > build.place(position).blasted();
        });
    }

    private static Stream<Check> provers(Build build, String position) {
        return build.structure().checks().stream()
                .filter(Check::disturbedByBlasting)
                .filter(check -> build.structure().cleared(check).contains(position));
    }

    private static Alarm alarm(Build build, Step step, Position position) {
        String proof = provers(build, position.id())
                .findFirst()
                .map(check -> "Stop, and do the check '" + check.name() + "' first.")
                .orElse("Stop, wash every oilway through and see it clear; the book has no check for it, so add one.");
        return new Alarm(
                AlarmKind.BLASTED,
                Severity.STOP,
                position.id(),
                "The " + position.name() + " was blasted and nothing proves it clean since, and the step '"
                        + step.name() + "' builds into it.",
                "Grit left in an oilway comes out with the first oil and ruins every bearing.",
                proof + " Wear eye protection when blowing through.",
                List.of(
                        build.place(position.id()).blasted(),
                        build.step(step.id()).begun()),
                List.of());
    }
}
