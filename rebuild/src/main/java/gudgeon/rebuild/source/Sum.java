package gudgeon.rebuild.source;

import gudgeon.rebuild.sentence.Sentence;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Amounts added up, each currency by itself.
 *
 * @param amounts one amount of each currency, by its letters; none of them nothing
 */
public record Sum(List<Money> amounts) {
    /** Nothing. */
    public static final Sum NOTHING = new Sum(List.of());

    public Sum {
        SortedMap<Currency, BigDecimal> all = new TreeMap<>(Comparator.comparing(Currency::getCurrencyCode));
        amounts.forEach(money -> all.merge(money.currency(), money.amount(), BigDecimal::add));
        amounts = all.entrySet().stream()
                .filter(each -> each.getValue().signum() != 0)
                .map(each -> new Money(each.getValue(), each.getKey()))
                .toList();
    }

    /** With more. */
    public Sum plus(Sum more) {
        return new Sum(Stream.concat(amounts.stream(), more.amounts.stream()).toList());
    }

    /** Less what came back; what came back in another currency than was paid stands below zero. */
    public Sum minus(Sum back) {
        return plus(new Sum(back.amounts.stream()
                .map(money -> new Money(money.amount().negate(), money.currency()))
                .toList()));
    }

    /** Whether it is nothing. */
    public boolean isNothing() {
        return amounts.isEmpty();
    }

    /** As a person reads it, such as "24.50 EUR and 12.00 GBP", or "nothing". */
    public String words() {
        return isNothing()
                ? "nothing"
                : Sentence.list(amounts.stream().map(Money::words).toList());
    }
}
