package gudgeon.bench.web.page;

import gudgeon.store.archive.NamedPhotos;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.ShelfFault;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Shows photos: {@code /builds/<id>/photos/<hash>}, with {@code ?small=1} a smaller copy. */
public final class PhotoRoom {
    private final Builds builds;

    public PhotoRoom(Builds builds) {
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/photos/{photo}", this::show);
    }

    private void show(Context ctx) {
        builds.open(ctx, Tab.JOURNAL);
        Photos.Copy copy = ctx.queryParam("small") != null ? Photos.Copy.SMALL : Photos.Copy.FULL;
        String photo = ctx.pathParam("photo");
        Path file = builds.photos()
                .file(photo, copy)
                .or(() -> builds.photos().file(photo, Photos.Copy.FULL))
                .orElseThrow(NotFoundResponse::new);
        if (copy == Photos.Copy.FULL) {
            builds.photos().amiss(photo).ifPresent(what -> {
                throw new ShelfFault("The photo " + photo + " " + what + ". " + NamedPhotos.WAY_BACK);
            });
        }
        try {
            ctx.contentType("image/jpeg")
                    .header("Cache-Control", "private, max-age=31536000, immutable")
                    .result(Files.newInputStream(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
