package gudgeon.bench.web.measure;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.measure.Sheet;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The sheet for the wall and typing it in afterwards: {@code /builds/<id>/measure/blank} and
 * {@code /builds/<id>/measure/type?of=<position>}.
 */
public final class PaperRoom {
    private final Pages pages;
    private final Builds builds;

    public PaperRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/measure/blank", this::blank);
        routes.get("/builds/{build}/measure/type", this::type);
    }

    /** A position with the dimensions that are read on it. */
    public record ToRead(Position position, List<Dimension> dimensions) {
        /** Every place of one of them. */
        public List<Spot> spots(Dimension dimension) {
            return Spot.of(dimension).toList();
        }
    }

    private void blank(Context ctx) {
        Opened opened = builds.open(ctx, Tab.MEASURE);
        Build build = opened.build();
        List<ToRead> all = all(build);
        String of = Optional.ofNullable(ctx.queryParam("of")).orElse("");
        List<ToRead> chosen = chosen(build, all, of);
        pages.show(ctx, "measure/blank.jte", opened.with(Map.of("all", all, "chosen", chosen, "of", of)));
    }

    /** One position, all of them, or those whose part is in the hand, if any is. */
    private static List<ToRead> chosen(Build build, List<ToRead> all, String of) {
        Set<String> inHand = Sheet.of(build).rows().stream()
                .filter(Sheet.Row::now)
                .map(row -> row.dimension().of())
                .collect(Collectors.toSet());
        boolean narrow = of.isEmpty() ? !inHand.isEmpty() : !of.equals("all");
        return all.stream()
                .filter(one -> !narrow
                        || (of.isEmpty()
                                ? inHand.contains(one.position().id())
                                : of.equals(one.position().id())))
                .toList();
    }

    private void type(Context ctx) {
        Opened opened = builds.open(ctx, Tab.MEASURE);
        Build build = opened.build();
        List<ToRead> all = all(build);
        String of = Optional.ofNullable(ctx.queryParam("of")).orElse("");
        ToRead chosen = all.stream()
                .filter(one -> of.isEmpty() || one.position().id().equals(of))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
        String position = chosen.position().id();
        String part = Optional.ofNullable(ctx.queryParam("part"))
                .filter(name -> build.part(position, name).isPresent())
                .or(() -> build.partFor(position).map(Part::name))
                .orElse("");
        pages.show(
                ctx,
                "measure/type.jte",
                opened.with(Map.of(
                        "all",
                        all,
                        "chosen",
                        chosen,
                        "part",
                        part,
                        "instruments",
                        chosen.dimensions().stream()
                                .collect(Collectors.toMap(
                                        Dimension::id, one -> LastUsed.of(build, one, Device.of(ctx)))))));
    }

    private static List<ToRead> all(Build build) {
        return build.structure().positions().stream()
                .map(position -> new ToRead(
                        position,
                        build.structure().dimensionsOf(position.id()).stream()
                                .filter(Dimension::isRead)
                                .toList()))
                .filter(one -> !one.dimensions().isEmpty())
                .toList();
    }
}
