package gudgeon.rebuild.measure;

import static gudgeon.rebuild.measure.TopEnd.bore;
import static gudgeon.rebuild.measure.TopEnd.join;
import static gudgeon.rebuild.measure.TopEnd.piece;
import static gudgeon.rebuild.measure.TopEnd.read;
import static gudgeon.rebuild.measure.TopEnd.with;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.measure.Slip.Kind;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlipsTest {
    private static final String TOP = "top, along the pin";

    private static List<Slip> slips(Build build, ReadingTaken reading) {
        return Slips.of(build, reading);
    }

    @ParameterizedTest
    @CsvSource({
        "390.12 mm, POINT, 39.012 mm",
        "3.9012 mm, POINT, 39.012 mm",
        "39012, POINT, 39.012",
        "93.012 mm, SWAPPED, 39.012 mm",
        "29.012 mm, DIGIT, 39.012 mm",
        "-39.012 mm, SIGN, 39.012 mm",
        "1.5363 mm, INCHES, 1.5363 in",
        "39.012 in, MILLIMETRES, 39.012 mm",
        "1536, THOU, 1536 thou"
    })
    void asksWhatWasMeant(String typed, Kind kind, String meant) {
        assertThat(slips(with(), read("bore", TOP, typed, "bore gauge"))).anySatisfy(slip -> {
            assertThat(slip.kind()).isEqualTo(kind);
            assertThat(slip.meant()).isEqualTo(meant);
            assertThat(slip.sentence()).contains(typed, meant, "?");
        });
    }

    @Test
    void aPartBackFromAMachinistIsAnother() {
        Build bored = with(join(
                bore("bore gauge", "39.012 mm"),
                new WorkBack("barrel", "", ""),
                read("bore", TOP, "39.050 mm", "bore gauge")));
        assertThat(slips(bored, read("bore", TOP, "39.051 mm", "bore gauge"))).isEmpty();
        assertThat(slips(bored, read("bore", TOP, "39.2 mm", "bore gauge")))
                .singleElement()
                .satisfies(slip ->
                        assertThat(slip.sentence()).contains("39.050 mm").doesNotContain("39.012"));
    }

    @Test
    void twoReadingsOfOnePlaceContradictEachOther() {
        Build build = with(bore("bore gauge", "39.012 mm"));
        assertThat(slips(build, read("bore", TOP, "39.102 mm", "bore gauge"))).anySatisfy(slip -> {
            assertThat(slip.kind()).isEqualTo(Kind.SWAPPED);
            assertThat(slip.meant()).isEqualTo("39.012 mm");
        });
        assertThat(slips(build, read("bore", TOP, "39.015 mm", "bore gauge"))).isEmpty();
        assertThat(slips(build, read("bore", TOP, "39.2 mm", "bore gauge")))
                .extracting(Slip::kind)
                .containsExactly(Kind.APART);
    }

    @Test
    void millimetresOnAnInchMicrometer() {
        assertThat(slips(with(), read("skirt", "", "38.97", "inch micrometer")))
                .extracting(Slip::kind)
                .contains(Kind.MILLIMETRES);
    }

    /** From as new to a ridge that no one has seen, and bored to any of the oversizes. */
    @Test
    void aWornBoreIsNoSlip() {
        for (double value = 39.000; value <= 39.60; value += 0.001) {
            ReadingTaken reading = read("bore", TOP, String.format(Locale.ROOT, "%.3f mm", value), "bore gauge");
            assertThat(slips(with(), reading)).as(reading.value()).isEmpty();
        }
        Build others = with(bore("bore gauge", "39.012", "39.015", "39.010"));
        for (double value = 39.000; value <= 39.30; value += 0.001) {
            ReadingTaken reading =
                    read("bore", "bottom, across the pin", String.format(Locale.ROOT, "%.3f mm", value), "bore gauge");
            assertThat(slips(others, reading)).as(reading.value()).isEmpty();
        }
    }

    /** A broken spring may be of any length; seldom one is that a slip would explain, and then asking does no harm. */
    @Test
    void aBrokenSpringIsSeldomTakenForASlip() {
        Build build = with(piece("spring", 1, "35.2 mm", "vernier"), piece("spring", 2, "35.3 mm", "vernier"));
        int asked = 0;
        for (double value = 8; value < 34; value += 0.1) {
            asked += slips(build, piece("spring", 3, String.format(Locale.ROOT, "%.1f mm", value), "vernier"))
                            .isEmpty()
                    ? 0
                    : 1;
        }
        assertThat(asked).as("of 260").isLessThan(26);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.03 mm", "0.08 mm", "0.3 mm", "0.6 mm", "1.2 mm"})
    void aBentCrankIsNoSlip(String value) {
        assertThat(slips(with(), read("run-out", "", value, "vernier"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.45 mm", "0.57 mm", "0.75 mm", "0.80 mm", "1.25 mm", "2.05 mm"})
    void aWornRingGapIsNoSlip(String value) {
        assertThat(slips(with(read("gap", "", "0.40 mm", "")), read("gap", "", value, "")))
                .isEmpty();
    }

    @Test
    void withoutLimitsItGoesByWhatIsUsual() {
        assertThat(slips(with(), read("stud", "", "1050 mm", "vernier")))
                .extracting(Slip::kind)
                .contains(Kind.POINT);
        assertThat(slips(with(), read("stud", "", "105 mm", "vernier"))).isEmpty();
    }

    @Test
    void aSecondReadingOrAWordSettlesIt() {
        ReadingTaken odd = read("bore", TOP, "93.012 mm", "bore gauge");
        Build build = with(odd);
        assertThat(Slips.of(build, build.readings("bore", "").get(0))).isNotEmpty();
        Build again = with(odd, read("bore", TOP, "93.010 mm", "bore gauge"));
        again.readings("bore", "")
                .forEach(told -> assertThat(Slips.of(again, told)).isEmpty());
        ReadingTaken stands =
                new ReadingTaken("bore", "", 1, TOP, "93.012 mm", "bore gauge", OptionalDouble.empty(), Slips.STANDS);
        assertThat(slips(with(), stands)).isEmpty();
    }

    @Test
    void aBoreThatWasBoredMeanwhileIsNoSlip() {
        Build build = with(
                join(bore("bore gauge", "39.05 mm", "39.06", "39.02", "39.03"), new WorkBack("barrel", "", "bored")));
        Build then = TopEnd.after(build, bore("bore gauge", "39.512 mm", "39.513", "39.511", "39.512"));
        then.readings("bore", "")
                .forEach(told -> assertThat(Slips.of(then, told)).isEmpty());
    }

    @Test
    void theSheetWalksThroughWhatIsOff() {
        Build build =
                with(join(bore("bore gauge", "39.050 mm", "39.06"), read("skirt", "", "1.5340", "inch micrometer")));
        Sheet sheet = Sheet.of(build);
        assertThat(sheet.next()).hasValueSatisfying(row -> {
            assertThat(row.dimension().id()).isEqualTo("bore");
            assertThat(row.where()).isEqualTo("bottom, along the pin");
        });
        assertThat(sheet.rows().get(0).spoken()).contains("thirty-nine point zero five zero millimetres");
        assertThat(sheet.rows())
                .filteredOn(row -> row.dimension().id().equals("skirt"))
                .singleElement()
                .satisfies(row -> assertThat(row.spoken()).contains("one point five three four zero inches"));
        assertThat(sheet.rows()).filteredOn(row -> !row.now()).isNotEmpty();
        assertThat(sheet.missing()).hasSize(sheet.rows().size() - 3);
    }

    @ParameterizedTest
    @CsvSource({
        "39.012, thirty-nine point zero one two millimetres",
        "-0.05 mm, minus zero point zero five millimetres",
        "118, one hundred and eighteen millimetres",
        "1020 mm, one thousand and twenty millimetres",
        "4 thou, four thousandths of an inch",
        ".5, zero point five millimetres",
        "1/2 in, 1/2 in"
    })
    void saysBackWhatStands(String written, String words) {
        assertThat(Spoken.of(written, "mm")).isEqualTo(words);
    }

    /** The micrometer goes from 25 to 50 mm; its scale runs on a little past that, by 2 in a hundred of it. */
    @Test
    void aReadingPastTheReachOfItsInstrumentIsAskedAbout() {
        assertThat(slips(with(), read("stud", "", "75.20 mm", "micrometer")))
                .singleElement()
                .satisfies(slip -> assertThat(slip.kind()).isEqualTo(Kind.BEYOND))
                .satisfies(slip -> assertThat(slip.sentence()).contains("micrometer does not reach"));
        assertThat(slips(with(), read("stud", "", "50.40 mm", "micrometer"))).isEmpty();
        assertThat(slips(with(), read("stud", "", "75.20 mm", "vernier"))).isEmpty();
    }

    /** Nothing was swapped, moved or typed in another unit: no bore of 39 mm is one of 7.7 mm, or of 512. */
    @ParameterizedTest
    @ValueSource(strings = {"7.7 mm", "0.4 mm", "512.3 mm", "0 mm"})
    void aReadingOfAnotherThingIsAskedAbout(String value) {
        ReadingTaken nonsense = read("bore", TOP, value, "");
        assertThat(slips(with(), nonsense)).singleElement().satisfies(slip -> {
            assertThat(slip.kind()).isEqualTo(Kind.FAR);
            assertThat(slip.meant()).isEmpty();
            assertThat(slip.sentence()).contains(value, "far from what is expected", "38.609 mm to 39.991 mm", "?");
        });
        Build kept = with(nonsense);
        assertThat(Slips.all(kept)).hasSize(1);
        ReadingTaken stands =
                new ReadingTaken("bore", "", 1, TOP, value, "", OptionalDouble.empty(), "Asked, and it stands.");
        assertThat(Slips.all(with(stands))).isEmpty();
    }

    /** A spring broken in the middle, a head that was skimmed: hard to believe, and true. */
    @Test
    void aReadingThatAPartCanHaveIsNotFar() {
        Plausible span = new Plausible(36, 44);
        for (double value : new double[] {9, 20, 35, 40, 45, 90, 170}) {
            assertThat(span.isFarFrom(value)).as("%s", value).isFalse();
        }
        for (double value : new double[] {0, 8.9, 177, -40}) {
            assertThat(span.isFarFrom(value)).as("%s", value).isTrue();
        }
        assertThat(new Plausible(-44, -36).isFarFrom(-40)).isFalse();
        assertThat(new Plausible(-44, -36).isFarFrom(40)).isTrue();
    }
}
