package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person may type in place of a size, and what is said when it can't be used. */
class TypedSizeTest {
    /** The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource({
        "MM, 3.2, 1, 3.2",
        "MM, '3,2', 1, 3.2",
        "MM, 0.118 in, 1, 2.9972",
        "MM, 0.118, 25.4, 2.9972",
        "MM, 3 mm, 25.4, 3",
        "DEGREES, 25, 25.4, 25",
        "CM3, 9.8 cc, 1, 9.8"
    })
    void readsASize(Unit unit, String text, double bareLengthMm, double value) {
        assertThat(TypedSize.of(unit, text, bareLengthMm))
                .isInstanceOfSatisfying(
                        TypedSize.Read.class, read -> assertThat(read.value()).isCloseTo(value, within(1e-9)));
    }

    @ParameterizedTest
    @CsvSource({
        "MM, '', Nothing stands here",
        "MM, three, is not a number",
        "MM, 25 deg, This is a size in °",
        "DEGREES, 3 mm, such as 25",
        "NONE, 1 mm, a plain number is wanted"
    })
    void saysWhyItCannotBeUsedAndWhatToType(Unit unit, String text, String part) {
        assertThat(TypedSize.of(unit, text, 1))
                .isInstanceOfSatisfying(
                        TypedSize.Refused.class,
                        refused -> assertThat(refused.sentence())
                                .contains(part)
                                .contains("Type a number")
                                .endsWith("."));
    }
}
