package gudgeon.mechanics.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class SeatTest {
    private static final SeatCuts SEAT = new SeatCuts(19, 20.5, 30, 45, 60);
    private static final ValveFace FACE = new ValveFace(21, 2, 45);

    @Test
    void widthIsMeasuredAlongTheFace() {
        assertThat(SEAT.widthMm()).isEqualTo(0.75 * Math.sqrt(2), within(1e-12));
        assertThat(new SeatCuts(19, 20.5, 15, 30, 60).widthMm()).isEqualTo(1.5 / Math.sqrt(3), within(1e-12));
    }

    /** The three cones are cut point by point down a profile; where the seat's cone stands widest open it is the seat. */
    @Test
    void edgesMoveAsTheConesThemselvesDo() {
        RandomGenerator random = RandomGenerator.of("L64X128MixRandom");
        for (int trial = 0; trial < 20; trial++) {
            double top = random.nextDouble(0.1);
            double seat = random.nextDouble(0.1);
            double throat = random.nextDouble(0.1);
            SeatCuts cut = SEAT.cut(top, seat, throat);
            Profile profile = new Profile(top, seat, throat);
            assertThat(cut.insideMm()).isEqualTo(profile.insideMm, within(0.002));
            assertThat(cut.outsideMm()).isEqualTo(profile.outsideMm, within(0.002));
        }
    }

    /** Radius of each cone at a height h into the head, counted from the seat's outer edge before any cut. */
    private static final class Profile {
        private final double insideMm;
        private final double outsideMm;

        Profile(double top, double seat, double throat) {
            double depth = (SEAT.outsideMm() - SEAT.insideMm()) / 2;
            double inside = Double.POSITIVE_INFINITY;
            double outside = 0;
            for (double h = -2; h < 3; h += 0.0001) {
                double topCone = 10.25 - (h - top) * Math.sqrt(3);
                double seatCone = 10.25 - (h - seat);
                double throatCone = 9.5 - (h - depth - throat) / Math.sqrt(3);
                if (seatCone >= topCone && seatCone >= throatCone) {
                    inside = Math.min(inside, 2 * seatCone);
                    outside = Math.max(outside, 2 * seatCone);
                }
            }
            insideMm = inside;
            outsideMm = outside;
        }
    }

    @Test
    void narrowingCutsBringASunkSeatBackToItsDiameters() {
        SeatCuts sunk = SEAT.cut(0, 0.1, 0);
        assertThat(sunk.widthMm()).isGreaterThan(SEAT.widthMm() + 0.4);
        SeatCuts narrowed = sunk.cut(sunk.topCutMm(20.5), 0, sunk.throatCutMm(19));
        assertThat(narrowed.insideMm()).isEqualTo(19, within(1e-9));
        assertThat(narrowed.outsideMm()).isEqualTo(20.5, within(1e-9));
        // so the other two cutters have to follow the seat by as much as it went in
        assertThat(sunk.topCutMm(20.5)).isEqualTo(0.1, within(1e-9));
        assertThat(sunk.throatCutMm(19)).isEqualTo(0.1, within(1e-9));
    }

    @Test
    void aSeatLandsOnTheFace() {
        ValveFace.Landing landing = FACE.landing(SEAT);
        assertThat(landing.outerMm()).isEqualTo(0.25 * Math.sqrt(2), within(1e-12));
        assertThat(landing.contactMm()).isEqualTo(SEAT.widthMm(), within(1e-12));
        assertThat(landing.outerMm() + landing.contactMm() + landing.innerMm()).isEqualTo(2, within(1e-12));
        assertThat(landing.offMiddleMm()).isEqualTo((landing.innerMm() - landing.outerMm()) / 2, within(1e-12));
    }

    @Test
    void aSeatPastTheHeadsEdgeTouchesOnlyWhatIsThere() {
        ValveFace.Landing landing = new ValveFace(20, 2, 45).landing(SEAT);
        assertThat(landing.outerMm()).isNegative();
        assertThat(landing.contactMm()).isEqualTo(0.5 * Math.sqrt(2), within(1e-12));
        assertThat(new ValveFace(18.5, 2, 45).landing(SEAT).contactMm()).isZero();
    }

    @Test
    void aSmallHeadLeavesRoomForANarrowSeatOnly() {
        SmallHead wanted = new SmallHead(1, 45, 0.3, 0.5);
        double least = wanted.leastHeadMm(18);
        assertThat(least).isEqualTo(18 + 1 + 2 * 1.3 / Math.sqrt(2), within(1e-12));
        assertThat(wanted.widestSeatMm(least, 18)).isEqualTo(1, within(1e-12));
        assertThat(wanted.widestSeatMm(least - 0.5, 18)).isEqualTo(1 - 0.25 * Math.sqrt(2), within(1e-12));
    }

    @Test
    void cutsThatLeaveNothingOrLieTheWrongWayRoundAreRefused() {
        assertThatThrownBy(() -> SEAT.cut(0.2, 0, 0.4)).hasMessageContaining("a seat lies between");
        assertThatThrownBy(() -> new SeatCuts(19, 20, 45, 30, 60)).hasMessageContaining("steeper inwards");
        assertThatThrownBy(() -> new ValveFace(2, 2, 45)).hasMessageContaining("narrower than its head");
        assertThat(SEAT.cut(0, 0, 0)).isEqualTo(SEAT);
    }

    /** A head wider by that much, on a seat cut in by so much, has its face where the old head's was. */
    @Test
    void aWiderHeadMakesUpForASunkSeat() {
        assertThat(ValveFace.widerMm(0.3, 45)).isEqualTo(0.6, within(1e-12));
        for (double angle : new double[] {30, 45, 60}) {
            double cone = 21.0 / 2 - 0.3 / Math.tan(Math.toRadians(angle)) + ValveFace.widerMm(0.3, angle) / 2;
            assertThat(cone).isEqualTo(21.0 / 2, within(1e-12));
        }
    }
}
