package gudgeon.bench.web.page;

import gudgeon.bench.web.page.Builds.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.InputStream;

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
        Opened opened = builds.open(ctx, Tab.JOURNAL);
        String hash = ctx.pathParam("photo");
        if (!hash.matches("[0-9a-f]{64}") || opened.build().size() == 0) {
            throw new NotFoundResponse();
        }
        InputStream photo = builds.shelf()
                .photos()
                .open(hash, ctx.queryParam("small") != null)
                .orElseThrow(NotFoundResponse::new);
        ctx.contentType("image/jpeg")
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .result(photo);
    }
}
