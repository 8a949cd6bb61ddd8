package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.build.Build;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Memory does not grow with the shelf, however short its builds are. */
class FoldedBuildsTest {
    private static final int BUILDS = 1_000;

    @Test
    void ofAThousandShortBuildsThoseLastAskedForAreKept() {
        FoldedBuilds folded = new FoldedBuilds();
        Build build = Build.of(Archetype.SIDE_VALVE_STATIONARY.book());
        for (int n = 0; n < BUILDS; n++) {
            folded.put("build-" + n, build);
            folded.of("build-0");
        }
        long most = FoldedBuilds.MOST_ENTRIES / FoldedBuilds.A_BOOK;
        assertThat(IntStream.range(0, BUILDS)
                        .filter(n -> folded.of("build-" + n).isPresent()))
                .contains(0, BUILDS - 1)
                .hasSize((int) most);
        folded.remove("build-0");
        folded.remove("build-0");
        folded.put("another", build);
        assertThat(folded.of("build-" + (BUILDS - 1))).as("room was made once").isPresent();
    }
}
