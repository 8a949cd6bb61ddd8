package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Measuring;

/** Whether the engine book has what a fact names. */
final class Known {
    private Known() {}

    static boolean in(Structure structure, Fact fact) {
        if (fact instanceof Fact.OfStep ofStep) {
            return structure.step(ofStep.step()).isPresent();
        }
        if (fact instanceof Fact.OfCheck ofCheck) {
            return structure.check(ofCheck.check()).isPresent();
        }
        if (fact instanceof Fact.OfPosition ofPosition) {
            return structure.position(ofPosition.position()).isPresent();
        }
        if (fact instanceof Measuring.ReadingTaken reading) {
            return structure.dimension(reading.dimension()).isPresent();
        }
        if (fact instanceof Deciding.OptionLine line) {
            return structure.position(line.position()).isPresent();
        }
        if (fact instanceof Fastening.OfJoint ofJoint) {
            return structure.joint(ofJoint.joint()).isPresent();
        }
        return !(fact instanceof Fact.FaultFound fault) || structure.has(fault.at());
    }
}
