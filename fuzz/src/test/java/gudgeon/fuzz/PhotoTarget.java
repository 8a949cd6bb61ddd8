package gudgeon.fuzz;

import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;

/** A photo that is kept can be read again, is no larger than promised, and goes with its hash. */
public final class PhotoTarget {
    private static final Path FOLDER = Scratch.folder();

    private PhotoTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        Photos photos = new Photos(FOLDER);
        Kept kept = photos.keep(input);
        if (kept instanceof Kept.Refused refused) {
            Promise.said(List.of(refused.sentence()));
        } else if (kept instanceof Kept.Photo photo) {
            for (Photos.Copy copy : Photos.Copy.values()) {
                Path file = photos.file(photo.hash(), copy).orElseThrow();
                look(file, copy == Photos.Copy.FULL ? Photos.LONGEST : Photos.LONGEST_SMALL, photo.hash(), copy);
                file.toFile().delete();
            }
        }
    }

    private static void look(Path file, int longest, String hash, Photos.Copy copy) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            var image = ImageIO.read(new ByteArrayInputStream(bytes));
            Promise.kept(Math.max(image.getWidth(), image.getHeight()) <= longest, "the photo is larger than promised");
            if (copy == Photos.Copy.FULL) {
                Promise.same(Optional.empty(), Photos.against(hash, bytes), "the photo");
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
