package gudgeon.bench.web.start;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.build.StartRound;
import gudgeon.rebuild.caution.MakerFirst;
import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.start.StartList;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** Before the first start, and running in: {@code /builds/<id>/start} and {@code /builds/<id>/start/run-in}. */
public final class StartRoom {
    private final Pages pages;
    private final Builds builds;
    private final Alarms alarms;

    public StartRoom(Pages pages, Builds builds, Alarms alarms) {
        this.pages = pages;
        this.builds = builds;
        this.alarms = alarms;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/start", this::start);
        routes.get("/builds/{build}/start/run-in", this::runIn);
    }

    private void start(Context ctx) {
        Opened opened = builds.open(ctx, Tab.START);
        pages.show(
                ctx,
                "start/page.jte",
                opened.with(Map.of(
                        "list", StartList.of(opened.build(), alarms.standing(opened.build())),
                        "step", StartRound.step(opened.build()),
                        "first", MakerFirst.sentences())));
    }

    private void runIn(Context ctx) {
        Opened opened = builds.open(ctx, Tab.START);
        pages.show(ctx, "start/runin.jte", opened.with(Map.of("runIn", RunIn.of(opened.build()))));
    }
}
