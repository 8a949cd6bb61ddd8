package gudgeon.rebuild.journal;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Structure;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TellingTest {
    private static final Structure STRUCTURE =
            ((BookReading.Read) new EngineBookReader().read("""
                            book: 1
                            engine: {name: Tarn 98}
                            positions:
                              - {id: piston, name: piston}
                              - {id: gudgeon-circlips, name: gudgeon pin circlips, quantity: 2}
                            steps:
                              - {id: fit-piston, name: Fit the piston to the rod, fits: [piston, gudgeon-circlips]}
                            checks:
                              - {id: circlips-seen, name: Both circlips seen in their grooves, how: seen, clears: [gudgeon-circlips]}
                            """)).book().structure();

    private static String told(Fact fact) {
        return Telling.of(fact, STRUCTURE);
    }

    @Test
    void saysNamesNotIds() {
        assertThat(told(new Fact.TakenOff("gudgeon-circlips", 2, "14", "on the shelf", "one was bent")))
                .isEqualTo("Taken off: gudgeon pin circlips (2), into bag 14, kept on the shelf. One was bent.");
        assertThat(told(new Fact.StepDone("fit-piston", ""))).isEqualTo("Step done: Fit the piston to the rod.");
        assertThat(told(new Fact.Measured("piston", "new", Map.of("pockets.exhaust.depth", "0.2 mm"))))
                .isEqualTo("Measured on piston 'new': exhaust pocket depth 0.2 mm.");
        assertThat(told(new Fact.Fitted("piston", "new", 1, Way.TURNED, "")))
                .isEqualTo("Fitted: piston, part 'new', turned by half a turn.");
        assertThat(told(new Fact.WentTight(OptionalDouble.of(345), OptionalDouble.of(371.5), "")))
                .isEqualTo(
                        "Turned by hand, the crank goes tight at 345.0° turning forward and at 371.5° turning backward.");
    }

    @Test
    void tellsWhatStandsInsteadOfACorrectedEntry() {
        assertThat(told(new Fact.Corrected(
                        "k1",
                        "Ticked the wrong one.",
                        Optional.of(new Fact.CheckFailed("circlips-seen", "", "one is out")))))
                .isEqualTo("An entry was wrong and no longer counts. Ticked the wrong one."
                        + " Instead: Check failed: Both circlips seen in their grooves. One is out.");
    }

    static Stream<Class<?>> facts() {
        return Stream.of(Fact.class.getDeclaredClasses()).filter(Class::isRecord);
    }

    @ParameterizedTest
    @MethodSource("facts")
    void everyFactHasASentence(Class<?> type) throws ReflectiveOperationException {
        assertThat(told(made(type, "piston"))).matches("[A-Z].*[.!?]").doesNotContain("  ", "..");
    }

    private static Fact made(Class<?> type, String text) throws ReflectiveOperationException {
        Class<?>[] types = Stream.of(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        Object[] values =
                Stream.of(types).map(component -> value(component, text)).toArray();
        return (Fact) type.getDeclaredConstructor(types).newInstance(values);
    }

    private static Object value(Class<?> type, String text) {
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return Objects.requireNonNull(Map.<Class<?>, Object>of(
                        String.class,
                        text,
                        int.class,
                        1,
                        boolean.class,
                        true,
                        double.class,
                        0.1,
                        List.class,
                        text.isEmpty() ? List.of() : List.of(text),
                        Map.class,
                        Map.of("land", "49.6"),
                        Optional.class,
                        Optional.empty(),
                        OptionalDouble.class,
                        OptionalDouble.empty())
                .get(type));
    }
}
