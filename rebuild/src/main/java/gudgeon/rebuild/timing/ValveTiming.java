package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.ValveEntry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One valve by the degree disc: its lobe's centre, how long it stands open, and how late it is against the book.
 *
 * @param valve the valve
 * @param lines its readings, one for each lift, least lift first; one or more
 * @param lateDeg crank degrees by which it is later than the book has it, the mean of all lifts; negative is earlier
 * @param ownDoubtDeg the part of that doubt in degrees that is this valve's alone, a standard uncertainty
 */
public record ValveTiming(ValveEntry valve, List<LobeLine> lines, Quantity lateDeg, double ownDoubtDeg) {
    /** Farther than this many standard uncertainties apart, readings do not agree: some 95 % (JCGM 100:2008, G.1.3). */
    private static final double APART = 2;

    private static final double OVERLAP_DEG = 360;

    public ValveTiming {
        lines = lines.stream()
                .sorted(Comparator.comparingDouble(LobeLine::liftMm))
                .toList();
    }

    /**
     * Of its readings.
     *
     * @param with what they were read with
     * @param common doubts that it shares with every other valve: top dead centre and slack
     */
    static ValveTiming of(ValveEntry valve, List<LobeLine> lines, TimingInstruments with, List<Doubt> common) {
        double late = mean(lines);
        Quantity own = own(valve, lines.size(), late, with);
        Doubt[] shared = common.toArray(Doubt[]::new);
        return new ValveTiming(valve, lines, own.with(shared), own.standardUncertainty());
    }

    private static Quantity own(ValveEntry valve, int lines, double late, TimingInstruments with) {
        return Quantity.exact(late)
                .plus(BookedLobe.centreDoubt(valve))
                .with(Doubt.resolution(with.disc().resolution() / Math.sqrt(2.0 * lines)));
    }

    private static double mean(List<LobeLine> lines) {
        return lines.stream().mapToDouble(LobeLine::lateDeg).average().orElseThrow();
    }

    /** The lobe's centre as read: degrees after overlap top dead centre for an inlet, before it for an exhaust. */
    public double centreDeg() {
        double centre = lines.stream()
                .mapToDouble(line -> line.read().centreDeg())
                .average()
                .orElseThrow();
        return valve.kind() == ValveEntry.Kind.INLET ? centre - OVERLAP_DEG : OVERLAP_DEG - centre;
    }

    /** By how many degrees the middle between the flanks moves from the least lift read to the greatest, beyond what the book has. */
    public double leanDeg() {
        return lines.get(lines.size() - 1).lateDeg() - lines.get(0).lateDeg();
    }

    /** Whether readings at several lifts tell the same, as far as the disc's step lets them. */
    public boolean agrees(TimingInstruments with) {
        double each = Doubt.resolution(with.disc().resolution()).standardUncertainty();
        // the difference of two middles, each of two readings
        return Math.abs(leanDeg()) <= APART * each + with.disc().resolution() / 2;
    }

    /** What was read, sentences. */
    public List<String> sentences(TimingInstruments with) {
        List<String> all = new ArrayList<>();
        all.add("Lobe centre " + Angle.text(Math.abs(centreDeg()))
                + ((valve.kind() == ValveEntry.Kind.INLET) == centreDeg() >= 0 ? " after" : " before")
                + " overlap top dead centre: " + lateWords() + " against the book.");
        longest().filter(line -> line.longerDeg().isPresent()).ifPresent(line -> all.add(duration(line)));
        if (lines.size() == 1) {
            all.add("Only one lift was read. Read both flanks at a second lift, and the lobe's shape and a slip show.");
        } else if (!agrees(with)) {
            all.add("The middle moves by " + Angle.text(Math.abs(leanDeg()))
                    + " from the least lift to the greatest, where the book's lobe does not: a reading slipped, the gauge does not"
                    + " stand along the stem, or a flank is worn. Read it again before you move anything.");
        } else {
            all.add("The lifts agree: the middle moves by " + Angle.text(Math.abs(leanDeg())) + " between them.");
        }
        return all;
    }

    private String lateWords() {
        return Angle.late(lateDeg.value()) + ", give or take " + Angle.text(Angle.doubt(lateDeg));
    }

    private Optional<LobeLine> longest() {
        return lines.stream().findFirst();
    }

    private static String duration(LobeLine line) {
        double longer = line.longerDeg().orElseThrow();
        String open = "Above " + Angle.mm(line.liftMm()) + " it stands open for "
                + Angle.text(line.read().durationDeg()) + ", "
                + Angle.text(line.book().orElseThrow().durationDeg()) + " in the book";
        double notice = BookedLobe.NOTICE_LONGER_DEG;
        if (longer < -notice) {
            return open + ": shorter, as with too much valve clearance or a worn lobe. Neither moves the middle.";
        }
        return longer > notice
                ? open + ": longer, as with too little valve clearance or another cam. Neither moves the middle."
                : open + ".";
    }
}
