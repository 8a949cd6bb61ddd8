package gudgeon.store.archive;

import gudgeon.store.archive.Proof.Proved;
import gudgeon.store.disk.Reason;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes in archives. A broken or hostile one is refused whole, before anything is written.
 *
 * @param shelf where the build goes
 * @param photos where its photos go
 */
public record Import(Shelf shelf, Photos photos) {
    /** Takes in an archive. */
    public Imported read(Path file) {
        List<String> sentences = new ArrayList<>();
        try (OpenedArchive archive = OpenedArchive.open(file, sentences)) {
            Optional<Proved> proved = sentences.isEmpty() ? new Proof(archive, sentences).prove() : Optional.empty();
            if (proved.isPresent() && isHere(proved.get())) {
                return putBack(file, archive, proved.get());
            }
            if (sentences.isEmpty()) {
                keepPhotos(archive, archive.names(Names.PHOTO), sentences);
            }
            return proved.filter(build -> sentences.isEmpty())
                    .map(build -> takeIn(file, build))
                    .orElseGet(() -> refused(file, sentences));
        } catch (IOException unreadable) {
            return refused(
                    file,
                    List.of("It is no archive that can be opened: " + Reason.of(unreadable)
                            + ". Name the file that gudgeon export wrote, or get it again."));
        }
    }

    private boolean isHere(Proved build) {
        return shelf.journal(build.journal().id()).isPresent();
    }

    private static String hereAlready(Proved build) {
        return "The build '" + build.journal().id() + "' is on the shelf already. It was not touched.";
    }

    /** The build itself is never touched, but a photo of it that is gone or damaged is the better for this. */
    private Imported putBack(Path file, OpenedArchive archive, Proved build) {
        List<String> amiss = archive.names(Names.PHOTO).stream()
                .filter(name -> photos.amiss(Names.PHOTO.hash(name)).isPresent())
                .toList();
        List<String> sentences = new ArrayList<>();
        keepPhotos(archive, amiss, sentences);
        if (sentences.isEmpty() && !amiss.isEmpty()) {
            return new Imported.PhotosPutBack(build.journal().id(), amiss.size());
        }
        sentences.add(hereAlready(build));
        return refused(file, sentences);
    }

    /** Photos first: what the journal names is there before the journal is. One that nothing names does no harm. */
    private void keepPhotos(OpenedArchive archive, List<String> names, List<String> sentences) {
        for (String name : names) {
            archive.bytes(name, sentences)
                    .map(bytes -> photos.keepExactly(Names.PHOTO.hash(name), bytes))
                    .ifPresent(kept -> {
                        if (kept instanceof Kept.Refused refused) {
                            sentences.add(refused.sentence());
                        }
                    });
        }
    }

    private Imported takeIn(Path file, Proved build) {
        return shelf.takeIn(build.journal(), build.books())
                ? new Imported.TakenIn(
                        build.journal().id(),
                        build.journal().name(),
                        build.journal().lines().size(),
                        build.photos())
                : refused(file, List.of(hereAlready(build)));
    }

    private static Imported refused(Path file, List<String> sentences) {
        List<String> all = new ArrayList<>();
        all.add(file + " was not taken in; nothing was changed.");
        all.addAll(sentences);
        return new Imported.Refused(all);
    }
}
