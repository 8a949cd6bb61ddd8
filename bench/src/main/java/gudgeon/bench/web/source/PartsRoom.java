package gudgeon.bench.web.source;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.source.PartsList;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;

/** What to buy, what is on its way, what is at the machinist's, and the money: {@code /builds/<id>/parts}. */
public final class PartsRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public PartsRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/parts", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        PartsList list = PartsList.of(opened.build(), LocalDate.now(clock));
        pages.show(ctx, "source/page.jte", opened.with(Map.of("list", list, "groups", Group.of(list))));
    }
}
