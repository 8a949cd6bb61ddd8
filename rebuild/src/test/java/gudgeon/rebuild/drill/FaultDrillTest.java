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
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * The drills of {@code examples/drill} that a trial fit alone shows: each mistake must be caught, and its twin without the mistake
 * raise no alarm.
 */
class FaultDrillTest {
    private static final Path DRILLS = Path.of("..", "examples", "drill");

    static Stream<Path> drills() throws IOException {
        try (Stream<Path> folders = Files.list(DRILLS)) {
            return folders
                    .filter(folder -> Files.exists(folder.resolve("drill.yaml")))
                    .filter(FaultDrillTest::isOfAFit)
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static boolean isOfAFit(Path folder) {
        try {
            return map(drill(folder), "expected").containsKey("gap");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @ParameterizedTest
    @MethodSource("drills")
    void theMistakeIsCaught(Path folder) throws IOException {
        Map<?, ?> drill = drill(folder);
        Finding finding = expected(drill, fit(folder, drill, "fault"));
        assertThat(finding.verdict().name().toLowerCase(Locale.ROOT))
                .as("%s %s", drill.get("mistake"), finding.sentence())
                .isEqualTo(map(drill, "expected").get("verdict"));
    }

    @ParameterizedTest
    @MethodSource("drills")
    void itsTwinRaisesNoAlarm(Path folder) throws IOException {
        Map<?, ?> drill = drill(folder);
        Finding finding = expected(drill, fit(folder, drill, "sound"));
        assertThat(finding.verdict()).as("%s", finding.sentence()).isEqualTo(Verdict.CLEARS);
    }

    private static Map<?, ?> drill(Path folder) throws IOException {
        String text = Files.readString(folder.resolve("drill.yaml"));
        return (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
    }

    private static Map<?, ?> map(Map<?, ?> of, String key) {
        return of.get(key) instanceof Map<?, ?> map ? map : Map.of();
    }

    private static TrialFit fit(Path folder, Map<?, ?> drill, String which) throws IOException {
        BookReading reading =
                new EngineBookReader().read(Files.readString(folder.resolve(String.valueOf(drill.get("book")))));
        Geometry book = ((BookReading.Read) reading).book().geometry().orElseThrow();
        Map<?, ?> choice = map(drill, which);
        Map<String, Double> changed = new HashMap<>();
        map(choice, "changed")
                .forEach((path, value) -> changed.put(String.valueOf(path), ((Number) value).doubleValue()));
        return TrialFit.of(
                book,
                new Choice(
                        Optional.ofNullable(choice.get("piston")).map(String::valueOf),
                        Optional.ofNullable(choice.get("gasket")).map(String::valueOf),
                        choice.get("teeth") instanceof Integer teeth ? teeth : 0,
                        OptionalDouble.empty(),
                        Boolean.TRUE.equals(choice.get("turned")),
                        changed),
                LengthUnit.MM);
    }

    private static Finding expected(Map<?, ?> drill, TrialFit fit) {
        Map<?, ?> expected = map(drill, "expected");
        GapKind kind = GapKind.valueOf(
                String.valueOf(expected.get("gap")).toUpperCase(Locale.ROOT).replace('-', '_'));
        List<?> valves = (List<?>) Optional.ofNullable(expected.get("valves")).orElse(List.of());
        return fit.findings().stream()
                .filter(finding -> finding.kind() == kind && finding.valves().equals(valves))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind + " of " + valves));
    }
}
