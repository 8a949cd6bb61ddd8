package gudgeon.bench.language;

import java.util.ArrayList;
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

    private static final Pattern SPACES = Pattern.compile("[\\s\u00a0]+");
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
        return rendered(SPACES.matcher(core).replaceAll(" "))
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
            best = phrased(variant, Character.isUpperCase(text.charAt(0)), best, letters);
        }
        for (Pattern joint : JOINTS) {
            if (best.known() == letters) {
                return best;
            }
            best = better(best, parts(text, joint, letters, best.known()));
        }
        return better(best, withoutSigns(text));
    }

    /** A variant of a text by the phrase with blanks that explains the most of its letters, if it is more than the best so far. */
    private Rendering phrased(Variant variant, boolean upper, Rendering before, int letters) {
        Rendering best = before;
        for (Phrase phrase : book.candidates(variant.text())) {
            for (List<String> fills : phrase.fills(variant.text())) {
                if (best.known() == letters) {
                    return best;
                }
                best = better(
                        best,
                        filled(phrase, fills, best.known())
                                .map(one -> one.with(variant.back()))
                                .map(one -> upper ? one.with(Variant::upper) : one));
            }
        }
        return best;
    }

    private static Rendering better(Rendering best, Optional<Rendering> other) {
        return other.filter(one -> one.known() > best.known()).orElse(best);
    }

    /** A phrase with its blanks filled; nothing if it says too little to be told by, or explains no more letters than are to be beaten. */
    private Optional<Rendering> filled(Phrase phrase, List<String> fills, int toBeat) {
        boolean telling = phrase.letters() >= TELLING;
        int unknown = 0;
        int letters = phrase.letters() + fills.stream().mapToInt(Letters::count).sum();
        List<String> rendered = new ArrayList<>();
        for (String fill : fills) {
            Rendering one = inside(fill);
            unknown += Letters.count(fill) - one.known();
            if (letters - unknown <= toBeat || (unknown > 0 && !telling)) {
                return Optional.empty();
            }
            rendered.add(one.text());
        }
        return Optional.of(new Rendering(phrase.filled(rendered), letters - unknown));
    }

    /** The text taken apart at its joints; nothing if it has none, or if that explains no more letters than are to be beaten. */
    private Optional<Rendering> parts(String text, Pattern joint, int letters, int toBeat) {
        Matcher cut = joint.matcher(text);
        StringBuilder all = new StringBuilder();
        int unknown = 0;
        int from = 0;
        while (cut.find()) {
            String piece = text.substring(from, cut.start());
            Rendering part = bare(piece);
            all.append(part.text()).append(cut.group());
            unknown += Letters.count(piece) - part.known();
            if (letters - unknown <= toBeat) {
                return Optional.empty();
            }
            from = cut.end();
        }
        if (from == 0) {
            return Optional.empty();
        }
        String piece = text.substring(from);
        Rendering last = bare(piece);
        return Optional.of(new Rendering(
                all.append(last.text()).toString(), letters - unknown - Letters.count(piece) + last.known()));
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
