package gudgeon.bench.language;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts texts of the program into another language. A text is made of phrases, some with blanks that other phrases, names and numbers
 * fill; of all ways to take it apart the one counts whose phrases leave the fewest letters unexplained. What no phrase explains, such
 * as a remark of the person, stays as it is.
 */
final class Translator {
    private static final int LONGEST = 4_000;
    private static final int MOST_KEPT = 20_000;
    /** A phrase with fewer letters than this says too little to be told by: it counts only if all that fills it is known. */
    private static final int TELLING = 6;

    /** Where a text may be taken apart, the surest first. */
    private static final List<Pattern> JOINTS = List.of(
            Pattern.compile("(?<=[.!?]) (?=[\\p{Lu}\\d'„])"),
            Pattern.compile("(?<=[:;]) "),
            Pattern.compile("(?<=,) "),
            Pattern.compile(" (?=\\()|(?<=\\)) "),
            Pattern.compile("(?<=['’]) | (?=['‘])"),
            Pattern.compile("(?<=^[\\d.,]{1,6}) "),
            Pattern.compile(" (?=" + Numbers.NUMBER + "(?: ?" + Numbers.UNIT + ")?[.,;]?$)"),
            Pattern.compile(" (?=[–−·=→|×])|(?<=[–−·=→|×]) "));
    /** Signs that stand before or after a piece and are no part of its phrase. */
    private static final Pattern BARE = Pattern.compile("^([(\\['‘,]* ?)(.*?)([)\\],:;.'’]*)$", Pattern.DOTALL);

    private final PhraseBook book;
    private final Set<String> names;
    private final Map<String, Rendering> kept = new ConcurrentHashMap<>();

    /** A text in the other language, and how many of its letters are explained. */
    private record Rendering(String text, int known) {
        Rendering with(UnaryOperator<String> change) {
            return new Rendering(change.apply(text), known);
        }
    }

    /**
     * A translator by a book of phrases.
     *
     * @param names texts that are not the program's to translate, such as the names in an engine book; it may grow
     */
    Translator(PhraseBook book, Set<String> names) {
        this.book = book;
        this.names = names;
    }

    /** The text in the other language, with the spaces around it as they are. */
    String of(String text) {
        return inside(text).text();
    }

    /** Letters of the text that no phrase and no name explains. */
    int unexplained(String text) {
        return Letters.count(text) - inside(text).known();
    }

    /** A text with the spaces around it kept. */
    private Rendering inside(String text) {
        String core = text.strip();
        if (core.isEmpty()) {
            return new Rendering(text, 0);
        }
        int at = text.indexOf(core);
        return rendered(core.replaceAll("[\\s\u00a0]+", " "))
                .with(found -> text.substring(0, at) + found + text.substring(at + core.length()));
    }

    private Rendering rendered(String text) {
        int letters = Letters.count(text);
        if (letters == 0) {
            return new Rendering(book.numbers().in(text), 0);
        }
        if (text.length() > LONGEST) {
            return new Rendering(text, 0);
        }
        Rendering before = kept.get(text);
        if (before != null) {
            return before;
        }
        Rendering found = best(text, letters);
        if (kept.size() >= MOST_KEPT) {
            kept.clear();
        }
        kept.put(text, found);
        return found;
    }

    private Rendering best(String text, int letters) {
        List<Variant> variants = Variant.of(text);
        for (Variant variant : variants) {
            Optional<String> meaning = book.meaning(variant.text());
            if (meaning.isPresent()) {
                return new Rendering(variant.back().apply(meaning.get()), letters);
            }
        }
        if (variants.stream().anyMatch(variant -> names.contains(variant.text()))) {
            return new Rendering(text, letters);
        }
        if (Numbers.isMeasure(text)) {
            return new Rendering(book.numbers().in(text), letters);
        }
        Rendering best = new Rendering(text, 0);
        for (Variant variant : variants) {
            for (Phrase phrase : book.candidates(variant.text())) {
                for (List<String> fills : phrase.fills(variant.text())) {
                    best = better(
                            best,
                            filled(phrase, fills)
                                    .map(one -> one.with(variant.back()))
                                    .map(one ->
                                            Character.isUpperCase(text.charAt(0)) ? one.with(Variant::upper) : one));
                }
            }
        }
        for (Pattern joint : JOINTS) {
            if (best.known() == letters) {
                return best;
            }
            best = better(best, parts(text, joint));
        }
        return better(best, withoutSigns(text));
    }

    private static Rendering better(Rendering best, Optional<Rendering> other) {
        return other.filter(one -> one.known() > best.known()).orElse(best);
    }

    private Optional<Rendering> filled(Phrase phrase, List<String> fills) {
        List<Rendering> rendered = fills.stream().map(fill -> inside(fill)).toList();
        int known = rendered.stream().mapToInt(Rendering::known).sum();
        int letters = fills.stream().mapToInt(Letters::count).sum();
        return known == letters || phrase.letters() >= TELLING
                ? Optional.of(new Rendering(
                        phrase.filled(rendered.stream().map(Rendering::text).toList()), known + phrase.letters()))
                : Optional.empty();
    }

    /** The text taken apart at its joints; nothing if it has none. */
    private Optional<Rendering> parts(String text, Pattern joint) {
        Matcher cut = joint.matcher(text);
        StringBuilder all = new StringBuilder();
        int known = 0;
        int from = 0;
        while (cut.find()) {
            Rendering part = bare(text.substring(from, cut.start()));
            all.append(part.text()).append(cut.group());
            known += part.known();
            from = cut.end();
        }
        if (from == 0) {
            return Optional.empty();
        }
        Rendering last = bare(text.substring(from));
        return Optional.of(new Rendering(all.append(last.text()).toString(), known + last.known()));
    }

    /** A piece as it is, or without the signs at its ends where that explains more. */
    private Rendering bare(String piece) {
        return better(inside(piece), withoutSigns(piece));
    }

    /** A text without the brackets, quotes, commas and colons at its ends; nothing if it has none. */
    private Optional<Rendering> withoutSigns(String text) {
        Matcher ends = BARE.matcher(text);
        return ends.matches() && ends.end(2) > ends.start(2) && ends.end(2) - ends.start(2) < text.length()
                ? Optional.of(inside(ends.group(2)).with(core -> ends.group(1) + core + ends.group(3)))
                : Optional.empty();
    }
}
