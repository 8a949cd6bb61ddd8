package gudgeon.store.source;

import java.util.Locale;
import java.util.Optional;

/** A column of a parts file. Its word stands in the file's first line; case and what is not a letter do not matter there. */
enum Column {
    POSITION("position", "id", "name", "for"),
    PART("part", "called", "part number", "article"),
    ORIGIN("origin"),
    FROM("from", "supplier", "seller"),
    PRICE("price", "price of one", "unit price"),
    CURRENCY("currency"),
    LEAST("days least", "fewest days"),
    LIKELY("days likely", "days"),
    MOST("days most", "most days"),
    ORDER("order", "name of the order"),
    ORDERED("ordered", "count ordered"),
    PROMISED("promised", "promised for"),
    POSTAGE("postage"),
    ARRIVED("arrived", "came"),
    REMARK("remark"),

    /** What the list says itself; it is written, and not read again. */
    WHAT("what it is"),
    WHY("why"),
    NEEDED("needed"),
    IN_HAND("in hand"),
    ON_THE_WAY("on the way"),
    TO_ORDER("to order");

    private final String word;
    private final String spellings;

    Column(String word, String... others) {
        this.word = word;
        this.spellings = "|" + word + "|" + String.join("|", others) + "|";
    }

    /** What stands above it in a file that is written. */
    String word() {
        return word;
    }

    /** Whether a person fills it in. */
    boolean isRead() {
        return compareTo(REMARK) <= 0;
    }

    static Optional<Column> of(String heading) {
        String plain =
                heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ").strip();
        for (Column column : values()) {
            if (column.spellings.contains("|" + plain + "|")) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
