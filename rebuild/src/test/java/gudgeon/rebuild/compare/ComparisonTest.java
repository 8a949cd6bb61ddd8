package gudgeon.rebuild.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.QuickFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static Geometry book(String text, String by) throws IOException {
        String tarn = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        int pattern = tarn.indexOf("- id: pattern");
        int at = tarn.indexOf(text, pattern);
        assertThat(at).isPositive();
        BookReading reading =
                new EngineBookReader().read(tarn.substring(0, at) + by + tarn.substring(at + text.length()));
        return ((BookReading.Read) reading).book().geometry().orElseThrow();
    }

    private static Geometry book() throws IOException {
        return book("land: 49.60", "land: 49.60");
    }

    private static Comparison compare(Geometry book) {
        return Comparison.of(book, "original", "pattern", Choice.asBooked(), LengthUnit.MM);
    }

    private static Compared line(Comparison comparison, String key) {
        return comparison.lines().stream()
                .filter(line -> line.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Effect effect(Compared line, String label) {
        return line.effects().stream()
                .filter(effect -> effect.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static double least(Geometry book, String piston, String label) {
        Choice choice = new Choice(Optional.of(piston), Optional.empty(), 0, OptionalDouble.empty(), false, Map.of());
        return QuickFit.of(book, choice).gaps().stream()
                .filter(gap -> gap.label().equals(label))
                .findFirst()
                .orElseThrow()
                .leastMm();
    }

    @Test
    void theShallowPocketIsTheOnlyDifferenceAndItsEffectIsThatOfThePatternPiston() throws IOException {
        Geometry book = book();
        Comparison comparison = compare(book);
        assertThat(comparison.lines())
                .filteredOn(line -> line.likeness() != Likeness.SAME)
                .extracting(Compared::key)
                .containsExactly("pockets.exhaust.depth");
        Compared depth = line(comparison, "pockets.exhaust.depth");
        assertThat(depth.likeness()).isEqualTo(Likeness.DIFFERENT);
        assertThat(depth.sentence()).startsWith("Exhaust pocket depth: 2.00 mm and 0.20 mm, 1.80 mm less ± 0.0");
        Effect bore = effect(depth, "exhaust bore gap");
        assertThat(bore.before()).isEqualTo(least(book, "original", "exhaust bore gap"), within(1e-6));
        assertThat(bore.after()).isEqualTo(least(book, "pattern", "exhaust bore gap"), within(1e-6));
        assertThat(bore.sentence()).endsWith("which is metal through metal.");
        assertThat(depth.effects())
                .extracting(Effect::label)
                .contains("compression ratio", "metal under exhaust pocket");
        assertThat(comparison.sentence())
                .isEqualTo("The piston 'pattern' differs from 'original' in exhaust pocket depth.");
    }

    @Test
    void aCompressionHeightActsThroughTheCrownsHeight() throws IOException {
        Comparison comparison = compare(book("compression-height: 27.00", "compression-height: 27.40"));
        Compared height = line(comparison, "protrusion");
        assertThat(height.difference().orElseThrow()).isCloseTo(0.4, within(1e-9));
        // what both heights rest on cancels; left are two calliper readings of the compression heights
        double calliper = Math.sqrt(0.01 * 0.01 / 12 + 0.03 * 0.03 / 3);
        assertThat(height.standardUncertainty()).isCloseTo(Math.sqrt(2) * calliper, within(1e-9));
        Effect deck = effect(height, "deck gap");
        assertThat(deck.after() - deck.before()).isCloseTo(-0.4, within(1e-3));
        assertThat(line(comparison, "compression-height").effects()).isEmpty();
    }

    @Test
    void aDifferenceWithinTheDoubtsIsNotProven() throws IOException {
        Comparison comparison = compare(book("diameter: 26.2", "diameter: 26.23"));
        Compared diameter = line(comparison, "pockets.inlet.diameter");
        assertThat(diameter.likeness()).isEqualTo(Likeness.UNPROVEN);
        assertThat(diameter.sentence()).endsWith("these measurements do not prove a difference.");
        assertThat(comparison.sentence()).contains("Not proven by these measurements: inlet pocket diameter.");
    }

    @Test
    void anotherFormAndAMissingPocketAreTriedAsAWhole() throws IOException {
        Comparison flat = compare(
                book("crown: {dome: 4.0 with depth-micrometer, base: 46.0 with calliper}", "crown: {flat: true}"));
        Compared form = line(flat, "crown");
        assertThat(form.sentence()).isEqualTo("Crown form: a dome and flat.");
        assertThat(effect(form, "compression ratio").after())
                .isLessThan(effect(form, "compression ratio").before());
        assertThat(line(flat, "crown.dome").likeness()).isEqualTo(Likeness.ONE_ONLY);
        String inlet =
                "      inlet: {diameter: 26.2 with calliper, depth: 2.0 with depth-micrometer, offset: 10.4 ± 0.1, azimuth: 0 ± 0.5, tilt: 10.0 with protractor}\n";
        Compared none = line(compare(book(inlet, "")), "pockets.inlet");
        assertThat(none.sentence()).isEqualTo("Inlet pocket: cut and none.");
        assertThat(effect(none, "inlet bore gap").after()).isNegative();
    }

    @Test
    void aPistonTheBookLacksIsToldInASentence() throws IOException {
        Geometry book = book();
        assertThatThrownBy(() -> Comparison.of(book, "original", "patern", Choice.asBooked(), LengthUnit.MM))
                .isInstanceOf(UnknownChoice.class)
                .hasMessage("The book has no piston 'patern'; it has 'original', 'pattern'.");
    }
}
