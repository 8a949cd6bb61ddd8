package gudgeon.store.journal;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Handing;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Sourcing;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Entries as JSON: what was ever written reads for ever, and what is not understood is refused in sentences. */
class EntryJsonTest {
    private static final String GOOD =
            "{\"type\":\"noted\",\"version\":1,\"key\":\"k\",\"at\":\"2026-01-01T09:00:00Z\",\"device\":\"d\",\"seen\":0,"
                    + "\"on\":\"\",\"text\":\"t\"}";

    /** The sample lines are never changed; a new version of a type adds a line. */
    private static List<String> samples() throws IOException {
        try (InputStream stream = EntryJsonTest.class.getResourceAsStream("/journal/samples.jsonl")) {
            assertThat(stream).isNotNull();
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    private static Entry readOne(String line) {
        Reading reading = EntryJson.read(line);
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).entries().get(0);
    }

    private static List<String> refused(String line) {
        Reading reading = EntryJson.read(line);
        assertThat(reading).isInstanceOf(Reading.Refused.class);
        return ((Reading.Refused) reading).sentences();
    }

    @Test
    void everySampleReadsAndIsWrittenAsItStandsOrInTheNewestFormOfItsKind() throws IOException {
        for (String line : samples()) {
            Entry entry = readOne(line);
            String written = EntryJson.write(entry);
            assertThat(readOne(written)).isEqualTo(entry);
            int newest = FactJson.form(entry.fact()).version();
            if (line.contains("\"version\":" + newest + ",")) {
                assertThat(written).isEqualTo(line);
            }
        }
    }

    @Test
    void everyKindAndEveryFormHasASample() throws IOException {
        List<String> samples = samples();
        assertThat(samples.stream().map(line -> readOne(line).fact().getClass()).collect(Collectors.toSet()))
                .isEqualTo(Stream.of(
                                Fact.class,
                                Measuring.class,
                                Sourcing.class,
                                Deciding.class,
                                Fastening.class,
                                Finding.class,
                                Proving.class,
                                Handing.class)
                        .flatMap(kinds -> Stream.of(kinds.getDeclaredClasses()))
                        .filter(Class::isRecord)
                        .collect(Collectors.toSet()));
        for (FactForm<?> form : FactForms.ALL) {
            String begins = "{\"type\":\"" + form.word() + "\",\"version\":" + form.version() + ",";
            assertThat(samples).anyMatch(line -> line.startsWith(begins));
        }
    }

    @Test
    void aSampleSaysWhatItSaid() throws IOException {
        assertThat(readOne(samples().get(4)))
                .isEqualTo(new Entry(
                        "s-5",
                        Instant.parse("2026-01-01T09:04:00Z"),
                        "bench",
                        4,
                        new Measured(
                                "piston",
                                "pattern piston",
                                Map.of("compression-height", "28.10 ± 0.02", "pockets.exhaust.depth", "1.20 ± 0.05"))));
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings()
                .ofMaxLength(60)
                .filter(text -> StandardCharsets.UTF_8.newEncoder().canEncode(text))
                .filter(text -> text.chars().allMatch(c -> c >= ' ' || c == '\n' || c == '\t'));
    }

    @Property(tries = 300)
    void anyTextComesBack(@ForAll("texts") String device, @ForAll("texts") String text) {
        Entry entry = new Entry(
                "k", Instant.ofEpochSecond(1_800_000_000L, 123), "d" + device, 7, new Noted(device, "t" + text));
        assertThat(readOne(EntryJson.write(entry))).isEqualTo(entry);
    }

    @Property(tries = 300)
    void rubbishIsRefusedAndNothingIsThrown(@ForAll String rubbish) {
        assertThat(refused(rubbish)).isNotEmpty();
        EntryJson.read(GOOD.substring(0, Math.min(GOOD.length(), rubbish.length())) + rubbish);
    }

    @Test
    void everyLineCutShortIsRefused() throws IOException {
        for (String line : samples()) {
            for (int length = 0; length < line.length(); length++) {
                assertThat(refused(line.substring(0, length))).hasSize(1);
            }
        }
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertThat(refused("{\"type\":\"taken-off\",\"version\":1,\"key\":\"a b\",\"at\":\"yesterday\",\"device\":7,"
                        + "\"count\":0,\"colour\":\"red\"}"))
                .hasSize(7)
                .anyMatch(sentence -> sentence.contains("'key' is a b, which is no key. Use letters"))
                .anyMatch(sentence -> sentence.contains("'at' is yesterday. Write the time as"))
                .anyMatch(sentence -> sentence.contains("'device' is 7. Give a text"))
                .anyMatch(sentence -> sentence.contains("'seen' is missing. Give a whole number from 0"))
                .anyMatch(sentence -> sentence.contains("'position' is missing"))
                .anyMatch(sentence -> sentence.contains("'count' is 0. Give a whole number from 1"))
                .anyMatch(sentence ->
                        sentence.contains("'colour' is not known of taken-off. Take it out; its fields are"));
    }

    @Test
    void unknownTypesAndVersionsAreRefused() {
        assertThat(refused(GOOD.replace("noted", "sung")))
                .hasSize(1)
                .first()
                .asString()
                .contains("'sung' is no type");
        assertThat(refused(GOOD.replace("\"version\":1", "\"version\":2")))
                .hasSize(1)
                .first()
                .asString()
                .contains("noted has no version 2", "update this one");
    }

    @Test
    void oddValuesAreRefused() {
        assertThat(refused(GOOD.replace("\"text\":\"t\"", "\"text\":\"t\",\"text\":\"u\"")))
                .hasSize(1);
        assertThat(refused(GOOD.replace("\"t\"", "\"\\ud800\""))).hasSize(1);
        assertThat(refused(GOOD.replace("\"t\"", "\"\\u0000\""))).hasSize(1);
        assertThat(refused(GOOD.replace("\"t\"", "\"" + "t".repeat(4001) + "\"")))
                .hasSize(1);
        assertThat(refused(GOOD.replace("\"seen\":0", "\"seen\":1e400"))).hasSize(1);
        assertThat(refused(GOOD.replace("\"seen\":0", "\"seen\":0.5"))).hasSize(1);
        assertThat(refused(GOOD + GOOD)).hasSize(1);
        assertThat(refused("[".repeat(100_000))).hasSize(1);
        assertThat(refused("{\"type\":\"chance-taken\",\"version\":1,\"key\":\"k\",\"at\":\"2026-01-01T09:00:00Z\","
                        + "\"device\":\"d\",\"seen\":0,\"origin\":\"stolen\",\"chance\":1.5}"))
                .hasSize(2);
    }

    @Test
    void whatIsWrongInsideACorrectionIsToldWithItsPlace() {
        assertThat(refused("{\"type\":\"corrected\",\"version\":1,\"key\":\"k\",\"at\":\"2026-01-01T09:00:00Z\","
                        + "\"device\":\"d\",\"seen\":0,\"entry\":\"e\",\"why\":\"\",\"instead\":{\"type\":\"step-done\","
                        + "\"version\":1}}"))
                .containsExactly("Entry, 'instead': 'step' is missing. Give a text in quotes.");
    }

    @Test
    void theManualNamesEveryType() throws IOException {
        String manual = Files.readString(Path.of("../docs/journal.md"));
        assertThat(FactForms.ALL).allSatisfy(form -> assertThat(manual).contains("`" + form.word() + "`"));
    }
}
