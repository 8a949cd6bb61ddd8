package gudgeon.rebuild.runin;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Fluid;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.RunningIn.Stage;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.CheckWaived;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.runin.Work.Kind;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** What was done after a stage, by the journal. */
record Works(Build build) {
    /**
     * All that a stage asks for after it.
     *
     * @param over number of the entry with which the stage was over, 0 while it is not
     */
    List<Work> after(Stage stage, long over) {
        return stage.then().stream().flatMap(id -> work(id, over).stream()).toList();
    }

    private Optional<Work> work(String id, long over) {
        return build.structure()
                .step(id)
                .map(step -> new Work(Kind.STEP, id, step.name(), since(over, done(step))))
                .or(() -> build.structure().check(id).map(check -> ofCheck(check, over)))
                .or(() -> build.structure().joint(id).map(joint -> ofJoint(joint, over)))
                .or(() -> build.book().commissioning().fluid(id).map(fluid -> ofFluid(fluid, over)));
    }

    private Work ofCheck(Check check, long over) {
        boolean lets = build.check(check.id()).lets();
        long told = Stream.concat(
                        build.told(CheckPassed.class, check.id()).stream(),
                        build.told(CheckWaived.class, check.id()).stream())
                .mapToLong(Told::number)
                .max()
                .orElse(0);
        return new Work(Kind.CHECK, check.id(), check.name(), lets ? since(over, told) : 0);
    }

    private Work ofJoint(Joint joint, long over) {
        LongStream again = build.told(TightenedAgain.class, joint.id()).stream().mapToLong(Told::number);
        LongStream steps = build.structure().steps().stream()
                .filter(step -> step.tightens().contains(joint.id()))
                .mapToLong(this::done);
        long last = LongStream.concat(again, steps).max().orElse(0);
        return new Work(Kind.JOINT, joint.id(), joint.name(), since(over, last));
    }

    private Work ofFluid(Fluid fluid, long over) {
        long last = build.told(FluidChanged.class, fluid.id()).stream()
                .mapToLong(Told::number)
                .max()
                .orElse(0);
        return new Work(Kind.FLUID, fluid.id(), fluid.name(), since(over, last));
    }

    private long done(Step step) {
        StepState state = build.step(step.id());
        return state.status() == StepState.Status.DONE ? state.done() : 0;
    }

    private static long since(long over, long number) {
        return over > 0 && number > over ? number : 0;
    }
}
