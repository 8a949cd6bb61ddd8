package gudgeon.bench.web.engine;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Photographs;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.PartSize;
import gudgeon.rebuild.journal.Telling;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** The engine book as a picture to explore, and each position with its parts: {@code /builds/<id>/engine}. */
public final class EngineRoom {
    private static final int LATEST = 20;

    private final Pages pages;
    private final Builds builds;

    public EngineRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/engine", this::show);
        routes.get("/builds/{build}/engine/{position}", this::position);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.ENGINE);
        Structure structure = opened.build().structure();
        pages.show(
                ctx,
                "engine/page.jte",
                opened.with(Map.of(
                        "layers",
                        Layer.of(opened.build(), structure.steps()),
                        "order",
                        structure.precedence().order())));
    }

    private void position(Context ctx) {
        Opened opened = builds.open(ctx, Tab.ENGINE);
        Build build = opened.build();
        Structure structure = build.structure();
        Position position = structure.position(ctx.pathParam("position")).orElseThrow(NotFoundResponse::new);
        List<Step> over = structure.allCovering(position.id());
        List<Position> under = structure.stepFitting(position.id()).map(Step::covers).orElse(List.of()).stream()
                .flatMap(id -> structure.position(id).stream())
                .toList();
        pages.show(
                ctx,
                "engine/position.jte",
                opened.with(Map.of(
                        "position",
                        position,
                        "over",
                        Layer.of(build, over),
                        "under",
                        under,
                        "sizes",
                        PartSize.of(build, position),
                        "told",
                        told(build, position),
                        "photos",
                        new Photographs(build, opened.frame()))));
    }

    private static List<String> told(Build build, Position position) {
        List<Long> numbers = new ArrayList<>(build.about(position.id()));
        Collections.reverse(numbers);
        return numbers.stream()
                .limit(LATEST)
                .map(number -> number + ". " + Telling.of(build.entry(number).fact(), build.structure())
                        + (build.isCorrected(number) ? " Struck out." : ""))
                .toList();
    }
}
