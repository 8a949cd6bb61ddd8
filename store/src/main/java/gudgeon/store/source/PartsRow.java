package gudgeon.store.source;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One line of a parts file. */
final class PartsRow {
    private static final Pattern WHOLE = Pattern.compile("(\\d{1,6})([.,]0+)?");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

    private final Build build;
    private final Map<Column, String> cells;
    private final List<String> refusals = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    PartsRow(Build build, Map<Column, String> cells) {
        this.build = build;
        this.cells = cells;
    }

    /** Why it can't be read, each a sentence; known once the facts were asked for. */
    List<String> refusals() {
        return refusals;
    }

    /** How it was read, where that could be done otherwise. */
    List<String> notes() {
        return notes;
    }

    /** What it tells; nothing if only its position is filled in, and nothing new if the same was offered before. */
    List<Fact> facts() {
        boolean filled = cells.keySet().stream().anyMatch(column -> column != Column.POSITION);
        if (!filled) {
            return List.of();
        }
        String position = position();
        List<Fact> facts = new ArrayList<>();
        int ordered = whole(Column.ORDERED).orElse(0);
        int arrived = whole(Column.ARRIVED).orElse(0);
        if (ordered > 0) {
            facts.add(new Ordered(
                    text(Column.ORDER),
                    position,
                    text(Column.PART),
                    origin(),
                    ordered,
                    text(Column.FROM),
                    price(Column.PRICE),
                    days(),
                    day(),
                    Map.of()));
        }
        if (!text(Column.POSTAGE).isEmpty()) {
            facts.add(new PostagePaid(text(Column.ORDER), price(Column.POSTAGE)));
        }
        if (arrived > 0) {
            facts.add(new Arrived(text(Column.ORDER), position, arrived, text(Column.REMARK)));
        }
        return facts.isEmpty() ? offered(position) : facts;
    }

    private List<Fact> offered(String position) {
        if (text(Column.FROM).isEmpty()) {
            refuse("It does not say who offers it, nor how many were ordered or arrived. Fill in one of these.");
            return List.of();
        }
        Offered offered = new Offered(
                position, text(Column.PART), origin(), text(Column.FROM), price(Column.PRICE), days(), Map.of());
        boolean known = build.told(Offered.class, position).stream()
                .anyMatch(told -> told.fact().equals(offered));
        return known ? List.of() : List.of(offered);
    }

    private String text(Column column) {
        String text = cells.getOrDefault(column, "");
        // a quote that keeps a spreadsheet from reckoning with what stands behind it
        return text.matches("'[-=+@\\t].*") ? text.substring(1) : text;
    }

    private void refuse(String sentence) {
        refusals.add(sentence);
    }

    private String position() {
        String said = text(Column.POSITION);
        Optional<Position> position = build.structure()
                .position(said)
                .or(() -> build.structure().positions().stream()
                        .filter(each -> each.name().equalsIgnoreCase(said))
                        .findFirst());
        if (position.isEmpty()) {
            refuse(
                    said.isEmpty()
                            ? "It does not say for which position. Write its id or its name as in the engine book."
                            : "The engine book has no position '" + said
                                    + "'. Write its id or its name as in the book.");
        }
        return position.map(Position::id).orElse("");
    }

    private String price(Column column) {
        String price = text(column);
        String currency = text(Column.CURRENCY);
        return price.isEmpty() || currency.isEmpty() || !price.matches("[\\d.,' \u00a0\u202f-]+")
                ? price
                : price + " " + currency;
    }

    private OptionalInt whole(Column column) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        Matcher whole = WHOLE.matcher(text);
        if (!whole.matches()) {
            refuse("'" + text + "' under '" + column.word() + "' is not a whole number. Write one, such as 2.");
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(whole.group(1)));
    }

    private Optional<Origin> origin() {
        String text = text(Column.ORIGIN);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        for (Origin origin : Origin.values()) {
            if (origin.words().equalsIgnoreCase(text) || origin.name().equals(text.toUpperCase(Locale.ROOT))) {
                return Optional.of(origin);
            }
        }
        refuse("The origin '" + text + "' is not known. Write original, pattern, used or made, or leave it open.");
        return Optional.empty();
    }

    private Optional<Days> days() {
        OptionalInt likely = whole(Column.LIKELY);
        OptionalInt least = whole(Column.LEAST);
        OptionalInt most = whole(Column.MOST);
        if (likely.isEmpty()) {
            return Optional.empty();
        }
        int middle = likely.getAsInt();
        try {
            return Optional.of(new Days(least.orElse(middle), middle, most.orElse(middle)));
        } catch (IllegalArgumentException outOfOrder) {
            refuse("Its days do not run from the fewest over the likeliest to the most, 0 to " + Days.MOST
                    + ". Write them in that order.");
            return Optional.empty();
        }
    }

    private Optional<LocalDate> day() {
        String text = text(Column.PROMISED);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            Matcher dayFirst = DAY_FIRST.matcher(text);
            if (dayFirst.matches()) {
                notes.add("Days such as 31.5.2024 were read as day, month, year.");
                return Optional.of(LocalDate.of(
                        Integer.parseInt(dayFirst.group(3)),
                        Integer.parseInt(dayFirst.group(2)),
                        Integer.parseInt(dayFirst.group(1))));
            }
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException notOne) {
            refuse("'" + text
                    + "' is not a day that can be read in one way. Write year-month-day, such as 2024-05-31.");
            return Optional.empty();
        }
    }
}
