package gudgeon.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TighteningOrderTest {
    /** Cross patterns of ASME PCC-1, table 2, holes numbered from 1 round the ring (from memory). */
    @Test
    void ringsFollowTheCrossPatterns() {
        assertThat(numbered(4)).containsExactly(1, 3, 2, 4);
        assertThat(numbered(8)).containsExactly(1, 5, 3, 7, 2, 6, 4, 8);
        assertThat(numbered(12)).containsExactly(1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12);
        assertThat(numbered(16)).containsExactly(1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16);
    }

    @Test
    void aStarNamesEveryHoleOnceAndNeverTwoNeighboursFromFiveOn() {
        for (int holes = 0; holes <= 48; holes++) {
            List<Integer> star = TighteningOrder.star(holes);
            assertThat(star)
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, holes).boxed().toList());
            for (int i = 1; holes > 8 && i < holes; i++) {
                int apart = Math.floorMod(star.get(i) - star.get(i - 1), holes);
                assertThat(Math.min(apart, holes - apart))
                        .as("%d holes, step %d", holes, i)
                        .isGreaterThan(1);
            }
        }
    }

    @Test
    void aRingIsFollowedWhereverItsHolesAreListed() {
        List<HolePlace> round = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double angle = 0.3 - i * Math.PI / 4;
            round.add(new HolePlace(50 + 30 * Math.cos(angle), 20 + 30 * Math.sin(angle)));
        }
        assertThat(TighteningOrder.ring(round)).containsExactlyElementsOf(TighteningOrder.star(8));
        List<HolePlace> shuffled = new ArrayList<>(round.subList(1, 8));
        Collections.shuffle(shuffled, new Random(5));
        shuffled.add(0, round.get(0));
        assertThat(TighteningOrder.ring(shuffled).stream().map(shuffled::get))
                .containsExactlyElementsOf(
                        TighteningOrder.star(8).stream().map(round::get).toList());
    }

    @Test
    void aHeadOfTwoRowsGoesFromTheMiddleOutwardsAndCrosswise() {
        List<HolePlace> holes = new ArrayList<>();
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 5; column++) {
                holes.add(new HolePlace(80 * column, 100 * row));
            }
        }
        List<Integer> order = TighteningOrder.outwards(holes);
        assertThat(order.subList(0, 2)).containsExactlyInAnyOrder(2, 7);
        assertThat(order.subList(2, 6)).containsExactlyInAnyOrder(1, 3, 6, 8);
        assertThat(order.subList(6, 10)).containsExactlyInAnyOrder(0, 4, 5, 9);
        // across the head, not along it
        assertThat(holes.get(order.get(2)).fromMm(holes.get(order.get(3)))).isGreaterThan(180);
    }

    @Test
    void threePassesAreAThirdTwoThirdsAndAll() {
        assertThat(Passes.shares(1)).containsExactly(1.0);
        assertThat(Passes.shares(2)).containsExactly(0.5, 1.0);
        assertThat(Passes.shares(3)).containsExactly(0.3, 0.7, 1.0);
        assertThatThrownBy(() -> Passes.shares(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void standardLengthsAreThoseOfTheSpan() {
        assertThat(StandardLengths.between(38, 47)).containsExactly(40.0, 45.0);
        assertThat(StandardLengths.between(12.5, 15.9)).isEmpty();
        assertThat(StandardLengths.all()).isSorted().doesNotHaveDuplicates();
    }

    private static List<Integer> numbered(int holes) {
        return TighteningOrder.star(holes).stream().map(hole -> hole + 1).toList();
    }
}
