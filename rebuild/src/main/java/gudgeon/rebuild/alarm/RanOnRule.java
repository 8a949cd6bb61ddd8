package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.runin.StageNow;
import gudgeon.rebuild.runin.Work;
import java.util.List;
import java.util.stream.Stream;

/** It was run in the next stage, and what was to be done after the one before was not. */
final class RanOnRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        if (build.lastAbout(Proving.RUNNING_IN) == 0) {
            return Stream.empty();
        }
        RunIn runIn = RunIn.of(build);
        return runIn.stages().stream()
                .flatMap(stage -> runIn.ranOn(stage).stream()
                        .flatMap(run -> stage.due().stream().map(work -> alarm(stage, work, run))));
    }

    private static Alarm alarm(StageNow stage, Work work, Told<RanIn> run) {
        return new Alarm(
                AlarmKind.RAN_ON,
                Severity.STOP,
                work.id(),
                "It was run on after the stage '" + stage.stage().name() + "', and this was not done: " + work.words()
                        + ".",
                "What beds in first is then left as it is: a joint slack, a valve without clearance, metal in the oil.",
                "Let it go cold and do it before it runs again. Hot parts and hot oil burn.",
                List.of(stage.over(), run.number()),
                List.of());
    }
}
