package gudgeon.store.source;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.source.PartsList;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The table that is written, and that it says the same when it is read again. */
class PartsSheetTest {
    private static final Build WANTS = PartsFileTest.BUILD.asIf(List.of(
            new Fact.Disposed("piston", "", Disposition.REPLACE, "seized"),
            new Offered(
                    "piston",
                    "=HYPERLINK(1), \"P\"",
                    Optional.of(Origin.PATTERN),
                    "@Low Quay",
                    "39,50 EUR",
                    Optional.of(new Days(3, 5, 9)),
                    Map.of())));

    private static String sheet() {
        return PartsSheet.of(PartsList.of(WANTS, LocalDate.of(2024, 5, 31)));
    }

    @Test
    void saysHowEachPositionStandsAndHoldsNoFormula() {
        assertThat(sheet())
                .startsWith("\uFEFFposition,part,origin,from,price,")
                .contains("to be replaced", "\"'=HYPERLINK(1), \"\"P\"\"\"", ",'@Low Quay,", "\r\n");
        assertThat(sheet().lines().skip(1)).allMatch(line -> !line.matches(".*(^|,)\"?[=+@-].*"));
    }

    @Test
    void readAgainTellsNothingNewUntilItIsFilledIn() {
        PartsFile again = PartsFile.of(WANTS, sheet().substring(1));
        assertThat(again.faults()).isEmpty();
        assertThat(again.facts()).isEmpty();
        Build without = PartsFileTest.BUILD;
        assertThat(PartsFile.of(without, sheet().substring(1)).facts())
                .containsExactly(WANTS.told(Offered.class).get(0).fact());
    }
}
