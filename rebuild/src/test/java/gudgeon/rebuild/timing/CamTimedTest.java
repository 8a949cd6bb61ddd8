package gudgeon.rebuild.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.StopTouched;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CamTimedTest {
    /** 28 teeth: 720 / 28 degrees. */
    private static final double TOOTH_DEG = 25.714;

    private static final StopTouched SET = new StopTouched(330, 30, "");

    private static Timing late(double deg) {
        return Timing.of(Tarn.after(
                SET,
                Tarn.lobe("inlet", 1, deg),
                Tarn.lobe("inlet", 4, deg),
                Tarn.lobe("exhaust", 1, deg),
                Tarn.lobe("exhaust", 4, deg)));
    }

    /** The lobe's centres of the book, found again from its flanks. */
    @Test
    void findsTheBooksCentres() {
        Timing timing = late(0);
        assertThat(timing.valves()).extracting(one -> one.valve().id()).containsExactly("exhaust", "inlet");
        assertThat(timing.valves().get(0).centreDeg()).isCloseTo(102, within(0.1));
        assertThat(timing.valves().get(1).centreDeg()).isCloseTo(104, within(0.1));
        assertThat(timing.cam().orElseThrow().zone()).isEqualTo(Zone.IN);
        assertThat(timing.cam().orElseThrow().sentences().toString()).contains("in time", "Leave it");
    }

    @Property(tries = 40)
    void findsHowLateTheCamIs(@ForAll @DoubleRange(min = -80, max = 80) double deg) {
        CamTimed cam = late(deg).cam().orElseThrow();
        assertThat(cam.lateDeg().value()).isCloseTo(deg, within(0.11));
        CamTimed mirrored = late(-deg).cam().orElseThrow();
        assertThat(mirrored.lateDeg().value()).isCloseTo(-cam.lateDeg().value(), within(0.2));
        assertThat(mirrored.zone()).isEqualTo(cam.zone());
    }

    @ParameterizedTest
    @CsvSource({
        "25.7, 1, one tooth late, one tooth the way it runs",
        "-25.7, -1, one tooth early, one tooth against the way it runs",
        "52, 2, 2 teeth late, 2 teeth the way it runs"
    })
    void saysWhichTeethToMoveAndWhichWay(double deg, int teeth, String words, String move) {
        CamTimed cam = late(deg).cam().orElseThrow();
        assertThat(cam.zone()).isEqualTo(Zone.OUT);
        assertThat(cam.teethLate()).isEqualTo(teeth);
        assertThat(cam.toothDeg().orElseThrow()).isCloseTo(TOOTH_DEG, within(0.001));
        assertThat(cam.sentences().toString()).contains(words, move);
    }

    @Test
    void halfTeethCantBeHad() {
        assertThat(late(9).cam().orElseThrow().sentences().toString())
                .contains("less than half a tooth", "Half teeth can't be had");
        assertThat(late(34).cam().orElseThrow().sentences().toString())
                .contains("one tooth late", "8.3° late", "Half teeth can't be had");
    }

    @Test
    void nearALimitNothingIsProved() {
        CamTimed cam = late(4.7).cam().orElseThrow();
        assertThat(cam.zone()).isEqualTo(Zone.UNPROVEN);
        assertThat(cam.sentences().toString()).contains("neither is proved", "Read it more closely");
    }

    /** Top dead centre that no stop found is a doubt of its own. */
    @Test
    void theStopMakesItSurer() {
        Timing without = Timing.of(Tarn.after(Tarn.lobe("inlet", 1, 0), Tarn.lobe("inlet", 4, 0)));
        Timing with = Timing.of(Tarn.after(SET, Tarn.lobe("inlet", 1, 0), Tarn.lobe("inlet", 4, 0)));
        assertThat(without.cam().orElseThrow().lateDeg().standardUncertainty())
                .isGreaterThan(with.cam().orElseThrow().lateDeg().standardUncertainty());
        assertThat(without.grounds().toString()).contains("not found by the stop");
        assertThat(with.grounds().toString()).doesNotContain("not found by the stop");
    }

    @Test
    void lessClearanceOrAWornLobeDoesNotMoveTheMiddle() {
        LobeRead book = Tarn.lobe("inlet", 1, 0);
        LobeRead shorter = new LobeRead(
                "inlet",
                book.lift(),
                String.valueOf(Double.parseDouble(book.opening()) + 5),
                String.valueOf(Double.parseDouble(book.closing()) - 5),
                "");
        Timing timing = Timing.of(Tarn.after(SET, shorter));
        assertThat(timing.cam().orElseThrow().lateDeg().value()).isCloseTo(0, within(0.11));
        assertThat(timing.valves().get(0).sentences(timing.with()).toString()).contains("shorter", "valve clearance");
    }

    @Test
    void showsLiftsAndValvesThatDoNotAgree() {
        Timing lifts = Timing.of(Tarn.after(SET, Tarn.lobe("inlet", 1, 0), Tarn.lobe("inlet", 4, 5)));
        assertThat(lifts.valves().get(0).sentences(lifts.with()).toString()).contains("a reading slipped");
        Timing valves = Timing.of(Tarn.after(SET, Tarn.lobe("inlet", 1, -4), Tarn.lobe("exhaust", 1, 4)));
        assertThat(valves.cam().orElseThrow().sentences().toString()).contains("do not tell the same");
        assertThat(late(3).cam().orElseThrow().agree()).isTrue();
    }

    /** Readings from before the chain was laid on anew tell nothing of it. */
    @Test
    void whatWasReadBeforeTheDriveWasTouchedCountsNoMore() {
        String check = CamTiming.check(Tarn.BOOK.structure());
        String chain = Tarn.BOOK.structure().check(check).orElseThrow().clears().get(0);
        List<Fact> facts = new ArrayList<>(List.of(SET, Tarn.lobe("inlet", 1, 26)));
        assertThat(Timing.of(Tarn.after(Tarn.BOOK, facts)).cam()).isPresent();
        facts.add(new Fact.TakenOff(chain, 1, "", "", ""));
        assertThat(Timing.of(Tarn.after(Tarn.BOOK, facts)).cam()).isEmpty();
        facts.add(Tarn.lobe("inlet", 1, 0));
        assertThat(Timing.of(Tarn.after(Tarn.BOOK, facts))
                        .cam()
                        .orElseThrow()
                        .lateDeg()
                        .value())
                .isCloseTo(0, within(0.11));
    }

    @Test
    void aBookWithoutTeethStillTellsDegrees() {
        Build build = Tarn.after(
                Tarn.book(text -> text.replace("cam: {sprocket-teeth: 28}", "")),
                List.of(SET, Tarn.lobe("inlet", 1, 26)));
        assertThat(Timing.of(build).cam().orElseThrow().sentences().toString())
                .contains("26.0° late", "sprocket-teeth");
    }

    @Test
    void itIsTheReadingOfTheBooksCheck() {
        assertThat(late(25.7).checks()).singleElement().satisfies(check -> {
            assertThat(check.check().id()).isEqualTo("cam-timing");
            assertThat(check.reading()).isEqualTo("25.7 deg");
            assertThat(check.passes()).isFalse();
        });
        assertThat(late(-1).checks()).singleElement().satisfies(check -> {
            assertThat(check.reading()).isEqualTo("-1.0 deg");
            assertThat(check.passes()).isTrue();
            assertThat(check.zone()).isEqualTo(Zone.IN);
        });
    }
}
