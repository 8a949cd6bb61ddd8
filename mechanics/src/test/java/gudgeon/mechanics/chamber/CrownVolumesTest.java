package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Against closed forms of solid geometry (Bronshtein and others, Handbook of Mathematics), and against counting points. */
class CrownVolumesTest {
    private static final double ACCURACY_CM3 = 1e-4;

    private static double pockets(Crown crown) {
        return CrownVolumes.of(crown).pocketsCm3();
    }

    @Test
    void domeAndDishAreSphericalCaps() {
        // pi h (3 b^2 + h^2) / 6
        CrownVolumes dome = CrownVolumes.of(Examples.with(Examples.DOME));
        assertThat(dome.domeCm3()).isCloseTo(Math.PI * 4 * (3 * 23 * 23 + 16) / 6 / 1000, within(1e-12));
        assertThat(dome.dishCm3()).isZero();
        CrownVolumes dish = CrownVolumes.of(Examples.with(Examples.DISH));
        assertThat(dish.dishCm3()).isCloseTo(Math.PI * 2 * (3 * 20 * 20 + 4) / 6 / 1000, within(1e-12));
        assertThat(dish.displacedCm3()).isCloseTo(-dish.dishCm3(), within(1e-12));
    }

    @Test
    void aCapWiderThanTheLandIsCutOffByIt() {
        // a half ball of radius 25 inside a cylinder of radius 20: the ball less the napkin ring's half, 2/3 pi (R^3 -
        // (R^2 - r^2)^1.5)
        Crown crown = new Crown(new CrownForm.Dome(25, 50), 40, List.of());
        double exact = 2.0 / 3 * Math.PI * (25.0 * 25 * 25 - 15.0 * 15 * 15) / 1000;
        assertThat(CrownVolumes.of(crown).domeCm3()).isCloseTo(exact, within(1e-12));
    }

    @Test
    void anUprightPocketInAFlatCrownIsACylinder() {
        Crown crown = Examples.with(Examples.FLAT, new Pocket(24, 3.2, 11, 77, 0));
        assertThat(pockets(crown)).isCloseTo(Math.PI * 144 * 3.2 / 1000, within(ACCURACY_CM3));
    }

    @Test
    void aLeaningPocketAllBelowThePlaneIsAsLongAsItsAxis() {
        // a cylinder cut by a slanting plane: base area times the length on the axis
        Crown crown = Examples.with(Examples.FLAT, new Pocket(20, 6, 5, 200, 25));
        assertThat(pockets(crown)).isCloseTo(Math.PI * 100 * 6 / 1000, within(ACCURACY_CM3));
    }

    @Test
    void aLeaningPocketWhoseFloorSurfacesIsAHoof() {
        // floor centre on the plane: a cylindrical wedge (ungula) of height R tan(tilt), volume 2/3 R^2 h
        Crown crown = Examples.with(Examples.FLAT, new Pocket(20, 0, 5, 200, 25));
        double exact = 2.0 / 3 * 100 * 10 * Math.tan(Math.toRadians(25)) / 1000;
        assertThat(pockets(crown)).isCloseTo(exact, within(ACCURACY_CM3));
    }

    @Test
    void anUprightPocketOnTheAxisOfADomeTakesTheSphereAboveItToo() {
        // pi R^2 (depth + centre's height) + 2/3 pi (rho^3 - (rho^2 - R^2)^1.5), rho = (23^2 + 4^2) / 8
        double rho = (23.0 * 23 + 16) / 8;
        double under =
                Math.PI * 144 * (3 + 4 - rho) + 2.0 / 3 * Math.PI * (Math.pow(rho, 3) - Math.pow(rho * rho - 144, 1.5));
        assertThat(pockets(Examples.with(Examples.DOME, new Pocket(24, 3, 0, 0, 0))))
                .isCloseTo(under / 1000, within(ACCURACY_CM3));
    }

    @Test
    void anUprightPocketOnTheAxisOfADishTakesOnlyWhatTheDishLeft() {
        double rho = (20.0 * 20 + 4) / 4;
        // depth 5 below the plane; the surface is at rho - 2 - sqrt(rho^2 - r^2), so the length is 5 + (rho - 2) -
        // sqrt(...)
        double exact =
                Math.PI * 144 * (5 + rho - 2) - 2.0 / 3 * Math.PI * (Math.pow(rho, 3) - Math.pow(rho * rho - 144, 1.5));
        assertThat(pockets(Examples.with(Examples.DISH, new Pocket(24, 5, 0, 0, 0))))
                .isCloseTo(exact / 1000, within(ACCURACY_CM3));
    }

    @Test
    void overlapOfTwoUprightPocketsIsCountedOnce() {
        // two circles of radii 12 and 10, centres 14 apart, share a lens
        Crown crown = Examples.with(Examples.FLAT, new Pocket(24, 3, 7, 30, 0), new Pocket(20, 3, 7, 210, 0));
        double exact = Math.PI * (144 + 100) * 3 - 3 * lens(12, 10, 14);
        assertThat(pockets(crown)).isCloseTo(exact / 1000, within(ACCURACY_CM3));
    }

    @Test
    void theShallowerOfTwoOverlappingPocketsAddsOnlyWhatIsBesideTheDeeper() {
        Pocket deep = new Pocket(24, 4, 7, 30, 0);
        Pocket shallow = new Pocket(20, 2, 7, 210, 0);
        double exact = (Math.PI * (144 * 4 + 100 * 2) - 2 * lens(12, 10, 14)) / 1000;
        assertThat(pockets(Examples.with(Examples.FLAT, deep, shallow))).isCloseTo(exact, within(ACCURACY_CM3));
        assertThat(pockets(Examples.with(Examples.FLAT, shallow, deep))).isCloseTo(exact, within(ACCURACY_CM3));
    }

    @Test
    void whatLiesBeyondTheLandIsNotCut() {
        Crown crown = Examples.with(Examples.FLAT, new Pocket(24, 3, 18, 30, 0));
        assertThat(pockets(crown)).isCloseTo(3 * lens(24.8, 12, 18) / 1000, within(ACCURACY_CM3));
    }

    @Test
    void aPocketInAPocketAddsNothing() {
        Pocket wide = new Pocket(24, 3, 10, 30, 20);
        Crown both = Examples.with(Examples.DOME, wide, new Pocket(20, 2.5, 10, 30, 20));
        assertThat(pockets(both)).isCloseTo(pockets(Examples.with(Examples.DOME, wide)), within(ACCURACY_CM3));
    }

    @Test
    void agreesWithCountingPoints() {
        assertThat(pockets(Examples.leaningPair()))
                .isCloseTo(Examples.removedByCountingCm3(Examples.leaningPair(), 4_000_000), within(0.001));
        for (long seed = 1; seed <= 6; seed++) {
            Crown crown = Examples.random(seed);
            assertThat(pockets(crown))
                    .as("crown %d: %s", seed, crown)
                    .isCloseTo(Examples.removedByCountingCm3(crown, 1_000_000), within(0.004));
        }
    }

    @Test
    void aSmallChangeOfDepthChangesTheVolumeByTheFloorsAreaTimesIt() {
        // smooth enough for sensitivities: all of the floor is in metal, so dV/d(depth) is the floor's area
        double step = 0.01;
        double more = pockets(Examples.with(Examples.DOME, new Pocket(20, 6 + step, 6, 40, 20)));
        double less = pockets(Examples.with(Examples.DOME, new Pocket(20, 6 - step, 6, 40, 20)));
        assertThat((more - less) * 1000 / (2 * step)).isCloseTo(Math.PI * 100, within(0.5));
    }

    /** Area shared by two circles at a distance (Weisstein, CRC Concise Encyclopedia of Mathematics, "Circle-Circle Intersection"). */
    private static double lens(double a, double b, double d) {
        double root = Math.sqrt((-d + a + b) * (d + a - b) * (d - a + b) * (d + a + b));
        return a * a * Math.acos((d * d + a * a - b * b) / (2 * d * a))
                + b * b * Math.acos((d * d + b * b - a * a) / (2 * d * b))
                - root / 2;
    }
}
