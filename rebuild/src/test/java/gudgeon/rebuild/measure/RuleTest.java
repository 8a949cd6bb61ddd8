package gudgeon.rebuild.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bore | mean of the readings",
                "ovality | between the axes at one height",
                "taper | between the heights on one axis",
                "wear | outside what a new part has",
                "clearance | bore \u2212 piston skirt"
            })
    void theRuleOfADimensionIsToldWithItsLimits(String dimension, String said) {
        String rules = String.join(
                "\n",
                Rule.of(
                        TopEnd.BOOK.structure(),
                        TopEnd.BOOK.structure().dimension(dimension).orElseThrow()));
        assertThat(rules).contains(said, "JCGM 100:2008", "Allowed: at most");
    }
}
