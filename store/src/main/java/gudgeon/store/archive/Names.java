package gudgeon.store.archive;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files of an archive. No other name is written, and none is accepted; so none can lead out of a folder. */
enum Names {
    README("README.txt", 100_000),
    BUILD("build.json", 10_000),
    BOOK("book.yaml", 1_000_000),
    EARLIER_BOOK("books/([0-9a-f]{64})\\.yaml", 1_000_000),
    JOURNAL("journal.jsonl", 64 << 20),
    JOURNAL_TABLE("journal.csv", 64 << 20),
    HASHES("hashes.txt", 16 << 20),
    PHOTO("photos/([0-9a-f]{64})\\.jpg", 25 << 20);

    private final Pattern pattern;
    private final int mostBytes;

    Names(String pattern, int mostBytes) {
        this.pattern = Pattern.compile(pattern);
        this.mostBytes = mostBytes;
    }

    /** Which kind of file that name is; empty if it is none of an archive. */
    static Optional<Names> of(String name) {
        return Arrays.stream(values())
                .filter(kind -> kind.pattern.matcher(name).matches())
                .findFirst();
    }

    /** The name of the only file of this kind. */
    String only() {
        return pattern.pattern().replace("\\", "");
    }

    /** The content hash in the name of one of many files of this kind. */
    String hash(String name) {
        Matcher matcher = pattern.matcher(name);
        return matcher.matches() && matcher.groupCount() == 1 ? matcher.group(1) : "";
    }

    /** The name of the file of this kind that has that content hash. */
    String named(String hash) {
        return pattern.pattern().replace("([0-9a-f]{64})", hash).replace("\\", "");
    }

    /** More bytes than this are refused. */
    int mostBytes() {
        return mostBytes;
    }
}
