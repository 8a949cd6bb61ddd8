package gudgeon.bench.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A language that pages and sheets can be read in. */
public enum Language {
    /** As the program is written. */
    ENGLISH("English"),
    GERMAN("Deutsch");

    private final String ownName;

    Language(String ownName) {
        this.ownName = ownName;
    }

    /** Its name in itself. */
    public String ownName() {
        return ownName;
    }

    /** Its tag by BCP 47, such as "de". */
    public String tag() {
        return locale().toLanguageTag();
    }

    Locale locale() {
        return switch (this) {
            case ENGLISH -> Locale.ENGLISH;
            case GERMAN -> Locale.GERMAN;
        };
    }

    /** The language of that tag, if pages can be read in it. */
    public static Optional<Language> tagged(String tag) {
        return Arrays.stream(values()).filter(one -> one.tag().equals(tag)).findFirst();
    }

    /**
     * The one to be preferred by what a browser says of its reader.
     *
     * @param accepted the header Accept-Language (RFC 9110, 12.5.4); English where it says nothing that is here
     */
    public static Language accepted(String accepted) {
        List<Locale.LanguageRange> ranges;
        try {
            ranges = accepted.isBlank() ? List.of() : Locale.LanguageRange.parse(accepted);
        } catch (IllegalArgumentException unreadable) {
            return ENGLISH;
        }
        Locale found = Locale.lookup(
                ranges, Arrays.stream(values()).map(Language::locale).toList());
        return found == null ? ENGLISH : tagged(found.toLanguageTag()).orElse(ENGLISH);
    }
}
