package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.timing.CamTiming;
import java.util.List;
import java.util.stream.Stream;

/** The cam's timing was read, and is out. */
final class CamTimingRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().checks().stream()
                .filter(CamTiming::isReadBy)
                .filter(check -> isOut(check, build.check(check.id())))
                .map(check -> alarm(build, check, build.check(check.id())));
    }

    private static boolean isOut(Check check, CheckState state) {
        return state.status() == CheckState.Status.FAILED
                || (state.status() == CheckState.Status.PASSED
                        && !Readings.outside(state.reading(), check.expect().orElseThrow())
                                .isEmpty());
    }

    private static Alarm alarm(Build build, Check check, CheckState state) {
        Expect expect = check.expect().orElseThrow();
        List<String> teeth = Readings.outside(state.reading(), expect).stream()
                .flatMap(deg -> CamTiming.toothDeg(build.book()).stream()
                        .mapToObj(tooth -> expect.figure(deg) + " read. " + CamTiming.meaning(deg, tooth)))
                .toList();
        String read = state.reading().isEmpty() ? "failed" : "read " + state.reading();
        return new Alarm(
                AlarmKind.CAM_TIMING,
                Severity.STOP,
                check.id(),
                "The check '" + check.name() + "' " + read + ", where the book has " + expect.words() + ".",
                "With the cam out of time a valve may meet the piston, and the engine will not pull.",
                "Don't turn it further by force. Take the chain off, set the marks again and read it anew after two turns.",
                List.of(state.at()),
                teeth);
    }
}
