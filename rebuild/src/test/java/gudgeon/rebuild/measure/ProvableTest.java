package gudgeon.rebuild.measure;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.reading.OwnInstruments;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProvableTest {
    private static Provable with(InstrumentKept kept) {
        List<InstrumentKept> own = List.of(kept, TopEnd.MICROMETER);
        Build build = Build.of(TopEnd.BOOK).asIf(own);
        return Provable.with(
                build, OwnInstruments.of(own).named(kept.instrument()).orElseThrow());
    }

    private static List<String> ids(List<Dimension> dimensions) {
        return dimensions.stream().map(Dimension::id).toList();
    }

    @Test
    void anInstrumentIsGoodForWhatItSpansAndIsFineEnoughFor() {
        assertThat(ids(with(TopEnd.BORE_GAUGE).proves())).containsExactly("bore");
        assertThat(ids(with(TopEnd.MICROMETER).proves())).contains("skirt").doesNotContain("bore", "run-out");
    }

    @Test
    void aCoarseOneIsHopelessForTightLimitsOnly() {
        Provable coarse =
                with(TopEnd.kept("old calliper", InstrumentKind.CALLIPER, "0 to 150 mm", "0.1 mm", "0.15 mm"));
        assertThat(ids(coarse.proves())).containsExactly("spring");
        assertThat(ids(coarse.hopeless())).contains("skirt").doesNotContain("spring");
    }

    @Test
    void nothingIsPromisedOfADimensionWithoutLimits() {
        Provable vernier = with(TopEnd.VERNIER);
        assertThat(ids(vernier.proves())).doesNotContain("stud");
        assertThat(ids(vernier.hopeless())).doesNotContain("stud");
    }
}
