package gudgeon.bench.web.measure;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Mark;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.bore.BorePlan;
import gudgeon.rebuild.bore.Oversize;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.valvework.SpringRoom;
import gudgeon.rebuild.valvework.ValveSeat;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** What to have done to the bore, and how springs and seats stand: {@code /builds/<id>/measure/bore}. */
public final class BoreRoom {
    private final Pages pages;
    private final Builds builds;

    public BoreRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/measure/bore", this::show);
    }

    /** How a piston's oversize is marked. */
    public static Mark mark(Oversize oversize) {
        return switch (oversize.cleansUp()) {
            case ON_ANY_CENTRE -> Mark.PASSED;
            case ON_A_SHIFTED_CENTRE -> Mark.LOOK;
            case UNPROVEN -> Mark.UNPROVEN;
            case NO -> Mark.FAILED;
        };
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.MEASURE);
        Build build = opened.build();
        pages.show(
                ctx,
                "measure/bore.jte",
                opened.with(Map.of(
                        "plan", BorePlan.of(build),
                        "springs", SpringRoom.all(build),
                        "seats", ValveSeat.all(build))));
    }
}
