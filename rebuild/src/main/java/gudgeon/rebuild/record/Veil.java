package gudgeon.rebuild.record;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Takes names and prices out of sentences. A name is known by the field that it was entered in: sellers, machinists, who signed, and
 * devices; wherever else the same name stands, it goes too.
 */
final class Veil {
    static final String SOMEBODY = "(name left out)";
    static final String SOME_PRICE = "(price left out)";

    private static final int SHORTEST_NAME = 2;
    private static final Pattern PRICE = Pattern.compile("(?:(?:" + currencies()
            + ")\\s?)?\\b\\d[\\d.,'\u00a0]*\\s?(?:(?:" + currencies() + ")\\b|[€£$¥])|[€£$¥]\\s?\\d[\\d.,']*");

    private final Wish wish;
    private final List<Pattern> names;

    Veil(Build build, Wish wish) {
        this.wish = wish;
        names = wish.people()
                ? List.of()
                : names(build).stream()
                        .map(name ->
                                Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])"))
                        .toList();
    }

    /** The sentence with what is not wished for left out. */
    String over(String sentence) {
        String veiled = sentence;
        for (Pattern name : names) {
            veiled = name.matcher(veiled).replaceAll(SOMEBODY);
        }
        return wish.prices() ? veiled : PRICE.matcher(veiled).replaceAll(SOME_PRICE);
    }

    /** All names, the longest first, so that none is cut out of another. */
    private static Collection<String> names(Build build) {
        Collection<String> names =
                new TreeSet<>(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        Stream.of(
                        told(build, Offered.class).map(Offered::from),
                        told(build, Ordered.class).map(Ordered::from),
                        told(build, WorkSent.class).map(WorkSent::to),
                        told(build, StartSigned.class).map(StartSigned::by),
                        build.entries().stream().map(Entry::device))
                .flatMap(each -> each)
                .map(String::strip)
                .filter(name -> name.length() >= SHORTEST_NAME)
                .forEach(names::add);
        return names;
    }

    /** Facts of entries that were corrected too: their sentences are in the record as well. */
    private static <F extends Fact> Stream<F> told(Build build, Class<F> kind) {
        return build.entries().stream()
                .map(Entry::fact)
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private static String currencies() {
        return Currency.getAvailableCurrencies().stream()
                .map(Currency::getCurrencyCode)
                .sorted()
                .collect(Collectors.joining("|"));
    }
}
