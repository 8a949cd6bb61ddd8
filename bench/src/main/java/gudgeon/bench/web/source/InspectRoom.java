package gudgeon.bench.web.source;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.source.Arrivals;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.OrderLine;
import gudgeon.rebuild.source.SellersLetter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Parts that came, held against the old one, the book and their mates before they are fitted: {@code
 * /builds/<id>/parts/inspect?position=<id>&part=<name>}; without a part, it is entered here.
 */
public final class InspectRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public InspectRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/parts/inspect", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        Build build = opened.build();
        Position position = Optional.ofNullable(ctx.queryParam("position"))
                .flatMap(id -> build.structure().position(id))
                .orElseThrow(NotFoundResponse::new);
        List<OrderLine> orders = Arrivals.of(build, LocalDate.now(clock)).lines().stream()
                .filter(line -> line.position().equals(position.id()))
                .toList();
        Optional<Inspection> inspection = Optional.ofNullable(ctx.queryParam("part"))
                .or(() -> newest(build, position))
                .flatMap(part -> Inspection.of(build, position.id(), part));
        pages.show(
                ctx,
                "source/inspect.jte",
                opened.with(Map.of(
                        "position",
                        position,
                        "orders",
                        orders,
                        "inspection",
                        inspection,
                        "letter",
                        inspection.flatMap(one -> SellersLetter.of(build, one)))));
    }

    /** The part entered last that was not refused; of several the others are a tap away. */
    private static Optional<String> newest(Build build, Position position) {
        return build.parts(position.id()).stream()
                .filter(part -> !part.spent())
                .map(part -> part.name())
                .reduce((before, later) -> later);
    }
}
