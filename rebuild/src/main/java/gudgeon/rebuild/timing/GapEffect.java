package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.TypedSpark;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * By how much these points open earlier for a wider gap, from readings at two gaps with the plate left alone.
 *
 * @param earlierDegPerMm crank degrees for a millimetre of gap
 * @param doubtDegPerMm half the interval of 95 %
 */
public record GapEffect(double earlierDegPerMm, double doubtDegPerMm) {
    /** Nearer gaps than these tell nothing with feelers: common practice, no source. */
    private static final double APART_MM = 0.04;

    private record At(double gapMm, Quantity beforeDeg) {}

    /** From the last two openings read at gaps that differ; empty where there are none. */
    static Optional<GapEffect> of(Build build, TimingInstruments with) {
        List<At> all = openings(build, with);
        for (int i = all.size() - 2; i >= 0; i--) {
            At last = all.get(all.size() - 1);
            At other = all.get(i);
            double apart = last.gapMm - other.gapMm;
            if (Math.abs(apart) >= APART_MM) {
                Quantity difference = last.beforeDeg.minus(other.beforeDeg).times(1 / apart);
                return Optional.of(new GapEffect(difference.value(), Angle.doubt(difference)));
            }
        }
        return Optional.empty();
    }

    /** Every opening read, with the gap that was read before it. */
    private static List<At> openings(Build build, TimingInstruments with) {
        List<At> all = new ArrayList<>();
        Optional<Double> gap = Optional.empty();
        // top dead centre is the same for both, so it takes no part in their difference
        SparkAngle angle = new SparkAngle(build.book(), with, List.of());
        for (Told<IgnitionRead> told : build.told(IgnitionRead.class, Proving.IGNITION)) {
            IgnitionRead fact = told.fact();
            if (fact.what() == IgnitionSize.GAP) {
                gap = TypedSize.of(Unit.MM, fact.value(), 1) instanceof TypedSize.Read read
                        ? Optional.of(read.value())
                        : Optional.empty();
            } else if (fact.what() == IgnitionSize.OPENS && gap.isPresent()) {
                double at = gap.get();
                angle.read(TypedSpark.of(fact.value())).ifPresent(before -> all.add(new At(at, before)));
            }
        }
        return all;
    }

    /** What it comes to, a sentence. */
    String sentence(Optional<Double> changeMm) {
        if (earlierDegPerMm - doubtDegPerMm <= 0) {
            return "The readings at two gaps do not prove that a wider gap opens these points earlier: was the plate moved between"
                    + " them? A wider gap opens them earlier, a narrower one later.";
        }
        String each = String.format(
                Locale.ROOT,
                "By the readings at two gaps, 0.1 mm more of gap opens these points %.1f° ± %.1f° of the crank earlier",
                earlierDegPerMm / 10,
                doubtDegPerMm / 10);
        return changeMm.filter(change -> Math.abs(change) >= 0.005)
                .map(change -> each + ": setting the gap right moves the spark by "
                        + Angle.text(Math.abs(change * earlierDegPerMm)) + (change > 0 ? " earlier." : " later."))
                .orElse(each + ".");
    }
}
