package gudgeon.rebuild.record;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.Fitted;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Fact.TimeSpent;
import gudgeon.rebuild.journal.Fact.Undone;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Way;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BuildRecordTest {
    private static final List<Fact> FACTS = List.of(
            new Started("Tarn 98 no. 1187", "", Found.TOGETHER),
            new TakenOff("piston", 1, "B4", "shelf", "scuffed on the thrust side"),
            new PressureRead(Cranking.DRY, "5.5 bar", true, OptionalDouble.empty(), "before it came apart"),
            new ReadingTaken("piston-skirt", "", 1, "", "49.90 mm", "micrometer", OptionalDouble.empty(), ""),
            new Ordered("A", "piston", 1, "Ida Quell", "41.50 EUR"),
            new PartEntered("new piston", "piston", Origin.PATTERN, 1, "", "", "came from Ida Quell, cost 41,50 €"),
            new ReadingTaken("piston-skirt", "new piston", 1, "", "49.97 mm", "micrometer", OptionalDouble.empty(), ""),
            new Fitted("piston", "new piston", 1, Way.AS_MARKED, ""),
            new CheckFailed("ring-gaps", "0.05 mm", "too tight"),
            new Undone("fit-barrel", "ring gap too small", List.of("gudgeon-circlips")),
            new CheckPassed("ring-gaps", "0.25 mm", "filed"),
            new Noted("", "paid 12.00 GBP for files"),
            new Noted("", "wrong one"),
            new TimeSpent("fit-piston", 45),
            new StartSigned("Ida Quell", List.of("leak-down"), "no compressor"),
            new Photographed("piston", "ab".repeat(32), "the old one"));

    private static Build build() throws IOException {
        BookReading reading = new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : FACTS) {
            entries.add(entry(entries.size(), fact));
        }
        entries.add(entry(entries.size(), new Corrected("k12", "slip", Optional.empty())));
        return Build.of(((BookReading.Read) reading).book()).after(entries);
    }

    private static Entry entry(int number, Fact fact) {
        return new Entry("k" + number, Instant.EPOCH.plusSeconds(60L * number), "Ida's phone", number, fact);
    }

    private static String text(BuildRecord record) {
        return Stream.concat(
                        record.chapters().stream()
                                .flatMap(chapter -> chapter.blocks().stream())
                                .map(block -> block.toString()),
                        Stream.concat(
                                record.entries().stream().map(BuildRecord.Line::sentence),
                                record.photos().stream().map(BuildRecord.Photo::caption)))
                .collect(Collectors.joining("\n"));
    }

    private static String chapter(BuildRecord record, String id) {
        return record.chapter(id).orElseThrow().blocks().toString();
    }

    @Test
    void eachChapterSaysItsOwn() throws IOException {
        BuildRecord record = BuildRecord.of(build(), "Tarn 98 no. 1187", "f00d", Wish.USUAL);
        assertThat(chapter(record, "identity")).contains("Tarn 98", "17 entries");
        assertThat(chapter(record, "found"))
                .contains("Scuffed on the thrust side", "5.5 bar")
                .doesNotContain("Filed");
        assertThat(chapter(record, "sizes")).contains("49.9", "49.97", "(new piston)", "micrometer");
        assertThat(chapter(record, "parts")).contains("new piston", "pattern", "41.50 EUR");
        assertThat(chapter(record, "checks")).contains("0.25 mm", "filed", "2 times");
        assertThat(chapter(record, "faults")).contains("Too tight", "Ring gap too small", "gudgeon pin circlips");
        assertThat(chapter(record, "start")).contains("leak-down", "No compressor");
        assertThat(chapter(record, "hours")).contains("45 min");
        assertThat(chapter(record, "cautions")).contains("goggles");
        assertThat(record.chapter("fit")).isPresent();
        assertThat(record.chapter("running-in")).as("nothing ran yet").isEmpty();
        assertThat(record.remarks()).anyMatch(remark -> remark.contains("certificate"));
    }

    /** Every number that a chapter rests on is one of the journal's. */
    @Test
    void everyEntryIsThereAndTheStruckOutOneIsMarked() throws IOException {
        BuildRecord record = BuildRecord.of(build(), "Tarn", "", Wish.USUAL);
        assertThat(record.entries()).hasSize(FACTS.size() + 1);
        assertThat(record.entries().get(12).struck()).isTrue();
        assertThat(record.entries().stream().filter(BuildRecord.Line::struck)).hasSize(1);
        assertThat(record.chapters().stream()
                        .flatMap(chapter -> chapter.blocks().stream())
                        .flatMap(block -> block instanceof Block.Said said
                                ? said.entries().stream()
                                : block instanceof Block.Table table
                                        ? table.rows().stream().flatMap(row -> row.entries().stream())
                                        : Stream.empty()))
                .isNotEmpty()
                .allMatch(number -> number >= 1 && number <= record.entries().size());
    }

    @Test
    void namesAreLeftOutUnlessAskedFor() throws IOException {
        assertThat(text(BuildRecord.of(build(), "Tarn", "", Wish.USUAL)))
                .doesNotContain("Ida Quell")
                .contains(Veil.SOMEBODY);
        assertThat(text(BuildRecord.of(build(), "Tarn", "", new Wish(true, true))))
                .contains("Ida Quell");
    }

    @Test
    void pricesAreLeftOutWhereNotWishedFor() throws IOException {
        String without = text(BuildRecord.of(build(), "Tarn", "", new Wish(false, true)));
        assertThat(without)
                .doesNotContain("41.50")
                .doesNotContain("41,50")
                .doesNotContain("12.00 GBP")
                .contains(Veil.SOME_PRICE)
                .contains("49.97 mm");
        assertThat(text(BuildRecord.of(build(), "Tarn", "", new Wish(true, true))))
                .contains("41.50 EUR", "12.00 GBP");
    }
}
