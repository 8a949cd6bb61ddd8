package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CrownTest {
    @Test
    void theSurfaceIsTheCapInsideItsCircleAndThePlaneAroundIt() {
        Crown dome = Examples.with(Examples.DOME);
        assertThat(dome.surfaceMm(0, 0)).isCloseTo(4, within(1e-12));
        assertThat(dome.surfaceMm(23, 0)).isCloseTo(0, within(1e-12));
        assertThat(dome.surfaceMm(0, 24)).isZero();
        // intersecting chords through a point of the sphere: (4 - z)(2 R - 4 + z) = r^2, with 2 R = 23^2 / 4 + 4
        double z = dome.surfaceMm(6, 8);
        assertThat((4 - z) * (23.0 * 23 / 4 + z)).isCloseTo(100, within(1e-9));

        Crown dish = Examples.with(Examples.DISH);
        assertThat(dish.surfaceMm(0, 0)).isCloseTo(-2, within(1e-12));
        assertThat(dish.surfaceMm(-20, 0)).isCloseTo(0, within(1e-12));
        assertThat(Examples.with(Examples.FLAT).surfaceMm(3, 4)).isZero();
    }

    @Test
    void metalIsWithinTheLandUnderTheSurfaceAndInNoPocket() {
        Crown crown = Examples.with(Examples.DOME, new Pocket(24, 3, 12, 90, 0));
        assertThat(crown.metalAt(0, -10, 3)).isTrue();
        assertThat(crown.metalAt(0, -10, 3.5)).isFalse();
        assertThat(crown.metalAt(0, -24.7, -0.1)).isTrue();
        assertThat(crown.metalAt(0, -24.9, -0.1)).isFalse();
        assertThat(crown.metalAt(0, 12, -2.9)).isFalse();
        assertThat(crown.metalAt(0, 12, -3.1)).isTrue();
        assertThat(crown.metalAt(0, -0.1, 0)).isTrue();
        assertThat(crown.metalAt(0, 0.1, 0)).isFalse();
    }

    @Test
    void aLeaningPocketTakesItsOverhangToo() {
        // the axis through (12, 0, 0) leans out by 30 degrees: on the floor side the wall undercuts towards the bore
        // axis
        Crown crown = Examples.with(Examples.FLAT, new Pocket(10, 4, 12, 0, 30));
        double floorX = 12 - 4 * 0.5;
        double floorZ = -4 * Math.sqrt(3) / 2;
        assertThat(crown.metalAt(floorX, 0, floorZ + 0.01)).isFalse();
        assertThat(crown.metalAt(floorX, 0, floorZ - 0.01)).isTrue();
        // the floor's inner end is at half the diameter along the floor, which rises inwards
        double rimX = floorX - 5 * Math.cos(Math.PI / 6);
        double rimZ = floorZ + 5 * 0.5;
        assertThat(crown.metalAt(rimX + 0.02, 0, rimZ + 0.02)).isFalse();
        assertThat(crown.metalAt(rimX - 0.02, 0, rimZ + 0.02)).isTrue();
    }
}
