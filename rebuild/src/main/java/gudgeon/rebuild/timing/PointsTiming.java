package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.timing.Points;
import gudgeon.rebuild.book.Ignition;
import gudgeon.rebuild.book.Ignition.PointsCam;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.TypedDwell;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Gap and dwell of the points, against the book.
 *
 * @param gapMm the gap as last read
 * @param dwellDeg the dwell as last read, in degrees of the points cam
 * @param ignition what the book says of the ignition
 * @param effect what a change of the gap does to the spark, as far as readings tell
 */
public record PointsTiming(
        Optional<Quantity> gapMm, Optional<Double> dwellDeg, Optional<Ignition> ignition, Optional<GapEffect> effect) {
    /** By the last readings of a build; what can't be used of them is told in {@code faults}. */
    static PointsTiming of(Build build, TimingInstruments with, List<String> faults) {
        Optional<Quantity> gap = last(build, IgnitionSize.GAP).flatMap(text -> gap(text, with, faults));
        Optional<Double> dwell = last(build, IgnitionSize.DWELL).flatMap(text -> dwell(text, faults));
        return new PointsTiming(gap, dwell, build.book().ignition(), GapEffect.of(build, with));
    }

    private static Optional<String> last(Build build, IgnitionSize what) {
        List<Told<IgnitionRead>> told = build.told(IgnitionRead.class, Proving.IGNITION).stream()
                .filter(one -> one.fact().what() == what)
                .toList();
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(told.get(told.size() - 1).fact().value());
    }

    private static Optional<Quantity> gap(String text, TimingInstruments with, List<String> faults) {
        TypedSize typed = TypedSize.of(Unit.MM, text, 1);
        if (typed instanceof TypedSize.Read read && read.value() > 0) {
            return Optional.of(Quantity.read(
                    read.value(), with.feelers().resolution(), with.feelers().error()));
        }
        faults.add("'" + text + "' is no points gap. Write it as 0.35 mm or 14 thou.");
        return Optional.empty();
    }

    private static Optional<Double> dwell(String text, List<String> faults) {
        Optional<Double> deg = TypedDwell.deg(text);
        if (deg.isEmpty()) {
            faults.add(TypedDwell.refusal(text));
        }
        return deg;
    }

    /** How likely the gap lies below, within and above the book's, where both are known. */
    public Optional<Conformity> gapChances() {
        return gapMm.flatMap(gap -> ignition.flatMap(Ignition::gap)
                .filter(size -> Ignition.mayBeOff(size) > 0)
                .map(size -> Conformity.of(
                        gap,
                        new ToleranceInterval(
                                size.value() - Ignition.mayBeOff(size), size.value() + Ignition.mayBeOff(size)))));
    }

    /** What was read, how it stands to the book, and what to move; sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        gapMm.ifPresent(gap -> all.add("The gap is " + Angle.mm(gap.value())
                + ignition.flatMap(Ignition::gap)
                        .map(size -> ", where the book wants " + size.written() + gapVerdict(gap.value(), size))
                        .orElse("; the book does not say what it should be")
                + "."));
        dwellDeg.ifPresent(dwell -> all.add(dwellSentence(dwell)));
        if (gapMm.isPresent() || dwellDeg.isPresent()) {
            all.add(effect.map(one -> one.sentence(change()))
                    .orElse(
                            "A wider gap opens the points earlier, a narrower one later. By how much is not known of these points:"
                                    + " read where they open at two gaps, and it shows."));
        }
        return all;
    }

    /** By how much in mm the gap must be changed to be the book's, if both are known. */
    private Optional<Double> change() {
        return gapMm.flatMap(gap -> ignition.flatMap(Ignition::gap).map(size -> size.value() - gap.value()));
    }

    private String gapVerdict(double gap, Size size) {
        String make = gap > size.value() ? "; make it narrower" : "; make it wider";
        return gapChances()
                .map(one -> switch (one.zone()) {
                    case IN -> ": in limits, and proved";
                    case OUT -> ": out of limits" + make;
                    case UNPROVEN ->
                        ": whether that is in limits the feelers do not prove" + make + " if you set it anew";
                })
                .orElse("");
    }

    private String dwellSentence(double dwell) {
        String read = "The dwell is " + Angle.text(dwell) + " of the points cam, "
                + Math.round(new Points(1).dwellPercent(dwell)) + " % of its turn";
        Optional<Size> booked = ignition.flatMap(Ignition::dwell);
        if (booked.isEmpty()) {
            return read + ".";
        }
        double longer = dwell - booked.get().value();
        double off = Ignition.mayBeOff(booked.get());
        if (Math.abs(longer) <= Math.max(off, 0.05)) {
            return read + ", as the book wants.";
        }
        String opens = ignition.flatMap(Ignition::points)
                .map(PointsCam::crankTurns)
                .map(turns -> Angle.text(Math.abs(new Points(turns)
                                .opensLaterDeg(dwell, booked.get().value()))) + " of the crank ")
                .orElse("");
        return read + ", " + Angle.text(Math.abs(longer)) + (longer > 0 ? " more" : " less")
                + " than the book wants: the gap is too " + (longer > 0 ? "narrow" : "wide") + ", and they open "
                + opens
                + (longer > 0 ? "later" : "earlier") + " for it.";
    }
}
