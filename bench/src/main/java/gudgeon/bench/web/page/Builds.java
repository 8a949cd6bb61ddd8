package gudgeon.bench.web.page;

import gudgeon.rebuild.build.Build;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;

/** The builds on the shelf as pages ask for them. */
public final class Builds {
    private final Shelf shelf;
    private final Photos photos;

    public Builds(Shelf shelf, Photos photos) {
        this.shelf = shelf;
        this.photos = photos;
    }

    /** The photos of all builds. */
    public Photos photos() {
        return photos;
    }

    /** The shelf itself. */
    public Shelf shelf() {
        return shelf;
    }

    /**
     * The build that the address names.
     *
     * @throws NotFoundResponse if there is none
     */
    public Opened open(Context ctx, Tab tab) {
        String id = ctx.pathParam("build");
        Build build = shelf.build(id).orElseThrow(NotFoundResponse::new);
        String name = shelf.name(id).orElseThrow(NotFoundResponse::new);
        Frame frame =
                new Frame(id, name, tab, build.size(), build.book().geometry().isPresent());
        return new Opened(frame, build);
    }

    /** A build with what its pages show around their content. */
    public record Opened(Frame frame, Build build) {
        /** What a template is given: the frame, the build, and the page's own values. */
        public Map<String, Object> with(Map<String, ?> own) {
            Map<String, Object> values = new HashMap<>(own);
            values.put("frame", frame);
            values.put("build", build);
            return values;
        }
    }
}
