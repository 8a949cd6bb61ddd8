package gudgeon.bench.web.options;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Dispositions;
import gudgeon.rebuild.decide.Drafts;
import gudgeon.rebuild.decide.Option;
import gudgeon.rebuild.decide.Options;
import gudgeon.rebuild.decide.Trials;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** Whole ways to go on, and what is to become of each part: {@code /builds/<id>/options}. */
public final class OptionsRoom {
    private final Pages pages;
    private final Builds builds;
    private final Trials trials = new Trials();

    public OptionsRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/options", this::show);
        routes.get("/builds/{build}/options/line", this::line);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.OPTIONS);
        Build build = opened.build();
        double rpm = rpm(ctx);
        pages.show(
                ctx,
                "options/page.jte",
                opened.with(Map.of(
                        "options",
                        Options.of(build, rpm, trials),
                        "drafts",
                        Drafts.of(build),
                        "proposals",
                        Dispositions.of(build))));
    }

    /** The form for what an option does at one position, with the sizes that its part has there. */
    private void line(Context ctx) {
        Opened opened = builds.open(ctx, Tab.OPTIONS);
        String id = String.valueOf(ctx.queryParam("option"));
        Optional<LineForm> form = Option.of(opened.build()).stream()
                .filter(option -> option.id().equals(id))
                .findFirst()
                .flatMap(option -> LineForm.of(opened.build(), option, String.valueOf(ctx.queryParam("position"))));
        if (form.isEmpty()) {
            ctx.redirect(opened.frame().address(Tab.OPTIONS));
            return;
        }
        pages.show(ctx, "options/line.jte", opened.with(Map.of("form", form.get())));
    }

    /** The speed asked for, if it is one that can be. */
    private static double rpm(Context ctx) {
        try {
            double asked = Double.parseDouble(String.valueOf(ctx.queryParam("rpm")));
            return Options.isSpeed(asked) ? asked : Options.USUAL_RPM;
        } catch (NumberFormatException notSaid) {
            return Options.USUAL_RPM;
        }
    }
}
