package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;

import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Proving.StopTouched;
import gudgeon.rebuild.sentence.Sentence;

/** What an entry about proving, starting and running in says. */
record ProvingWords(Naming naming) {
    String sentence(Proving fact) {
        if (fact instanceof StopTouched stop) {
            return "Against the stop the disc reads " + Unit.DEGREES.figure(stop.forwardDeg()) + " turning forward and "
                    + Unit.DEGREES.figure(stop.backwardDeg()) + " turning backward." + and(stop.remark());
        }
        if (fact instanceof LobeRead read) {
            return Sentence.capital(naming.name(read.valve())) + " valve at " + read.lift() + " of lift: opening at "
                    + read.opening() + ", closing at " + read.closing() + "." + and(read.remark());
        }
        if (fact instanceof IgnitionRead read) {
            return "Ignition, " + read.what().words() + ": " + read.value() + "." + and(read.remark());
        }
        if (fact instanceof StartItemSeen seen) {
            return "Before the first start, '" + seen.item() + "': "
                    + (seen.good() ? "as it should be" : "not as it should be") + "." + and(seen.remark());
        }
        if (fact instanceof StartSigned signed) {
            return "Signed for the first start by " + signed.by()
                    + (signed.open().isEmpty()
                            ? "."
                            : ", with this still open: " + String.join("; ", signed.open()) + ".")
                    + and(signed.reason());
        }
        if (fact instanceof FluidChanged changed) {
            return "Let out and filled anew: " + changed.fluid() + "." + and(changed.found());
        }
        RanIn ran = (RanIn) fact;
        return "Ran for " + ran.minutes() + " min, stage '" + ran.stage() + "'"
                + (ran.cooled() ? ", then let go cold" : "") + "." + and(ran.found());
    }
}
