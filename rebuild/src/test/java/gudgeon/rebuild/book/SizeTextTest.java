package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.book.SizeText.NotASize;
import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizeTextTest {
    /** 1 in = 25.4 mm exactly (NIST SP 811, 2008, appendix B.8); 1 in³ = 16.387064 cm³ is its cube. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "21.0               | 21.0       | -       | -",
                "21,05              | 21.05      | -       | -",
                "-0.20              | -0.2       | -       | -",
                "−0.20              | -0.2       | -       | -",
                "+3                 | 3          | -       | -",
                ".5                 | 0.5        | -       | -",
                "21.0 mm ± 0.02     | 21.0       | MM      | 0.02",
                "21.0±0.02mm        | 21.0       | MM      | 0.02",
                "21 +/- 0.02        | 21         | -       | 0.02",
                "21 +- 0,02         | 21         | -       | 0.02",
                "1 in               | 25.4       | MM      | -",
                "0.827 in           | 21.0058    | MM      | -",
                "0.827\"            | 21.0058    | MM      | -",
                "0.827 in ± 1 thou  | 21.0058    | MM      | 0.0254",
                "0.827 in ± 0.001   | 21.0058    | MM      | 0.0254",
                "8 thou             | 0.2032     | MM      | -",
                "1/2 in             | 12.7       | MM      | -",
                "1 31/32 in         | 50.00625   | MM      | -",
                "2.1 cm             | 21         | MM      | -",
                "50 µm              | 0.05       | MM      | -",
                "25°                | 25         | DEGREES | -",
                "25 deg ± 0.5       | 25         | DEGREES | 0.5",
                "9.8 cm3 ± 0.1      | 9.8        | CM3     | 0.1",
                "9.8 cc             | 9.8        | CM3     | -",
                "6 cu in            | 98.322384  | CM3     | -",
                "6 in3              | 98.322384  | CM3     | -",
            })
    void readsWhatAPersonWrites(String text, double value, Unit unit, Double halfWidth) throws NotASize {
        SizeText size = SizeText.of(text);
        assertThat(size.value()).isEqualTo(value);
        assertThat(size.unit()).isEqualTo(Optional.ofNullable(unit));
        assertThat(size.halfWidth()).isEqualTo(Optional.ofNullable(halfWidth));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mm",
                "±",
                "1 ± ",
                "± 1",
                "1 2",
                "1 ± 2 ± 3",
                "1e3",
                "0x10",
                "1_000",
                "NaN",
                "inf",
                "1/0",
                "1.2.3",
                "1 mm in",
                "٣"
            })
    void refusesWhatIsNoSize(String text) {
        assertThatThrownBy(() -> SizeText.of(text)).isInstanceOf(NotASize.class);
    }

    @Property(tries = 200)
    void whatIsWrittenIsRead(
            @ForAll @BigRange(min = "-999", max = "999") @Scale(3) BigDecimal value,
            @ForAll @BigRange(min = "0", max = "9") @Scale(3) BigDecimal half)
            throws NotASize {
        SizeText size = SizeText.of(value.toPlainString() + " mm ± " + half.toPlainString());
        assertThat(size.value()).isEqualTo(value.doubleValue());
        assertThat(size.halfWidth()).contains(half.doubleValue());
        SizeText comma = SizeText.of(value.toPlainString().replace('.', ','));
        assertThat(comma.value()).isEqualTo(value.doubleValue());
        SizeText inches = SizeText.of(value.toPlainString() + " in");
        assertThat(inches.value())
                .isEqualTo(value.multiply(new BigDecimal("25.4")).doubleValue());
    }

    @Property(tries = 300)
    void anyTextIsASizeOrASentence(@ForAll String text) {
        try {
            assertThat(SizeText.of(text).value()).isFinite();
        } catch (NotASize e) {
            assertThat(e.sentence()).endsWith(".");
        }
    }
}
