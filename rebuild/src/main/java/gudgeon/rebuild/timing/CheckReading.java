package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a check of the book reads by what timing came to.
 *
 * @param check the check
 * @param reading its reading with the unit, such as "1.2 deg"
 * @param passes whether that is what the check expects
 * @param zone whether it is proved, given the doubt
 * @param remark the doubt, to be kept with the reading
 */
public record CheckReading(Check check, String reading, boolean passes, Zone zone, String remark) {
    private static final Pattern POINTS_GAP =
            Pattern.compile("(points|breaker).*gap|gap.*(points|breaker)", Pattern.CASE_INSENSITIVE);

    /** Those of a build's timing, in the book's order. */
    static List<CheckReading> all(
            Build build, Optional<CamTimed> cam, Optional<SparkTiming> spark, PointsTiming points) {
        List<CheckReading> all = new ArrayList<>();
        for (Check check : build.structure().checks()) {
            Optional<Expect> expect = check.expect();
            if (CamTiming.isReadBy(check)) {
                cam.ifPresent(one -> all.add(of(check, expect.orElseThrow(), one.lateDeg())));
            } else if (CamTiming.isSparkReadBy(check)) {
                spark.flatMap(SparkTiming::earlyDeg)
                        .ifPresent(early -> all.add(of(check, expect.orElseThrow(), early)));
            } else if (expect.filter(span -> span.unit() == Unit.MM).isPresent()
                    && POINTS_GAP.matcher(check.id() + " " + check.name()).find()) {
                points.gapMm().ifPresent(gap -> all.add(of(check, expect.orElseThrow(), gap)));
            }
        }
        return all;
    }

    private static CheckReading of(Check check, Expect expect, Quantity read) {
        boolean length = expect.unit() == Unit.MM;
        double value = length ? read.value() : Math.round(read.value() * 10) / 10.0;
        String text = length
                ? String.format(Locale.ROOT, "%.2f mm", value)
                : String.format(Locale.ROOT, "%.1f deg", value + 0.0);
        Zone zone = Conformity.of(
                        read,
                        new ToleranceInterval(
                                expect.atLeast().orElse(Double.NEGATIVE_INFINITY),
                                expect.atMost().orElse(Double.POSITIVE_INFINITY)))
                .zone();
        String remark = "By the timing page, give or take " + expect.figure(Math.round(Angle.doubt(read) * 100) / 100.0)
                + (zone == Zone.UNPROVEN ? "; not proved." : ".");
        return new CheckReading(check, text, expect.holds(value), zone, remark);
    }
}
