package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * A process in which two devices write entries, one of them with photos, while a backup is made over and over. It says the key of each
 * entry once it is acknowledged. It is there to be killed.
 */
public final class Appender {
    private final PrintStream out = System.out;
    private final Shelf shelf;
    private final Photos photos;
    private final String id;
    private final int many;

    private Appender(Shelf shelf, Photos photos, String id, int many) {
        this.shelf = shelf;
        this.photos = photos;
        this.id = id;
        this.many = many;
    }

    /** Takes the data folder, the build's id, what the keys begin with, and how many entries; without that, it writes without end. */
    public static void main(String[] arguments) throws InterruptedException {
        int many = arguments.length > 3 ? Integer.parseInt(arguments[3]) : Integer.MAX_VALUE;
        Path folder = Path.of(arguments[0]);
        try (Shelf shelf = Shelf.open(folder)) {
            Appender appender = new Appender(shelf, new Photos(folder), arguments[1], many);
            Thread backups = new Thread(appender::backUp);
            backups.setDaemon(true);
            Thread phone = new Thread(() -> appender.write(arguments[2] + "-phone", true));
            backups.start();
            phone.start();
            appender.write(arguments[2] + "-tablet", false);
            phone.join();
        }
    }

    private void backUp() {
        for (int n = 0; n < many; n++) {
            shelf.backUp();
        }
    }

    private void write(String device, boolean withPhotos) {
        for (int n = 0; n < many; n++) {
            String key = device + "-" + n;
            Fact fact = withPhotos && n % 4 == 1 ? photo(key) : new Noted("", "note " + n);
            Outcome outcome = shelf.append(id, List.of(Small.entry(key, device, 1, fact)));
            synchronized (out) {
                out.println(outcome instanceof Outcome.Kept ? key : "not kept: " + outcome);
                out.flush();
            }
        }
    }

    /** A photo of its own, kept before the entry that names it is written. */
    private Fact photo(String key) {
        BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, image.getWidth(), 1, key.repeat(24).chars().toArray(), 0, image.getWidth());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        if (photos.keep(bytes.toByteArray()) instanceof Kept.Photo photo) {
            return new Photographed("piston", photo.hash(), key);
        }
        throw new IllegalStateException("the photo was refused");
    }
}
