package gudgeon.rebuild.build;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.StopTouched;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings of timing that can't be taken down. */
class ProvingRefusalsTest {
    private static final Build BUILD = build();

    private static Build build() {
        try {
            String text = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
            return Build.of(((BookReading.Read) new EngineBookReader().read(text)).book());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> refusals(Fact fact) {
        return Refusals.of(BUILD, List.of(fact));
    }

    @ParameterizedTest
    @CsvSource({
        "inlet, 1.0 mm, 12 btdc, 45 abdc",
        "inlet, 40 thou, 348, 225",
        "exhaust, 5, 20 bbdc, 30 btdc",
    })
    void takesReadingsAsPeopleWriteThem(String valve, String lift, String opening, String closing) {
        assertThat(refusals(new LobeRead(valve, lift, opening, closing, ""))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "inlet, 1.0 mm, 800, 45 abdc, out of range",
        "inlet, 1.0 mm, 12 btdc, 170 abdc, out of range",
        "inlet, 1.0 mm, 100 abdc, 20 bbdc, would close before it opens",
        "inlet, 9 mm, 12 btdc, 45 abdc, greatest lift is 7.85 mm",
        "inlet, 0, 12 btdc, 45 abdc, greatest lift",
        "inlet, 1 deg, 12 btdc, 45 abdc, is no lift",
        "third, 1.0 mm, 12 btdc, 45 abdc, has no valve",
    })
    void refusesALobeThatCantBe(String valve, String lift, String opening, String closing, String why) {
        assertThat(refusals(new LobeRead(valve, lift, opening, closing, "")))
                .singleElement()
                .asString()
                .contains(why);
    }

    @Test
    void tellsAllThatIsWrongAtOnce() {
        assertThat(refusals(new LobeRead("inlet", "9 mm", "800", "x", ""))).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource({
        "OPENS, 25 btdc",
        "OPENS, 2.5 mm btdc",
        "OPENS, 2.9 mm btdc at 30 deg",
        "OPENS, 24 mm btdc on the rim",
        "OPENS, 3 atdc",
        "OPENS, tdc",
        "OPENS, 1/8 in btdc",
        "GAP, 0.35 mm",
        "GAP, 14 thou",
        "DWELL, 180°",
        "DWELL, 58 %",
    })
    void takesTheSparkAsPeopleWriteIt(IgnitionSize what, String value) {
        assertThat(refusals(new IgnitionRead(what, value, ""))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "OPENS, 95 btdc",
        "OPENS, early",
        "OPENS, 2.9 mm btdc at 80 deg",
        "OPENS, -3 btdc",
        "GAP, 0",
        "GAP, 5 mm",
        "GAP, 20 deg",
        "DWELL, 400 deg",
        "DWELL, 120 %",
        "DWELL, long",
    })
    void refusesASparkThatCantBe(IgnitionSize what, String value) {
        assertThat(refusals(new IgnitionRead(what, value, ""))).hasSize(1);
    }

    @Test
    void refusesAStopThatHeldNothing() {
        assertThat(refusals(new StopTouched(330, 30, ""))).isEmpty();
        assertThat(refusals(new StopTouched(30, 30, "")))
                .singleElement()
                .asString()
                .contains("did not hold the piston");
        assertThat(refusals(new StopTouched(360, -1, ""))).hasSize(2);
    }
}
