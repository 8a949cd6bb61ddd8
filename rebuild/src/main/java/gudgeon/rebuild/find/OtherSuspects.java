package gudgeon.rebuild.find;

import gudgeon.mechanics.diagnose.TightPattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The suspects whose angles do not follow from an engine's sizes. */
final class OtherSuspects {
    private static final double OVERLAP_DEG = 360;
    /** From where a piston is high enough for an open valve, in degrees from top dead centre. */
    private static final double VALVE_MOST_DEG = 60;

    private static final double PLUG_MOST_DEG = 35;
    private static final double COMPRESSION_LEAST_DEG = 5;
    private static final double COMPRESSION_MOST_DEG = 120;
    /** How far apart a drag of the crank may be felt the one way and the other. */
    private static final double DRAG_DEG = 60;

    private static final double EQUAL = 1;
    private static final double HALF = 0.5;
    private static final String ALIKE = "as likely as any other single cause, since nothing is known";
    private static final String RARER = "half as likely as other single causes";

    private final Reach reach;

    OtherSuspects(Reach reach) {
        this.reach = reach;
    }

    /** Of every engine. */
    List<TightSuspect> all() {
        List<String> bore = new ArrayList<>(reach.rings());
        bore.addAll(reach.barrel());
        List<TightSuspect> all = new ArrayList<>();
        all.add(of(
                "plug-too-long",
                "the spark plug reaches too far in and meets the piston",
                HALF,
                reach.plug(),
                Nature.PLUG,
                TightPattern.symmetric(0, 0, PLUG_MOST_DEG, true),
                "Near both top dead centres, as far before turning forward as after turning backward, every turn."));
        all.add(
                of(
                        "compression",
                        "nothing but the pressure of compression",
                        EQUAL,
                        List.of(),
                        Nature.COMPRESSION,
                        TightPattern.symmetric(0, COMPRESSION_LEAST_DEG, COMPRESSION_MOST_DEG, false),
                        "Towards firing top dead centre, a springy stop that lets go slowly, every second turn; gone with the plug out."));
        all.add(
                of(
                        "ring-catches",
                        "a ring catches on an edge of the bore, or the piston on carbon",
                        EQUAL,
                        bore,
                        Nature.RING,
                        TightPattern.symmetric(0, 0, OVERLAP_DEG / 2, true),
                        "At one height of the piston: as far before top dead centre turning forward as after it turning backward, every turn."));
        all.add(of(
                "crank",
                "the crank, its rod or its bearings bind",
                EQUAL,
                reach.crank(),
                Nature.CRANK,
                TightPattern.atSomeAngle(DRAG_DEG),
                "At any one angle, much the same turning forward and backward, every turn, whatever the cam does."));
        all.add(
                of(
                        "drive",
                        "a gear, the clutch or the primary drive binds",
                        EQUAL,
                        reach.drive(),
                        Nature.DRIVE,
                        TightPattern.atSomeAngle(DRAG_DEG),
                        "At any one angle, much the same turning forward and backward; every turn where it turns with the crank."));
        all.add(of(
                "debris",
                "something loose lies in the way",
                EQUAL,
                reach.head(),
                Nature.LOOSE,
                TightPattern.anywhere(),
                "At any angle, and not the same way each time."));
        all.add(of(
                "none-of-these",
                "none of the causes listed",
                HALF,
                List.of(),
                Nature.UNLISTED,
                TightPattern.anywhere(),
                "At any angle."));
        return all;
    }

    /** In place of those that are worked out, of an engine whose sizes are not known. */
    List<TightSuspect> withoutSizes() {
        List<String> train = new ArrayList<>(reach.camDrive());
        train.addAll(reach.piston());
        return List.of(
                of(
                        "valve-on-crown",
                        "a valve meets the piston: cam timing, piston, or pockets",
                        EQUAL,
                        train,
                        Nature.VALVE,
                        TightPattern.symmetric(OVERLAP_DEG, 0, VALVE_MOST_DEG, false),
                        "Near the top dead centre at which both valves are open, every second turn; the book has no sizes to say where."),
                of(
                        "crown-on-head",
                        "the piston meets the head, by too thin a gasket or too low a barrel",
                        EQUAL,
                        reach.headGasket(),
                        Nature.HEAD,
                        TightPattern.symmetric(0, 0, PLUG_MOST_DEG, true),
                        "Near both top dead centres, every turn; the book has no sizes to say how near."));
    }

    private static TightSuspect of(
            String id, String name, double odds, List<String> at, Nature nature, TightPattern pattern, String shows) {
        String basis =
                "Odds " + (odds == EQUAL ? "1 (" + ALIKE : odds + " (" + RARER) + "; common practice, no source).";
        return new TightSuspect(
                new Suspect(id, name, odds, basis, at, shows, Optional.empty()), nature, "", 0, false, pattern, false);
    }
}
