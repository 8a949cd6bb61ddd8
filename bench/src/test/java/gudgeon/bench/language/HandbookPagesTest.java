package gudgeon.bench.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The handbook in German beside the English one. */
class HandbookPagesTest {
    private static final Path HANDBOOK = Path.of("..", "docs", "handbook");
    /** Pictures, pages and commands, which are the same in every language. */
    private static final Pattern SAME = Pattern.compile("\\((?:images/)?[a-z-]+\\.(?:png|md)\\)|\\./gudgeon [a-z-]+");

    static Stream<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(HANDBOOK)) {
            return files.filter(file -> file.toString().endsWith(".md")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPageHasTheSamePartsInGerman(Path page) throws IOException {
        String english = Files.readString(page);
        String german = Files.readString(HANDBOOK.resolve("de").resolve(page.getFileName()));
        assertThat(parts(german)).as("pictures, links and commands of %s", page).isEqualTo(parts(english));
        assertThat(paragraphs(german)).as("paragraphs of %s", page).isEqualTo(paragraphs(english));
    }

    private static List<String> parts(String text) {
        return SAME.matcher(text).results().map(MatchResult::group).sorted().toList();
    }

    private static long paragraphs(String text) {
        return Pattern.compile("\n\n+").splitAsStream(text.strip()).count();
    }
}
