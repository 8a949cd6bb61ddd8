package gudgeon.store.archive;

import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Path;

/** A process that takes in an archive. It is there to be killed. */
public final class Importer {
    private Importer() {}

    /** Takes the data folder and the archive. */
    public static void main(String[] arguments) {
        Path folder = Path.of(arguments[0]);
        try (Shelf shelf = Shelf.open(folder)) {
            System.out.println("begun");
            System.out.println(new Import(shelf, new Photos(folder))
                    .read(Path.of(arguments[1]))
                    .getClass()
                    .getSimpleName());
        }
    }
}
