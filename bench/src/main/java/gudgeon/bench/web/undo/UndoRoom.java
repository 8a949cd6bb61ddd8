package gudgeon.bench.web.undo;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.plan.Undo;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** What must come apart, and be bought again: {@code /builds/<id>/undo?of=...}. */
public final class UndoRoom {
    private final Pages pages;
    private final Builds builds;

    public UndoRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/undo", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.UNDO);
        Structure structure = opened.build().structure();
        Optional<String> of = Optional.ofNullable(ctx.queryParam("of")).filter(structure::has);
        Optional<Undo> undo = of.map(id -> Undo.of(opened.build(), id));
        pages.show(ctx, "undo/page.jte", opened.with(Map.of("of", of.orElse(""), "undo", undo)));
    }
}
