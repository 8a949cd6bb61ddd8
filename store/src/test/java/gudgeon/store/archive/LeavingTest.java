package gudgeon.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.Small;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A person who leaves Gudgeon: all that is in an archive is read here by what reads any zip, JSON, CSV, YAML and JPEG. */
class LeavingTest {
    private static final String NOTE = "=eins, \"zwei\" — ½";

    @TempDir
    Path folder;

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    @BeforeEach
    void leave() throws IOException {
        Path archive = folder.resolve("mine.zip");
        Photos photos = new Photos(folder);
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "png", picture);
        String photo = ((Kept.Photo) photos.keep(picture.toByteArray())).hash();
        try (Shelf shelf = Shelf.open(folder)) {
            String id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
            shelf.append(
                    id,
                    List.of(
                            Small.entry("a", "-1+1", 1, new Noted("", NOTE)),
                            Small.entry("b", "bench", 1, new Photographed("piston", photo, "crown")),
                            Small.entry("c", "bench", 1, new Corrected("a", "typed twice", Optional.empty()))));
            new Export(shelf, photos).write(id, archive);
        }
        try (InputStream in = Files.newInputStream(archive);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
    }

    private String text(String name) {
        return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
    }

    private List<JsonNode> journal() {
        return text("journal.jsonl").lines().map(LeavingTest::json).toList();
    }

    private static JsonNode json(String line) {
        try {
            return new ObjectMapper().readTree(line);
        } catch (IOException broken) {
            throw new AssertionError(line, broken);
        }
    }

    @Test
    void theReadmeNamesEveryFile() {
        assertThat(files.keySet().stream().filter(name -> !name.contains("/")))
                .allSatisfy(name -> assertThat(name.equals("README.txt") ? name : text("README.txt"))
                        .contains(name));
        assertThat(text("README.txt")).contains("photos/", "books/", "Without Gudgeon");
    }

    @Test
    void everyEntrySaysWhatHappenedAndWhen() {
        assertThat(journal()).hasSize(4).allSatisfy(entry -> {
            assertThat(entry.path("type").asText()).isNotEmpty();
            assertThat(Instant.parse(entry.path("at").asText())).isNotNull();
        });
        assertThat(journal().get(1).path("text").asText()).isEqualTo(NOTE);
        assertThat(journal().get(3).path("entry").asText())
                .isEqualTo(journal().get(1).path("key").asText());
    }

    @Test
    void theTableTellsEveryEntryInWordsAndIsNotReckonedWith() throws IOException {
        try (CsvReader<CsvRecord> reader =
                CsvReader.builder().ofCsvRecord(text("journal.csv").substring(1))) {
            List<CsvRecord> rows = reader.stream().toList();
            assertThat(rows).hasSize(5);
            assertThat(rows.get(0).getFields()).containsExactly("number", "time", "device", "what", "struck out");
            assertThat(rows.get(2).getField(2)).isEqualTo("'-1+1");
            assertThat(rows.get(2).getField(3)).contains("zwei").doesNotStartWith("=");
            assertThat(rows.get(2).getField(4)).isEqualTo("yes");
            assertThat(rows.get(3).getField(4)).isEmpty();
        }
    }

    @Test
    void thePhotosThatTheJournalNamesArePictures() throws IOException {
        String photo = journal().get(2).path("photo").asText();
        byte[] jpeg = files.getOrDefault("photos/" + photo + ".jpg", new byte[0]);
        assertThat(ImageIO.read(new ByteArrayInputStream(jpeg)).getWidth()).isEqualTo(60);
    }

    @Test
    void theBookIsYaml() {
        Object book = new Load(LoadSettings.builder().build()).loadFromString(text("book.yaml"));
        assertThat(book)
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.MAP)
                .containsKey("engine");
    }

    /** As README.txt says it is done. */
    @Test
    void theHashesCanBeReckonedAgain() throws NoSuchAlgorithmException {
        String before = sha256(json(text("build.json")).path("id").asText());
        List<String> hashes = text("hashes.txt").lines().toList();
        List<String> lines = text("journal.jsonl").lines().toList();
        for (int n = 0; n < lines.size(); n++) {
            before = sha256(before + lines.get(n));
            assertThat(hashes.get(n)).isEqualTo(before);
        }
    }

    private static String sha256(String text) throws NoSuchAlgorithmException {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    }
}
