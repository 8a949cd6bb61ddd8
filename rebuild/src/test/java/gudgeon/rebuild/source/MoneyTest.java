package gudgeon.rebuild.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.source.Money.NotMoney;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Prices as people write them, and sums of them. */
class MoneyTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24.50 EUR | 24.50 EUR",
                "24,50 € | 24.50 EUR",
                "24,5€ | 24.50 EUR",
                "£12 | 12.00 GBP",
                "gbp 12 | 12.00 GBP",
                "€ 0,90 | 0.90 EUR",
                ".90 EUR | 0.90 EUR",
                "1.234,50 EUR | 1234.50 EUR",
                "1,234.50 EUR | 1234.50 EUR",
                "1'234.50 CHF | 1234.50 CHF",
                "1 234,50 SEK | 1234.50 SEK",
                "1.234.567 EUR | 1234567.00 EUR",
                "24. EUR | 24.00 EUR",
                "0 EUR | 0.00 EUR",
                "1200 JPY | 1200 JPY",
            })
    void readsWhatAPersonWrites(String written, String words) throws NotMoney {
        assertThat(Money.of(written).words()).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24.50 | no currency",
                "12 EUR 3 GBP | not one price",
                "12 EUR + 5 GBP | not one price",
                "$12 | USD or CAD",
                "¥12 | JPY or CNY",
                "12 XYZ | no currency",
                "12 XXX | no currency",
                "1.234 EUR | thousands or decimals",
                "1,234 EUR | thousands or decimals",
                "12.345,6.7 EUR | not one price",
                "1.23.4 EUR | not one price",
                "0.505 EUR | more decimals",
                "12.5 JPY | more decimals",
                "-3 EUR | below zero",
                "twelve EUR | not one price",
            })
    void whatIsNoPriceIsRefusedWithTheReason(String written, String reason) {
        assertThatThrownBy(() -> Money.of(written)).isInstanceOf(NotMoney.class).hasMessageContaining(reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   "})
    void nothingIsNoPrice(String written) {
        assertThatThrownBy(() -> Money.of(written)).isInstanceOf(NotMoney.class).hasMessageContaining("24.50 EUR");
    }

    @Test
    void currenciesAreAddedUpEachByItself() throws NotMoney {
        Sum sum = new Sum(
                List.of(Money.of("1.20 EUR"), Money.of("£3"), Money.of("0,85 €").times(3)));
        assertThat(sum.words()).isEqualTo("3.75 EUR and 3.00 GBP");
        assertThat(sum.minus(new Sum(List.of(Money.of("3 GBP")))).words()).isEqualTo("3.75 EUR");
        assertThat(sum.minus(sum)).isEqualTo(Sum.NOTHING);
        assertThat(Sum.NOTHING.words()).isEqualTo("nothing");
    }
}
