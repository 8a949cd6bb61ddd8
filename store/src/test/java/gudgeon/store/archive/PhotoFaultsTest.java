package gudgeon.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.LongRun;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelvedBuild;
import gudgeon.store.shelf.Small;
import gudgeon.store.shelf.Verified;
import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos that are gone or damaged, and an import that is killed midway: the archive is the way back. */
class PhotoFaultsTest {
    private static final int PHOTOS = 12;
    private static final int KILLS = LongRun.of(3, 100);

    @TempDir
    Path folder;

    private String id = "";
    private Path archive = Path.of("");

    @BeforeEach
    void aBuildWithPhotosAndItsArchive() throws IOException {
        archive = folder.resolve("build.zip");
        try (Shelf shelf = Shelf.open(data())) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
            List<Entry> entries = new ArrayList<>();
            for (int n = 0; n < PHOTOS; n++) {
                if (photos().keep(picture(n)) instanceof Kept.Photo photo) {
                    entries.add(Small.entry("p" + n, "bench", 1, new Photographed("piston", photo.hash(), "")));
                }
            }
            shelf.append(id, entries);
            assertThat(new Export(shelf, photos()).write(id, archive).photos()).isEqualTo(PHOTOS);
        }
    }

    private Path data() {
        return folder.resolve("data");
    }

    private Photos photos() {
        return new Photos(data());
    }

    private static byte[] picture(int seed) throws IOException {
        BufferedImage image = new BufferedImage(200, 150, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(seed);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private List<String> amiss(Shelf shelf) {
        return new NamedPhotos(photos()).amiss(shelf.journal(id).orElseThrow());
    }

    @Test
    void aPhotoThatIsDamagedOrGoneIsNamedAndTheArchivePutsItBack() throws IOException {
        try (Shelf shelf = Shelf.open(data())) {
            assertThat(amiss(shelf)).isEmpty();
            List<String> names = new ArrayList<>(
                    Contents.of(shelf.journal(id).orElseThrow().lines()).photos());
            Path gone = photos().file(names.get(0), Photos.Copy.FULL).orElseThrow();
            Files.delete(gone);
            Path damaged = photos().file(names.get(1), Photos.Copy.FULL).orElseThrow();
            byte[] bytes = Files.readAllBytes(damaged);
            bytes[bytes.length / 2] ^= 16;
            Files.write(damaged, bytes);
            assertThat(amiss(shelf)).hasSize(2);
            assertThat(amiss(shelf).get(0)).contains(names.get(0), "is not in ");
            assertThat(amiss(shelf).get(1)).contains(names.get(1), "is damaged");
            assertThat(new Import(shelf, photos()).read(archive)).isEqualTo(new Imported.PhotosPutBack(id, 2));
            assertThat(amiss(shelf)).isEmpty();
            assertThat(new Import(shelf, photos()).read(archive)).isInstanceOf(Imported.Refused.class);
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
        }
    }

    @Test
    void aPhotosFolderThatIsGoneComesBackWhole() throws IOException {
        try (Stream<Path> files = Files.walk(data().resolve("photos"))) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        try (Shelf shelf = Shelf.open(data())) {
            assertThat(shelf.build(id)).isPresent();
            assertThat(amiss(shelf)).hasSize(PHOTOS);
            assertThat(new Import(shelf, photos()).read(archive)).isEqualTo(new Imported.PhotosPutBack(id, PHOTOS));
            assertThat(amiss(shelf)).isEmpty();
        }
    }

    private Process importing(Path into) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Importer.class.getName(),
                        into.toString(),
                        archive.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static long millisecondsOf(Process whole) throws IOException, InterruptedException {
        BufferedReader said = whole.inputReader();
        assertThat(said.readLine()).isEqualTo("begun");
        long begun = System.nanoTime();
        assertThat(said.readLine()).isEqualTo("TakenIn");
        long took = (System.nanoTime() - begun) / 1_000_000;
        assertThat(whole.waitFor()).isZero();
        return Math.max(20, took);
    }

    @Test
    void anImportThatIsKilledLeavesAllOrNothingAndGoesThroughTheNextTime() throws Exception {
        long longest = millisecondsOf(importing(folder.resolve("whole")));
        Random random = new Random(7);
        for (int kill = 0; kill < KILLS; kill++) {
            Path into = folder.resolve("killed-" + kill);
            Process child = importing(into);
            assertThat(child.inputReader().readLine()).isEqualTo("begun");
            TimeUnit.MILLISECONDS.sleep(random.nextLong(longest));
            child.destroyForcibly().waitFor();
            try (Shelf shelf = Shelf.open(into)) {
                Photos photos = new Photos(into);
                if (shelf.builds().isEmpty()) {
                    assertThat(new Import(shelf, photos).read(archive)).isInstanceOf(Imported.TakenIn.class);
                }
                assertThat(shelf.builds()).extracting(ShelvedBuild::entries).containsExactly(1L + PHOTOS);
                assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
                assertThat(new NamedPhotos(photos).amiss(shelf.journal(id).orElseThrow()))
                        .isEmpty();
            }
        }
    }
}
