package gudgeon.bench.web.fasten;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Photographs;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Allocation;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.PileKind;
import gudgeon.rebuild.fasten.SheetOfPaper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A joint with its map, {@code /builds/<id>/fasteners/joint/<joint>}, and how the map is made: {@code .../map}. */
public final class JointRoom {
    private static final int USUAL_HOLES = 4;
    private static final int MOST_HOLES = 60;

    private final Pages pages;
    private final Builds builds;

    public JointRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/fasteners/joint/{joint}", this::show);
        routes.get("/builds/{build}/fasteners/joint/{joint}/map", this::map);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        Build build = opened.build();
        JointNow joint = joint(ctx, build);
        JointView view = JointView.of(build, joint);
        String hole = view.shown(Optional.ofNullable(ctx.queryParam("hole")).orElse(""));
        pages.show(
                ctx,
                "fasten/joint.jte",
                opened.with(Map.of(
                        "view",
                        view,
                        "hole",
                        hole,
                        "heap",
                        Heap.of(build),
                        "allocation",
                        Allocation.of(List.of(joint), PileKind.of(build)),
                        "lubrications",
                        List.of(Lubrication.values()))));
    }

    private void map(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        JointNow joint = joint(ctx, opened.build());
        Photographs photos = new Photographs(opened.build(), opened.frame());
        Optional<String> photo = Optional.ofNullable(ctx.queryParam("photo"))
                .filter(hash -> photos.of(joint.id()).stream()
                        .anyMatch(one -> one.photo().equals(hash)));
        pages.show(
                ctx,
                "fasten/map.jte",
                opened.with(Map.of(
                        "joint",
                        joint,
                        "photos",
                        photos,
                        "photo",
                        photo,
                        "sheets",
                        SheetOfPaper.usual(),
                        "holes",
                        holes(
                                joint,
                                ctx.queryParamAsClass("holes", Integer.class)
                                        .getOrDefault(joint.holes().size())))));
    }

    /** The names of the holes to be mapped; where the book has none, as many as asked for. */
    private static List<String> holes(JointNow joint, int asked) {
        List<String> known = joint.holes().stream().map(HoleNow::id).toList();
        int least = known.isEmpty() ? USUAL_HOLES : known.size();
        int wanted = joint.book().holes().isEmpty() ? Math.min(MOST_HOLES, Math.max(asked, least)) : known.size();
        return Stream.concat(
                        known.stream(),
                        IntStream.rangeClosed(1, wanted).mapToObj(n -> "h" + n).filter(id -> !known.contains(id)))
                .limit(wanted)
                .toList();
    }

    private static JointNow joint(Context ctx, Build build) {
        return JointNow.of(build, ctx.pathParam("joint")).orElseThrow(NotFoundResponse::new);
    }
}
