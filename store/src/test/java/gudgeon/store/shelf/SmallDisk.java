package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.archive.Export;
import gudgeon.store.photo.Photos;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;

/** A process that works on a disk of its own until it is full, makes room and goes on, and at last may only read. It says what it saw. */
public final class SmallDisk {
    private static final PrintStream OUT = System.out;

    private SmallDisk() {}

    /** Takes the folder on which the disk is mounted. */
    public static void main(String[] arguments) throws Exception {
        Path disk = Path.of(arguments[0]);
        Path data = disk.resolve("data");
        Path filler = Files.write(disk.resolve("filler"), new byte[1 << 20]);
        String id;
        long kept;
        try (Shelf shelf = Shelf.open(data)) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
            shelf.backUp();
            fill(shelf, id);
            say("photo", () -> new Photos(data).keep(picture()));
            say("backup", shelf::backUp);
            say("export", () -> new Export(shelf, new Photos(data)).write(id, disk.resolve("build.zip")));
            kept = shelf.build(id).orElseThrow().size();
            OUT.println("then " + shelf.verify(id).getClass().getSimpleName());
            Files.delete(filler);
            OUT.println("with room "
                    + shelf.append(id, List.of(note("after"))).getClass().getSimpleName());
        }
        try (Shelf shelf = Shelf.open(data)) {
            OUT.println("opened again " + (shelf.build(id).orElseThrow().size() - kept) + " more, "
                    + shelf.verify(id).getClass().getSimpleName());
        }
        new ProcessBuilder("mount", "-o", "remount,ro", disk.toString())
                .inheritIO()
                .start()
                .waitFor();
        say("read-only", () -> Shelf.open(data));
    }

    private static void fill(Shelf shelf, String id) {
        for (int n = 0; ; n++) {
            int number = n;
            try {
                Outcome outcome = shelf.append(id, List.of(note("n" + number)));
                if (!(outcome instanceof Outcome.Kept)) {
                    OUT.println("not kept " + outcome);
                }
            } catch (ShelfFault full) {
                OUT.println("entry: " + full.getMessage());
                return;
            }
        }
    }

    private static Entry note(String key) {
        return Small.entry(key, "bench", 1, new Noted("", "long ".repeat(500)));
    }

    private interface Act {
        Object act() throws IOException;
    }

    private static void say(String what, Act act) throws IOException {
        try {
            OUT.println(what + " went through: " + act.act());
        } catch (ShelfFault fault) {
            OUT.println(what + ": " + fault.getMessage());
        }
    }

    /** One that does not shrink, so that it needs more room than is left. */
    private static byte[] picture() throws IOException {
        BufferedImage image = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(1);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }
}
