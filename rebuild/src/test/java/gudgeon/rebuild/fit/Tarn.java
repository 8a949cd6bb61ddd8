package gudgeon.rebuild.fit;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Geometry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The example engine and fits of it, for the tests of this room. */
final class Tarn {
    static final String PATTERN_DEPTH = "pistons.pattern.pockets.exhaust.depth";

    private Tarn() {}

    static String text() {
        try {
            return Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Geometry book() {
        return read(text());
    }

    static Geometry read(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book().geometry().orElseThrow();
        }
        throw new AssertionError("refused: " + reading.faults());
    }

    static Choice piston(String id, Map<String, Double> changed) {
        return new Choice(Optional.of(id), Optional.empty(), 0, OptionalDouble.empty(), false, changed);
    }

    static TrialFit fit(Geometry book, Choice choice) {
        return TrialFit.of(book, choice, LengthUnit.MM);
    }

    static TrialFit fit(String piston, Map<String, Double> changed) {
        return fit(book(), piston(piston, changed));
    }

    static Finding finding(TrialFit fit, GapKind kind, String... valves) {
        return fit.findings().stream()
                .filter(finding -> finding.kind() == kind && finding.valves().equals(List.of(valves)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind));
    }

    static CureLine cure(TrialFit fit, String start) {
        return fit.cures().stream()
                .filter(cure -> cure.what().startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no '" + start + "' in " + fit.cures()));
    }
}
