package gudgeon.fuzz;

import java.nio.file.Path;
import java.util.Locale;

/** What reads something that a person or another program wrote, and the class that feeds it. */
enum Reader {
    BOOK("engine book (YAML)", "gudgeon.fuzz.BookTarget", 40_000),
    JOURNAL("journal, every kind of entry (JSON Lines)", "gudgeon.fuzz.JournalTarget", 8_000),
    ARCHIVE("archive that is taken in (zip)", "gudgeon.fuzz.ArchiveTarget", 8_000),
    PARTS("table of offers, orders and arrivals (CSV)", "gudgeon.fuzz.PartsTarget", 4_000),
    PHOTO("photo: head, size, orientation (JPEG, PNG, Exif)", "gudgeon.fuzz.PhotoTarget", 4_000),
    SIZE("sizes, angles, torques, money, sheets of paper as typed", "gudgeon.fuzz.SizeTarget", 130),
    COMMAND("commands that answer at the desk", "gudgeon.bench.cli.CommandTarget", 400),
    FORM("forms of the pages, every type of entry", "gudgeon.bench.web.entry.FormTarget", 2_000),
    PAGE("addresses of the pages with their questions", "gudgeon.fuzz.PageTarget", 300);

    private final String words;
    private final String target;
    private final int longest;

    Reader(String words, String target, int longest) {
        this.words = words;
        this.target = target;
        this.longest = longest;
    }

    /** What it reads. */
    String words() {
        return words;
    }

    /** Name of the class that the fuzzer calls. */
    String target() {
        return target;
    }

    /** Longest input that the fuzzer makes, in bytes. */
    int longest() {
        return longest;
    }

    /** The inputs that are kept for it: good ones to begin with, and each one that once broke it. */
    Path corpus() {
        return Path.of("corpus", word());
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
