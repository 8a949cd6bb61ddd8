package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;
import static gudgeon.rebuild.journal.Naming.with;

import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Finding.HuntClosed;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.Finding.SuspectTaken;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import java.util.stream.Collectors;

/** What an entry about looking for a fault says. */
record FindingWords() {
    String sentence(Finding fact) {
        if (fact instanceof HuntOpened opened) {
            return "Looking for the fault: " + opened.trouble().words() + "." + and(opened.what());
        }
        if (fact instanceof TightFelt felt) {
            return "It goes tight at " + Unit.DEGREES.figure(felt.angleDeg()) + " ± "
                    + Unit.DEGREES.figure(felt.doubtDeg()) + " turning "
                    + felt.direction().words() + (felt.strokeKnown() ? "" : ", which of the two turns is not known")
                    + (felt.recurs() == Recurs.NOT_SAID
                            ? ""
                            : ", " + felt.recurs().words()) + "." + and(felt.felt());
        }
        if (fact instanceof Tried tried) {
            return "Tried '" + tried.test() + "': " + tried.answer() + "." + and(tried.remark());
        }
        if (fact instanceof SuspectTaken taken) {
            return "To be looked at: " + taken.suspect() + "." + and(taken.why());
        }
        return fact instanceof HuntClosed closed
                ? "The search is over" + with(": ", closed.suspect()) + "." + and(closed.what())
                : ofSealing((Finding.OfSealing) fact);
    }

    private static String ofSealing(Finding.OfSealing fact) {
        if (fact instanceof PressureRead read) {
            return "Cranked " + read.how().words() + ", throttle " + (read.throttleOpen() ? "open" : "not open") + ": "
                    + read.pressure()
                    + (read.altitudeM().isPresent()
                            ? " at " + Unit.NONE.figure(read.altitudeM().getAsDouble()) + " m above the sea"
                            : "")
                    + "." + and(read.remark());
        }
        LeakDownRead read = (LeakDownRead) fact;
        String out = read.out().stream().map(LeakPath::words).collect(Collectors.joining(" and "));
        return "Leak-down: " + read.loss() + " lost" + with(", air out of ", out) + "." + and(read.remark());
    }
}
