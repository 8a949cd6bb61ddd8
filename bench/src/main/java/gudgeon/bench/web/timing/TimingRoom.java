package gudgeon.bench.web.timing;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.timing.Timing;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** The timing of a build: {@code /builds/<id>/timing}. */
public final class TimingRoom {
    private final Pages pages;
    private final Builds builds;

    public TimingRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/timing", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.TIMING);
        Timing timing = Timing.of(opened.build());
        pages.show(
                ctx,
                "timing/page.jte",
                opened.with(
                        Map.of("timing", timing, "valves", valves(opened.build()), "disc", DiscDrawing.of(timing))));
    }

    private static List<String> valves(Build build) {
        return build.book().geometry().map(Geometry::valves).orElse(List.of()).stream()
                .map(ValveEntry::id)
                .toList();
    }
}
