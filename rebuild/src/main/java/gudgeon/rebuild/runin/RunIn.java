package gudgeon.rebuild.runin;

import gudgeon.rebuild.book.RunningIn;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StartRound;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.sentence.Amount;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How far an engine is run in. It hangs on the build alone. Runs count since the first start that stands: an engine whose top end
 * was off begins anew.
 *
 * @param scheme the scheme
 * @param own whether the scheme is the book's own, and not common practice
 * @param started whether the first start was begun, so that there is anything to run in
 * @param stages its stages as they stand
 */
public record RunIn(RunningIn scheme, boolean own, boolean started, List<StageNow> stages) {
    public RunIn {
        stages = List.copyOf(stages);
    }

    /** That of a build. */
    public static RunIn of(Build build) {
        RunningIn scheme = build.book().runningIn();
        Optional<StepState> start = StartRound.step(build).map(step -> build.step(step.id()));
        boolean started = start.map(state -> state.underHand() || state.status() == StepState.Status.STOPPED)
                .orElse(true);
        long from = start.map(StepState::begun).orElse(0L);
        OptionalDouble stroke = build.book().geometry().stream()
                .mapToDouble(geometry -> geometry.crank().stroke().value())
                .findFirst();
        List<Told<RanIn>> runs = started
                ? build.told(RanIn.class, Proving.RUNNING_IN).stream()
                        .filter(told -> told.number() > from)
                        .toList()
                : List.of();
        Works works = new Works(build);
        List<StageNow> stages = scheme.stages().stream()
                .map(stage -> {
                    List<Told<RanIn>> own = runs.stream()
                            .filter(told -> told.fact().stage().equals(stage.id()))
                            .toList();
                    long over = StageNow.over(stage, own);
                    return new StageNow(stage, stroke, own, over, works.after(stage, over));
                })
                .toList();
        return new RunIn(scheme, build.book().commissioning().ownScheme().isPresent(), started, stages);
    }

    /** The stage that is being run, the first that is not over. */
    public Optional<StageNow> now() {
        return started ? stages.stream().filter(stage -> !stage.isOver()).findFirst() : Optional.empty();
    }

    /** What is to be done before it runs on. */
    public List<Work> due() {
        return stages.stream().flatMap(stage -> stage.due().stream()).toList();
    }

    /** The stages after a stage in which it ran though something of that stage was due. */
    public Optional<Told<RanIn>> ranOn(StageNow over) {
        return over.due().isEmpty()
                ? Optional.empty()
                : stages.stream()
                        .skip(stages.indexOf(over) + 1L)
                        .flatMap(stage -> stage.runs().stream())
                        .filter(run -> run.number() > over.over())
                        .findFirst();
    }

    /** Whether all stages and all that is done after them are done. */
    public boolean isDone() {
        return stages.stream().allMatch(StageNow::isDone);
    }

    /** All runs, in order, each with what was found. */
    public List<Told<RanIn>> runs() {
        return stages.stream()
                .flatMap(stage -> stage.runs().stream())
                .sorted((one, other) -> Long.compare(one.number(), other.number()))
                .toList();
    }

    /** Where it stands, a sentence. */
    public String sentence() {
        if (!started) {
            return "It was not started yet.";
        }
        if (isDone()) {
            return "It is run in: " + Amount.time(minutes()) + " in all.";
        }
        String works = due().isEmpty()
                ? ""
                : " Before it runs again: "
                        + String.join("; ", due().stream().map(Work::words).toList()) + ".";
        return now().map(stage -> "Stage '" + stage.stage().name() + "'. " + stage.sentence())
                        .orElse("All stages are run.")
                + works;
    }

    private int minutes() {
        return Stream.of(stages)
                .flatMap(List::stream)
                .mapToInt(StageNow::minutes)
                .sum();
    }
}
