package gudgeon.rebuild.drill;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The invented engine is what the demo says of it. */
class ScenarioTest {
    private static TrialFit fit(String piston, String gasket) throws IOException {
        Geometry book = ((BookReading.Read)
                        new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml"))))
                .book()
                .geometry()
                .orElseThrow();
        return TrialFit.of(
                book,
                new Choice(Optional.of(piston), Optional.of(gasket), 0, OptionalDouble.empty(), false, Map.of()),
                LengthUnit.MM);
    }

    private static double figure(TrialFit fit, String key) {
        return fit.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow()
                .low();
    }

    @Test
    void theOriginalPistonClearsWithTheStandardGasket() throws IOException {
        TrialFit fit = fit("original", "standard");
        assertThat(fit.findings())
                .allSatisfy(finding ->
                        assertThat(finding.verdict()).as(finding.sentence()).isEqualTo(Verdict.CLEARS));
        assertThat(figure(fit, "sweptCm3")).isBetween(97.5, 98.5);
        assertThat(figure(fit, "compressionRatio")).isBetween(8.2, 8.8);
        assertThat(fit.figures())
                .filteredOn(figure -> figure.key().startsWith("metalLeft"))
                .hasSize(6)
                .allSatisfy(figure -> assertThat(figure.low()).isGreaterThan(1));
    }

    @Test
    void thePatternPistonTouchesBeforeOverlapTopDeadCentre() throws IOException {
        TrialFit fit = fit("pattern", "standard");
        Finding bore = fit.findings().stream()
                .filter(finding -> finding.kind() == GapKind.BORE
                        && finding.valves().get(0).equals("exhaust"))
                .findFirst()
                .orElseThrow();
        assertThat(bore.verdict()).isEqualTo(Verdict.TOUCHES);
        assertThat(bore.gap().atDeg()).isBetween(330.0, 360.0);
        assertThat(fit.tightForwardDeg().orElseThrow()).isLessThan(bore.gap().atDeg());
        assertThat(fit.cures()).anySatisfy(cure -> assertThat(cure.works()).isTrue());
    }

    @Test
    void theThinGasketLeavesTooLittleRoom() throws IOException {
        assertThat(fit("original", "thin").allClear()).isFalse();
    }
}
