package gudgeon.mechanics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ShimsTest {
    @Test
    void theNearestToTheMiddleIsTaken() {
        Shims.Choice choice = new Shims(0.62, 0.10, 0.20, List.of(0.10, 0.10, 0.15, 0.20, 0.30))
                .choice()
                .orElseThrow();
        assertThat(choice.shimsMm()).containsExactly(0.30, 0.15);
        assertThat(choice.floatMm()).isCloseTo(0.17, within(1e-9));
    }

    /** Every subset counted by hand: the same distance from the middle, and as few shims. */
    @Property(tries = 300)
    void theChoiceIsThatOfCountingEverySubset(
            @ForAll @Size(max = 10) List<@IntRange(min = 5, max = 60) Integer> stock,
            @ForAll @IntRange(min = 0, max = 200) int end,
            @ForAll @IntRange(min = 0, max = 30) int least,
            @ForAll @IntRange(min = 0, max = 20) int width) {
        int best = Integer.MAX_VALUE;
        int pieces = Integer.MAX_VALUE;
        for (int set = 0; set < 1 << stock.size(); set++) {
            int left = end;
            for (int i = 0; i < stock.size(); i++) {
                left -= (set >> i & 1) * stock.get(i);
            }
            int off = Math.abs(2 * left - 2 * least - width);
            if (left >= least
                    && left <= least + width
                    && (off < best || (off == best && Integer.bitCount(set) < pieces))) {
                best = off;
                pieces = Integer.bitCount(set);
            }
        }
        var choice = new Shims(
                        end / 100.0,
                        least / 100.0,
                        (least + width) / 100.0,
                        stock.stream().map(t -> t / 100.0).toList())
                .choice();
        assertThat(choice.isPresent()).isEqualTo(best != Integer.MAX_VALUE);
        if (choice.isPresent()) {
            assertThat(Math.abs(200 * choice.get().floatMm() - 2 * least - width))
                    .isCloseTo(best, within(1e-6));
            assertThat(choice.get().shimsMm()).hasSize(pieces);
            List<Double> left =
                    new ArrayList<>(stock.stream().map(t -> t / 100.0).toList());
            choice.get().shimsMm().forEach(shim -> assertThat(left.remove(shim)).isTrue());
        }
    }

    @Property(tries = 300)
    void theShimToBuyDoes(
            @ForAll @Size(max = 6) List<@IntRange(min = 5, max = 60) Integer> stock,
            @ForAll @IntRange(min = 0, max = 200) int end) {
        List<Double> pieces = stock.stream().map(t -> t / 100.0).toList();
        var wanted = new Shims(end / 100.0, 0.10, 0.20, pieces).wanted(0.05);
        assertThat(wanted.isPresent()).isEqualTo(end >= 20);
        wanted.ifPresent(shim -> {
            for (double bought : List.of(shim.leastMm(), shim.mostMm())) {
                double left = end / 100.0
                        - bought
                        - shim.withMm().stream().mapToDouble(t -> t).sum();
                assertThat(left).isBetween(0.10 - 1e-9, 0.20 + 1e-9);
            }
        });
    }

    @Test
    void noneIsChosenWhereNoneIsNeededOrNoneHelps() {
        assertThat(new Shims(0.15, 0.10, 0.20, List.of(0.10))
                        .choice()
                        .orElseThrow()
                        .shimsMm())
                .isEmpty();
        assertThat(new Shims(0.05, 0.10, 0.20, List.of(0.10)).choice()).isEmpty();
        assertThat(new Shims(0.05, 0.10, 0.20, List.of(0.10)).wanted(0.05)).isEmpty();
        assertThat(new Shims(0.62, 0.10, 0.20, List.of()).wanted(0.05).orElseThrow())
                .returns(List.of(), Shims.Wanted::withMm);
    }

    @Test
    void whatCantBeIsRefused() {
        assertThatThrownBy(() -> new Shims(-1, 0, 1, List.of())).hasMessageContaining("end float");
        assertThatThrownBy(() -> new Shims(1, 0.2, 0.1, List.of())).hasMessageContaining("upwards");
        assertThatThrownBy(() -> new Shims(1, 0, 1, List.of(0.0))).hasMessageContaining("stock");
    }
}
