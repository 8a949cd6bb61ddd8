package gudgeon.bench.web.order;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.plan.BestOrder;
import gudgeon.rebuild.plan.Chances;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Map;

/** The whole order of what is left, and what it saves: {@code /builds/<id>/order}. */
public final class OrderRoom {
    /** Short enough that nobody waits for it; the page says how far from the best the order can be. */
    private static final Duration SEARCHED = Duration.ofMillis(800);

    private final Pages pages;
    private final Builds builds;

    public OrderRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/order", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.TODAY);
        pages.show(
                ctx,
                "order/page.jte",
                opened.with(Map.of(
                        "order", BestOrder.of(opened.build(), SEARCHED), "chances", Chances.of(opened.build()))));
    }
}
