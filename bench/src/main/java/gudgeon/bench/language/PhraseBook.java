package gudgeon.bench.language;

import gudgeon.bench.packed.Packed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The program's phrases in one other language, as its file has them: English first, then what it means. */
final class PhraseBook {
    private static final Map<Language, PhraseBook> READ = new EnumMap<>(Language.class);

    private final Map<String, String> meanings;
    private final Map<String, String> whole = new HashMap<>();
    private final Map<String, List<Phrase>> byWord = new HashMap<>();
    private final Numbers numbers;

    /**
     * A book of these phrases.
     *
     * @param language the other language
     * @param meanings what each phrase means; blanks are written "{0}", "{1}" and so on
     */
    PhraseBook(Language language, Map<String, String> meanings) {
        this.meanings = Map.copyOf(meanings);
        numbers = new Numbers(language);
        List<Phrase> blanks = new ArrayList<>();
        withoutJoints(meanings).forEach((english, meaning) -> {
            if (Phrase.BLANK.matcher(english).find()) {
                blanks.add(new Phrase(english, meaning));
            } else {
                whole.put(english, meaning);
            }
        });
        Map<String, Integer> often = new HashMap<>();
        blanks.forEach(phrase -> phrase.words().forEach(word -> often.merge(word, 1, Integer::sum)));
        blanks.forEach(phrase -> phrase.words().stream()
                .min(Comparator.comparingInt(word -> often.getOrDefault(word, 0)))
                .ifPresent(rarest -> byWord.computeIfAbsent(rarest, word -> new ArrayList<>())
                        .add(phrase)));
    }

    /**
     * All phrases, and those that join on to another also by themselves: without the comma or the like before them, or without the one
     * blank before or behind them, which a page may fill with a mark or with nothing.
     */
    private static Map<String, String> withoutJoints(Map<String, String> meanings) {
        Map<String, String> all = new LinkedHashMap<>();
        meanings.forEach((english, meaning) -> {
            if (english.matches("[,;:] .+") && meaning.startsWith(english.substring(0, 2))) {
                all.put(english.substring(2), meaning.substring(2));
            }
            if (english.indexOf('{') == english.lastIndexOf('{')) {
                if (english.startsWith("{0} ") && meaning.startsWith("{0} ")) {
                    all.put(english.substring(4), meaning.substring(4));
                } else if (english.endsWith(" {0}") && meaning.endsWith(" {0}")) {
                    all.put(english.substring(0, english.length() - 4), meaning.substring(0, meaning.length() - 4));
                }
            }
        });
        all.putAll(meanings);
        return all;
    }

    /** The book of a language; none of English, which needs none. */
    static Optional<PhraseBook> of(Language language) {
        if (language == Language.ENGLISH) {
            return Optional.empty();
        }
        synchronized (READ) {
            return Optional.of(READ.computeIfAbsent(language, other -> new PhraseBook(other, meanings(other))));
        }
    }

    /** What its file says of each phrase. */
    static Map<String, String> meanings(Language language) {
        return meaningsIn(Packed.text("/gudgeon/bench/language/" + language.tag() + ".yaml"));
    }

    /** What the text of such a file says of each phrase. */
    static Map<String, String> meaningsIn(String text) {
        LoadSettings settings =
                LoadSettings.builder().setCodePointLimit(text.length()).build();
        Map<String, String> meanings = new LinkedHashMap<>();
        ((Map<?, ?>) new Load(settings).loadFromString(text))
                .forEach((english, meaning) -> meanings.put(String.valueOf(english), String.valueOf(meaning)));
        return meanings;
    }

    /** What a whole phrase means; nothing if the book lacks it. */
    Optional<String> meaning(String phrase) {
        return Optional.ofNullable(whole.get(phrase));
    }

    /** What a phrase means, its blanks as they are in the book; nothing if the book lacks it. */
    Optional<String> template(String phrase) {
        return Optional.ofNullable(meanings.get(phrase));
    }

    /** Phrases with blanks that a text may be one of. */
    List<Phrase> candidates(String text) {
        return Letters.words(text)
                .distinct()
                .flatMap(word -> byWord.getOrDefault(word, List.of()).stream())
                .toList();
    }

    Numbers numbers() {
        return numbers;
    }
}
