package gudgeon.store.disk;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import gudgeon.store.archive.Export;
import gudgeon.store.certificate.WorkshopCertificate;
import gudgeon.store.device.Devices;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Mending;
import gudgeon.store.shelf.Restoring;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.Small;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told as kept beside the database is on the disk by then, with every name above it: the power may go. */
class ForcedTest {
    private static final Clock CLOCK = Clock.fixed(Small.NOW, ZoneOffset.UTC);

    @TempDir
    Path real;

    private Path data = Path.of("");
    private NotingDisk disk = new NotingDisk(Path.of(""));

    @BeforeEach
    void aDisk() {
        disk = new NotingDisk(real);
        data = disk.folder().resolve("bench").resolve("data");
    }

    private String build() {
        try (Shelf shelf = Shelf.open(data, CLOCK)) {
            return shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
        }
    }

    @Test
    void theDiskNotesWhatWouldBeLost() throws IOException {
        Path file = Files.createDirectory(disk.folder().resolve("new")).resolve("file");
        Files.writeString(file, "text");
        assertThat(disk.lost(file)).containsExactly("content of new/file", "name of new/file", "name of new");
        Path moved = Files.move(file, file.resolveSibling("moved"), StandardCopyOption.ATOMIC_MOVE);
        assertThat(disk.lost(moved)).containsExactly("content of new/moved", "name of new/moved", "name of new");
        WholeFile.write(file, partial -> Files.writeString(partial, "text"));
        assertThat(disk.lost(file)).as("a folder made by others").containsExactly("name of new");
        Folders.forceNames(disk.folder());
        assertThat(disk.lost(file)).isEmpty();
    }

    @Test
    void aPhoto() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB), "png", bytes);
        Photos photos = new Photos(data);
        if (photos.keep(bytes.toByteArray()) instanceof Kept.Photo photo) {
            for (Photos.Copy copy : Photos.Copy.values()) {
                assertThat(disk.lost(photos.file(photo.hash(), copy).orElseThrow()))
                        .isEmpty();
            }
        } else {
            throw new AssertionError("refused");
        }
    }

    @Test
    void aBackupAndAnArchive() throws IOException {
        String id = build();
        Path archive = disk.folder().resolve("archives").resolve("build.zip");
        try (Shelf shelf = Shelf.open(data, CLOCK)) {
            assertThat(disk.lost(shelf.backUp())).isEmpty();
            new Export(shelf, new Photos(data)).write(id, archive);
        }
        assertThat(disk.lost(archive)).isEmpty();
        assertThat(disk.lost(data)).as("the data folder itself").isEmpty();
    }

    @Test
    void whatIsRestoredOrMendedAndWhatIsPutAside() throws IOException {
        build();
        try (Shelf shelf = Shelf.open(data, CLOCK)) {
            shelf.backUp();
        }
        Path aside =
                new Restoring(data, CLOCK).restore(Optional.empty()).aside().orElseThrow();
        assertThat(disk.lost(aside.resolve("shelf.db"))).isEmpty();
        assertThat(disk.lost(data.resolve("shelf.db"))).isEmpty();
        Path mended = new Mending(data, CLOCK).mend().aside().orElseThrow();
        assertThat(mended).isNotEqualTo(aside);
        assertThat(disk.lost(mended.resolve("shelf.db"))).isEmpty();
        assertThat(disk.lost(data.resolve("shelf.db"))).isEmpty();
    }

    @Test
    void whoIsLetInAndTheWorkshopsKey() {
        WorkshopCertificate.in(data, List.of(), Small.NOW);
        assertThat(disk.lost(data.resolve(WorkshopCertificate.FILE))).isEmpty();
        Devices.in(data).letIn("phone", Small.NOW);
        assertThat(disk.lost(data.resolve("devices.json"))).isEmpty();
    }
}
