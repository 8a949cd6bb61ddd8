package gudgeon.bench.web.strip;

import gudgeon.bench.web.fasten.JointView;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Photographs;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.plan.Off;
import gudgeon.rebuild.plan.TakingDown;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The take-down record: {@code /builds/<id>/strip}. */
public final class StripRoom {
    private final Pages pages;
    private final Builds builds;

    public StripRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/strip", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.STRIP);
        Build build = opened.build();
        List<Off> next = TakingDown.of(build).next();
        Optional<Position> chosen = chosen(build, next, ctx.queryParam("at"));
        String searched = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        pages.show(
                ctx,
                "strip/page.jte",
                opened.with(Map.of(
                        "next",
                        next,
                        "missing",
                        TakingDown.missing(build),
                        "chosen",
                        chosen,
                        "joints",
                        chosen.flatMap(position -> build.structure().stepFitting(position.id()))
                                .map(step -> JointView.of(build, step))
                                .orElse(List.of()),
                        "bag",
                        Optional.ofNullable(ctx.queryParam("bag"))
                                .filter(bag -> !bag.isBlank())
                                .orElseGet(() -> TakingDown.suggestedBag(build)),
                        "searched",
                        searched,
                        "off",
                        off(build, searched),
                        "photos",
                        new Photographs(build, opened.frame()))));
    }

    /** The position asked for, else the next to come off; any may be recorded, also one found loose in a box. */
    private static Optional<Position> chosen(Build build, List<Off> next, @Nullable String asked) {
        return Optional.ofNullable(asked)
                .or(() -> next.stream().map(Off::position).findFirst())
                .flatMap(id -> build.structure().position(id));
    }

    /** What came off, the newest first, that holds what is searched for. */
    private static List<TakenOff> off(Build build, String searched) {
        String wanted = searched.toLowerCase(Locale.ROOT);
        return build.structure().positions().stream()
                .flatMap(position -> build.place(position.id()).off().stream())
                .filter(off -> (build.structure().name(off.position()) + " " + off.bag() + " " + off.place() + " "
                                + off.remark())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
                .sorted(Comparator.comparingLong((TakenOff off) -> -build.lastAbout(off.position())))
                .toList();
    }
}
