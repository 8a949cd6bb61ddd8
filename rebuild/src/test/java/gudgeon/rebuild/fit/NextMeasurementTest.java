package gudgeon.rebuild.fit;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Geometry;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NextMeasurementTest {
    private static final Choice ORIGINAL = Tarn.piston("original", Map.of());

    private static Geometry tarn(String text, String by) {
        assertThat(Tarn.text()).contains(text);
        return Tarn.read(Tarn.text().replace(text, by));
    }

    @Test
    void nothingIsMeasuredThatIsProven() {
        assertThat(Tarn.fit(Tarn.book(), ORIGINAL).next()).isEmpty();
    }

    @Test
    void aVagueProtrusionIsMeasuredNextWithTheDepthMicrometerAndThatSettlesIt() {
        String booked = "{readings: [-0.06, -0.04, -0.05], with: depth-micrometer, note: Three places across the pin"
                + " with the piston held down.}";
        TrialFit vague = Tarn.fit(tarn(booked, "-0.05 ± 1.0"), ORIGINAL);
        Finding deck = Tarn.finding(vague, GapKind.DECK);
        assertThat(deck.verdict()).isEqualTo(Verdict.UNPROVEN);
        assertThat(deck.budget().get(0).input().path()).isEqualTo("crank.protrusion");
        NextMeasurement next = vague.next().orElseThrow();
        assertThat(next.input().path()).isEqualTo("crank.protrusion");
        assertThat(next.sentence()).contains("would settle it");

        TrialFit measured = Tarn.fit(tarn(booked, "-0.05 with depth-micrometer"), ORIGINAL);
        assertThat(Tarn.finding(measured, GapKind.DECK).verdict()).isEqualTo(Verdict.CLEARS);
    }

    @Test
    void whereNoInstrumentIsFineEnoughThatIsSaid() {
        // a deck gap 0.01 mm above what is wanted can't be proven with a depth micrometer of 0.01 mm
        TrialFit fit = Tarn.fit(
                tarn("standard, pressed: 1.00 ± 0.05", "standard, pressed: 1.00 ± 0.3"),
                Tarn.piston("original", Map.of("gaskets.standard.pressed", 0.76)));
        assertThat(Tarn.finding(fit, GapKind.DECK).verdict()).isEqualTo(Verdict.UNPROVEN);
        assertThat(fit.next().orElseThrow().sentence()).doesNotContain("would settle it:");
    }

    @Test
    void aLiftOfUnknownShapeIsTakenAsATable() {
        String text = Tarn.text();
        int from = text.indexOf("    lift:", text.indexOf("id: exhaust"));
        int to = text.indexOf("  - id: inlet", from);
        Geometry events = Tarn.read(text.substring(0, from)
                + "    lift: {opens: 40 bbdc, closes: 30 atdc, at: 1.0, greatest: 7.95}\n"
                + text.substring(to));
        TrialFit fit = Tarn.fit(events, ORIGINAL);
        Finding bore = Tarn.finding(fit, GapKind.BORE, "exhaust");
        assertThat(bore.leanLeastMm().orElseThrow()).isGreaterThan(bore.gap().leastMm());
        assertThat(bore.verdict()).as(bore.sentence()).isEqualTo(Verdict.UNPROVEN);
        assertThat(fit.next().orElseThrow().sentence()).contains("degree disc");
    }
}
