package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Fact;

/** Whether the engine book has what a fact names. */
final class Known {
    private Known() {}

    static boolean in(Structure structure, Fact fact) {
        String id = fact.about();
        if (fact instanceof Fact.StepBegun
                || fact instanceof Fact.StepDone
                || fact instanceof Fact.StepStopped
                || fact instanceof Fact.Undone) {
            return structure.step(id).isPresent();
        }
        if (fact instanceof Fact.CheckPassed || fact instanceof Fact.CheckFailed || fact instanceof Fact.CheckWaived) {
            return structure.check(id).isPresent();
        }
        if (fact instanceof Fact.FaultFound) {
            return structure.position(id).isPresent()
                    || structure.step(id).isPresent()
                    || structure.check(id).isPresent();
        }
        return !ofPosition(fact) || structure.position(id).isPresent();
    }

    private static boolean ofPosition(Fact fact) {
        return fact instanceof Fact.TakenOff
                || fact instanceof Fact.PartEntered
                || fact instanceof Fact.Measured
                || fact instanceof Fact.Compared
                || fact instanceof Fact.Cleaned
                || fact instanceof Fact.Disposed
                || fact instanceof Fact.Fitted
                || fact instanceof Fact.Ordered
                || fact instanceof Fact.Arrived;
    }
}
