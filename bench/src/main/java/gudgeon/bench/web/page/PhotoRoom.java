package gudgeon.bench.web.page;

import gudgeon.store.photo.Photos;
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
        Path file = builds.photos().file(ctx.pathParam("photo"), copy).orElseThrow(NotFoundResponse::new);
        try {
            ctx.contentType("image/jpeg")
                    .header("Cache-Control", "private, max-age=31536000, immutable")
                    .result(Files.newInputStream(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
