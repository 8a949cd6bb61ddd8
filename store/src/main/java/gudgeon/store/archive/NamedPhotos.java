package gudgeon.store.archive;

import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.ShelvedJournal;
import java.util.List;

/**
 * The photos that a journal names, held against those in the data folder.
 *
 * @param photos those in the data folder
 */
public record NamedPhotos(Photos photos) {
    /** The way back where one is amiss. */
    public static final String WAY_BACK =
            "Copy the folder photos back from your copy of it, or import an archive of this"
                    + " build, which puts its photos back and changes nothing else.";

    /** How many photos a journal names. */
    public int count(ShelvedJournal journal) {
        return Contents.of(journal.lines()).photos().size();
    }

    /** What is amiss, a sentence a photo. */
    public List<String> amiss(ShelvedJournal journal) {
        return Contents.of(journal.lines()).photos().stream()
                .flatMap(hash -> photos.amiss(hash).map(what -> "The photo " + hash + " " + what + ".").stream())
                .toList();
    }
}
