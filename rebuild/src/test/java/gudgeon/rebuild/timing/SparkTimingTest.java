package gudgeon.rebuild.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Proving.StopTouched;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SparkTimingTest {
    private static final StopTouched SET = new StopTouched(330, 30, "");

    private static SparkTiming spark(String opens) {
        return Timing.of(Tarn.after(SET, Tarn.opens(opens))).spark().orElseThrow();
    }

    /** The piston's height by plane coordinates, stroke 50, rod 92, pin 0.5 mm off: found by turning, not by the inverse. */
    private static double travelMm(double beforeDeg) {
        double lean = Math.asin(0.5 / 117);
        double turn = Math.toRadians(-beforeDeg) - lean;
        double across = 0.5 + 25 * Math.sin(turn);
        return Math.sqrt(117 * 117 - 0.25) - 25 * Math.cos(turn) - Math.sqrt(92 * 92 - across * across);
    }

    private static String written(double mm) {
        return String.format(Locale.ROOT, "%.4f", mm);
    }

    @Property(tries = 60)
    void millimetresOfThePistonAreDegrees(@ForAll @DoubleRange(min = 3, max = 60) double deg) {
        assertThat(spark(written(travelMm(deg)) + " mm btdc").beforeDeg().value())
                .isCloseTo(deg, within(0.02));
    }

    @Test
    void aLeaningGaugeAndTheRimTellTheSameAngle() {
        double travel = travelMm(25);
        assertThat(spark(written(travel / Math.cos(Math.toRadians(30))) + " mm btdc at 30 deg")
                        .beforeDeg()
                        .value())
                .isCloseTo(25, within(0.01));
        // 110 mm across: a degree of the rim is 0.95993 mm
        assertThat(spark(written(25 * 0.959931) + " mm btdc on the rim")
                        .beforeDeg()
                        .value())
                .isCloseTo(25, within(1e-3));
        assertThat(spark("3 atdc").beforeDeg().value()).isEqualTo(-3);
    }

    @Test
    void saysWhichWayToTurnThePlateAndHowFar() {
        SparkTiming early = spark("32 btdc");
        assertThat(early.earlyDeg().orElseThrow().value()).isCloseTo(7, within(1e-9));
        assertThat(early.chances().orElseThrow().zone()).isEqualTo(Zone.OUT);
        assertThat(early.sentences().toString())
                .contains(
                        "7.0° too early",
                        "the way their cam turns, that is anticlockwise",
                        "by 7.0°",
                        "6.72 mm",
                        "narrower");
        assertThat(spark("18 btdc").sentences().toString())
                .contains("7.0° too late", "against the way their cam turns, that is clockwise", "by 7.0°", "wider");
        assertThat(spark("25 btdc").sentences().toString()).contains("as wanted, in limits and proved");
        assertThat(spark("26.9 btdc").chances().orElseThrow().zone()).isEqualTo(Zone.UNPROVEN);
    }

    @Test
    void pointsAtHalfSpeedMoveByHalf() {
        EngineBook book = Tarn.book(text -> text.replace("points: flywheel", "points: camshaft"));
        Timing timing = Timing.of(Tarn.after(book, List.of(SET, Tarn.opens("32 btdc"))));
        assertThat(timing.spark().orElseThrow().sentences().toString())
                .contains("by 3.5°")
                .doesNotContain("clockwise");
    }

    @Test
    void aBookInMillimetresIsHeldAgainstDegrees() {
        EngineBook book = Tarn.book(text -> text.replace("opens: 25 btdc ± 2", "opens: 2.5 mm btdc ± 0.2"));
        SparkTiming spark = Timing.of(Tarn.after(book, List.of(SET, Tarn.opens("2.5 mm btdc"))))
                .spark()
                .orElseThrow();
        assertThat(spark.earlyDeg().orElseThrow().value()).isCloseTo(0, within(1e-9));
        assertThat(travelMm(spark.wantedDeg().orElseThrow())).isCloseTo(2.5, within(1e-9));
        assertThat(spark.limits().orElseThrow().upper()).isBetween(0.8, 1.3);
    }

    @Test
    void dwellTellsTheGap() {
        Timing narrow = Timing.of(Tarn.after(Tarn.dwell("230 deg")));
        assertThat(narrow.points().sentences().toString())
                .contains("20.0° more", "too narrow", "10.0° of the crank later");
        assertThat(Timing.of(Tarn.after(Tarn.dwell("58 %"))).points().dwellDeg().orElseThrow())
                .isCloseTo(208.8, within(1e-9));
    }

    /** 4 degrees for 0.1 mm, read at two gaps with the plate left alone. */
    @Test
    void twoGapsTellWhatAGapDoes() {
        Timing timing = Timing.of(Tarn.after(
                SET, Tarn.gap("0.35 mm"), Tarn.opens("25 btdc"), Tarn.gap("0.45 mm"), Tarn.opens("29 btdc")));
        GapEffect effect = timing.points().effect().orElseThrow();
        assertThat(effect.earlierDegPerMm()).isCloseTo(40, within(1e-6));
        assertThat(timing.points().sentences().toString())
                .contains(
                        "0.1 mm more of gap opens these points 4.0°",
                        "moves the spark by 4.0° later",
                        "make it narrower");
        assertThat(Timing.of(Tarn.after(Tarn.gap("0.45 mm")))
                        .points()
                        .sentences()
                        .toString())
                .contains("A wider gap opens the points earlier", "is not known of these points");
    }

    @Test
    void whatCantBeUsedIsToldAndNothingElseLost() {
        Timing timing = Timing.of(Tarn.after(SET, Tarn.gap("0.35 mm"), Tarn.opens("30 mm btdc")));
        assertThat(timing.faults()).singleElement().asString().contains("half the stroke");
        assertThat(timing.spark()).isEmpty();
        assertThat(timing.points().gapMm()).isPresent();
        assertThat(timing.checks()).singleElement().satisfies(check -> {
            assertThat(check.check().id()).isEqualTo("points-gap");
            assertThat(check.reading()).isEqualTo("0.35 mm");
            assertThat(check.passes()).isTrue();
        });
    }
}
