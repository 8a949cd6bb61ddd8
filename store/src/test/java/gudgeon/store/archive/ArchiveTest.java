package gudgeon.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.archive.Export.Exported;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.ContentHash;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelfFault;
import gudgeon.store.shelf.Small;
import gudgeon.store.shelf.Verified;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A build as one file, there and back; and files that pretend to be one. */
class ArchiveTest {
    @TempDir
    Path folder;

    private Path archive = Path.of("");
    private String id = "";
    private String photo = "";

    @BeforeEach
    void exported() throws IOException {
        archive = folder.resolve("build.zip");
        Photos photos = new Photos(folder.resolve("one"));
        photo = ((Kept.Photo) photos.keep(picture())).hash();
        try (Shelf shelf = Shelf.open(folder.resolve("one"))) {
            id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
            shelf.append(
                    id,
                    List.of(
                            Small.entry("a", "bench", 1, new Noted("", "eins, zwei — ½")),
                            Small.entry("b", "bench", 1, new Photographed("piston", photo, "crown")),
                            Small.entry("c", "bench", 1, new Photographed("piston", "0".repeat(64), "lost"))));
            shelf.changeBook(id, changedBook(), "plainer", "bench", 4);
            Exported exported = new Export(shelf, photos).write(id, archive);
            assertThat(exported.entries()).isEqualTo(5);
            assertThat(exported.photos()).isEqualTo(1);
            assertThat(exported.notes()).singleElement().asString().contains("0".repeat(64), "lacks it");
            assertThatThrownBy(() -> new Export(shelf, photos).write(id, archive))
                    .isInstanceOf(ShelfFault.class)
                    .hasMessageContaining("is there already");
        }
    }

    private static byte[] picture() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }

    private static String changedBook() {
        return Small.book().replace("Fit the piston", "Fit the piston to its rod");
    }

    private Imported importInto(String data, Path file) {
        try (Shelf shelf = Shelf.open(folder.resolve(data))) {
            return new Import(shelf, new Photos(folder.resolve(data))).read(file);
        }
    }

    /** Nothing of it may be kept: no build, no photo. */
    private List<String> refused(Path file) {
        Imported imported = importInto("fresh", file);
        assertThat(imported).isInstanceOf(Imported.Refused.class);
        try (Shelf shelf = Shelf.open(folder.resolve("fresh"))) {
            assertThat(shelf.builds()).isEmpty();
        }
        assertThat(folder.resolve("fresh/photos")).doesNotExist();
        return ((Imported.Refused) imported).sentences();
    }

    private Map<String, byte[]> files() throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            zip.stream().forEach(entry -> {
                try (var stream = zip.getInputStream(entry)) {
                    files.put(entry.getName(), stream.readAllBytes());
                } catch (IOException fault) {
                    throw new UncheckedIOException(fault);
                }
            });
        }
        return files;
    }

    private Path zipped(Map<String, byte[]> files) throws IOException {
        Path file = folder.resolve("forged.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(each.getKey()));
                zip.write(each.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }

    private Path with(String name, UnaryOperator<String> change) throws IOException {
        Map<String, byte[]> files = files();
        assertThat(files).containsKey(name);
        String before = new String(files.get(name), StandardCharsets.UTF_8);
        assertThat(change.apply(before)).isNotEqualTo(before);
        files.put(name, change.apply(before).getBytes(StandardCharsets.UTF_8));
        return zipped(files);
    }

    @Test
    void aBuildComesOutAsItWentIn() throws IOException {
        assertThat(importInto("two", archive)).isEqualTo(new Imported.TakenIn(id, "Tarn 98", 5, 1));
        try (Shelf one = Shelf.open(folder.resolve("one"));
                Shelf two = Shelf.open(folder.resolve("two"))) {
            assertThat(two.journal(id)).isEqualTo(one.journal(id));
            assertThat(two.verify(id)).isEqualTo(one.verify(id)).isInstanceOf(Verified.Sound.class);
            assertThat(two.bookText(id)).isEqualTo(changedBook());
            assertThat(two.book(ContentHash.of(Small.book()))).contains(Small.book());
            assertThat(two.build(id).orElseThrow().size()).isEqualTo(5);
        }
        Path there =
                new Photos(folder.resolve("one")).file(photo, Photos.Copy.FULL).orElseThrow();
        Path here =
                new Photos(folder.resolve("two")).file(photo, Photos.Copy.FULL).orElseThrow();
        assertThat(here).hasSameBinaryContentAs(there);
        assertThat(importInto("two", archive))
                .isInstanceOfSatisfying(
                        Imported.Refused.class,
                        refused -> assertThat(refused.sentences())
                                .anyMatch(sentence -> sentence.contains("is on the shelf already")));
    }

    @Test
    void itOpensWithOrdinaryTools() throws IOException {
        Map<String, byte[]> files = files();
        assertThat(files.keySet())
                .containsExactly(
                        "README.txt",
                        "build.json",
                        "book.yaml",
                        "books/" + ContentHash.of(Small.book()) + ".yaml",
                        "journal.jsonl",
                        "journal.csv",
                        "hashes.txt",
                        "photos/" + photo + ".jpg");
        assertThat(new String(files.get("README.txt"), StandardCharsets.UTF_8)).contains("The rebuild of: Tarn 98");
        assertThat(new String(files.get("journal.jsonl"), StandardCharsets.UTF_8))
                .contains("eins, zwei — ½");
    }

    @Test
    void everyChangeIsSeen() throws IOException {
        assertThat(refused(with("journal.jsonl", text -> text.replace("zwei", "drei"))))
                .anyMatch(sentence -> sentence.startsWith("Entry 2 was changed"));
        assertThat(refused(with("journal.jsonl", text -> text.substring(0, text.length() / 2))))
                .isNotEmpty();
        assertThat(refused(with("hashes.txt", text -> text.replaceFirst("^.", "z"))))
                .isNotEmpty();
        assertThat(refused(with("build.json", text -> text.replace(id, "another-build"))))
                .isNotEmpty();
        assertThat(refused(with("build.json", text -> text.replace("\"entries\" : 5", "\"entries\" : 6"))))
                .isNotEmpty();
        assertThat(refused(with("build.json", text -> text.replace("\"photos\" : 1", "\"photos\" : 2"))))
                .isNotEmpty();
        assertThat(refused(with("build.json", text -> text.replace("\"archive\" : 1", "\"archive\" : 2"))))
                .isNotEmpty();
        assertThat(refused(with("book.yaml", text -> text + "\n"))).isNotEmpty();
    }

    @Test
    void aFileTooFewOrTooManyIsSeen() throws IOException {
        for (String name : files().keySet()) {
            if (!List.of("README.txt", "journal.csv").contains(name)) {
                Map<String, byte[]> fewer = files();
                fewer.remove(name);
                assertThat(refused(zipped(fewer))).hasSizeGreaterThan(1);
            }
        }
        for (String name : List.of(
                "../../escape.txt",
                "/absolute",
                "photos/../../x.jpg",
                "photos/",
                "C:\\x",
                "photos/" + "A".repeat(64))) {
            Map<String, byte[]> more = files();
            more.put(name, new byte[1]);
            assertThat(refused(zipped(more))).anyMatch(sentence -> sentence.contains("no file of an archive"));
        }
        Map<String, byte[]> more = files();
        more.put("photos/" + "a".repeat(64) + ".jpg", picture());
        assertThat(refused(zipped(more))).anyMatch(sentence -> sentence.contains("not named by its journal"));
    }

    @Test
    void aPhotoThatIsAnotherIsSeen() throws IOException {
        Map<String, byte[]> files = files();
        files.put("photos/" + photo + ".jpg", picture());
        assertThat(refused(zipped(files))).anyMatch(sentence -> sentence.contains("is not the one that was kept"));
    }

    @Test
    void aNameTwiceIsSeen() throws IOException {
        byte[] bytes = Files.readAllBytes(zipped(withA("README.tx2")));
        String text = new String(bytes, StandardCharsets.ISO_8859_1).replace("README.tx2", "README.txt");
        Path file = Files.write(folder.resolve("twice.zip"), text.getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refused(file)).anyMatch(sentence -> sentence.contains("README.txt twice"));
    }

    private Map<String, byte[]> withA(String name) throws IOException {
        Map<String, byte[]> files = files();
        files.put(name, new byte[1]);
        return files;
    }

    /** Two hundred megabytes of nothing pack into less than one; no more is unpacked than a book may have. */
    @Test
    void aBombIsNotUnpacked() throws IOException {
        Path file = folder.resolve("bomb.zip");
        Map<String, byte[]> files = files();
        files.remove("book.yaml");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(each.getKey()));
                zip.write(each.getValue());
            }
            zip.putNextEntry(new ZipEntry("book.yaml"));
            byte[] nothing = new byte[1 << 20];
            for (int n = 0; n < 200; n++) {
                zip.write(nothing);
            }
        }
        assertThat(Files.size(file)).isLessThan(1 << 20);
        assertThat(refused(file))
                .anyMatch(sentence -> sentence.contains("book.yaml unpacks to more than 1000000 bytes"));
    }

    @Test
    void aFileThatBreaksOffOrIsRubbishIsRefused() throws IOException {
        byte[] bytes = Files.readAllBytes(archive);
        Path file = folder.resolve("broken.zip");
        for (int part = 0; part < 20; part++) {
            refused(Files.write(file, Arrays.copyOf(bytes, bytes.length * part / 20)));
        }
        byte[] rubbish = new byte[5000];
        new Random(1).nextBytes(rubbish);
        refused(Files.write(file, rubbish));
        refused(folder.resolve("not-there.zip"));
        refused(folder);
    }

    /** One bit flipped somewhere: either all of it still proves, as in a time stamp, or nothing is taken. */
    @Test
    void aFlippedBitIsSeenOrChangesNothing() throws IOException {
        byte[] bytes = Files.readAllBytes(archive);
        Random random = new Random(2);
        int refusals = 0;
        int tries = 60;
        for (int n = 0; n < tries; n++) {
            byte[] flipped = bytes.clone();
            flipped[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            Path file = Files.write(folder.resolve("flipped.zip"), flipped);
            String data = "flip-" + n;
            if (importInto(data, file) instanceof Imported.TakenIn) {
                try (Shelf one = Shelf.open(folder.resolve("one"));
                        Shelf other = Shelf.open(folder.resolve(data))) {
                    assertThat(other.journal(id).orElseThrow().lines())
                            .isEqualTo(one.journal(id).orElseThrow().lines());
                }
            } else {
                refusals++;
            }
        }
        assertThat(refusals).isGreaterThan(tries / 3);
    }
}
