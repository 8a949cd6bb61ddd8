package gudgeon.bench.cli;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.LongRun;
import gudgeon.store.drill.Round;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What {@code docs/fault-drill.md} says is what the program does: all of it on a long run, else with fewer variants. */
class DrillsTableTest {
    private static final Path DRILLS = Path.of("..", "examples", "drill");
    private static final Path TABLE = Path.of("..", "docs", "fault-drill.md");
    private static final Pattern MADE_BY = Pattern.compile("--variants (\\d+) --seed (-?\\d+)");
    private static final int FEWER = 1;
    /** Number, mistake, engines, drills. */
    private static final int WHAT_WAS_PLAYED = 4;

    private static List<List<String>> rows(String table) {
        return table.lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| #") && !line.startsWith("| ---"))
                .map(line -> Arrays.stream(line.split("\\|"))
                        .map(String::strip)
                        .skip(1)
                        .toList())
                .toList();
    }

    @Test
    void theTableIsWhatTheProgramDoes() throws IOException {
        String table = Files.readString(TABLE);
        Matcher made = MADE_BY.matcher(table);
        assertThat(made.find()).isTrue();
        int stated = Integer.parseInt(made.group(1));
        int variants = LongRun.of(Math.min(FEWER, stated), stated);
        Round round = Round.of(DrillsCommand.drills(DRILLS), variants, Long.parseLong(made.group(2)));
        assertThat(round.bad()).isEmpty();
        String now = DrillsTable.text(round, variants);
        assertThat(rows(now))
                .extracting(row -> row.subList(0, WHAT_WAS_PLAYED))
                .isEqualTo(rows(table).stream()
                        .map(row -> row.subList(0, WHAT_WAS_PLAYED))
                        .toList());
        if (variants == stated) {
            assertThat(now).isEqualTo(table);
        }
    }

    /** Every mistake is made on three engines at least, and none is late, missed or raised where it was not made. */
    @Test
    void everyMistakeIsMadeOnThreeEngines() throws IOException {
        assertThat(rows(Files.readString(TABLE)))
                .filteredOn(row -> !row.get(1).equals("all"))
                .hasSizeGreaterThanOrEqualTo(42)
                .allSatisfy(row -> {
                    assertThat(row.get(2).split(", ")).hasSizeGreaterThanOrEqualTo(3);
                    assertThat(row.subList(row.size() - 3, row.size())).containsOnly("0");
                });
    }
}
