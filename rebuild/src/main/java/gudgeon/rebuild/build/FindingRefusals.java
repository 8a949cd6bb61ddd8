package gudgeon.rebuild.build;

import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.Finding.SuspectTaken;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.LeakPath;

/** Why a fact about a fault looked for can't be taken down as it stands. */
final class FindingRefusals {
    private static final double CYCLE_DEG = 720;
    /** A doubt of more says nothing of where in a turn it was. */
    private static final double MOST_DOUBT_DEG = 90;
    /** No piston engine cranked by hand or foot makes more. */
    private static final double MOST_KPA = 5000;
    /** The highest roads end below this, and the shores of the lowest lake lie above it. */
    private static final double HIGHEST_M = 6000;

    private static final double LOWEST_M = -500;

    private final Build build;
    private final Refusals refusals;

    FindingRefusals(Build build, Refusals refusals) {
        this.build = build;
        this.refusals = refusals;
    }

    void look(Finding fact) {
        if (fact instanceof Finding.OfHunt ofHunt) {
            hunt(ofHunt);
        }
        if (fact instanceof TightFelt felt) {
            felt(felt);
        } else if (fact instanceof Tried tried) {
            refusals.said(tried.test(), "which test");
            refusals.said(tried.answer(), "what came of the test");
        } else if (fact instanceof SuspectTaken taken) {
            refusals.said(taken.suspect(), "which suspect");
        } else if (fact instanceof PressureRead read) {
            pressure(read);
        } else if (fact instanceof LeakDownRead read) {
            leak(read);
        }
    }

    private void hunt(Finding.OfHunt fact) {
        refusals.said(fact.hunt(), "a name for the search");
        boolean open = !build.told(HuntOpened.class, fact.hunt()).isEmpty();
        if (fact instanceof HuntOpened && open) {
            refusals.refuse("A search '" + fact.hunt() + "' was begun already. Go on with it, or take another name.");
        }
        if (!(fact instanceof HuntOpened) && !open) {
            refusals.refuse("No search '" + fact.hunt() + "' was begun in this build. Begin it first.");
        }
    }

    private void felt(TightFelt felt) {
        if (!(felt.angleDeg() >= 0 && felt.angleDeg() < CYCLE_DEG)) {
            refusals.refuse("A crank angle is 0 up to 720 degrees from firing top dead centre, not "
                    + Unit.DEGREES.figure(felt.angleDeg()) + ".");
        }
        if (!(felt.doubtDeg() > 0 && felt.doubtDeg() <= MOST_DOUBT_DEG)) {
            refusals.refuse("The doubt of the angle is above 0 and at most 90 degrees, not "
                    + Unit.DEGREES.figure(felt.doubtDeg()) + ". By eye on a marked disc it is about 3.");
        }
    }

    private void pressure(PressureRead read) {
        within("The pressure", Unit.KPA, read.pressure(), MOST_KPA);
        if (read.altitudeM().isPresent()
                && !(read.altitudeM().getAsDouble() >= LOWEST_M
                        && read.altitudeM().getAsDouble() <= HIGHEST_M)) {
            refusals.refuse("The height above the sea is -500 to 6000 m, not "
                    + Unit.NONE.figure(read.altitudeM().getAsDouble()) + " m.");
        }
    }

    private void leak(LeakDownRead read) {
        within("The loss", Unit.PERCENT, read.loss(), 100);
        if (read.out().contains(LeakPath.NOWHERE) && read.out().size() > 1) {
            refusals.refuse("Air can't come out nowhere and somewhere at once. Tick one or the other.");
        }
    }

    private void within(String what, Unit unit, String text, double most) {
        if (text.isBlank()) {
            refusals.refuse(what + " is not written. Write it with its unit.");
            return;
        }
        TypedSize typed = TypedSize.of(unit, text, 1);
        if (typed instanceof TypedSize.Refused refused) {
            refusals.refuse(what + ": '" + text + "' can't be read. " + refused.sentence());
        } else if (typed instanceof TypedSize.Read size && !(size.value() >= 0 && size.value() <= most)) {
            refusals.refuse(what + " is 0 to " + unit.figure(most) + ", not " + unit.figure(size.value())
                    + ". Look at the unit.");
        }
    }
}
