package gudgeon.bench.web.source;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.PartsList;
import gudgeon.rebuild.source.SellersLetter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What to buy, what is on its way, what is at the machinist's, and the money: {@code /builds/<id>/parts}. */
public final class PartsRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public PartsRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/parts", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        Build build = opened.build();
        LocalDate today = LocalDate.now(clock);
        PartsList list = PartsList.of(build, today);
        Map<String, SellersLetter> letters = new LinkedHashMap<>();
        list.arrivals()
                .orders()
                .forEach(
                        order -> SellersLetter.of(build, order, today).ifPresent(letter -> letters.put(order, letter)));
        pages.show(
                ctx,
                "source/page.jte",
                opened.with(Map.of(
                        "list", list, "groups", Group.of(list), "inspections", toInspect(build), "letters", letters)));
    }

    /** The parts in hand of which it is not known yet that they agree. */
    private static List<Inspection> toInspect(Build build) {
        return Inspection.all(build).stream()
                .filter(one -> one.outcome() != Inspection.Outcome.AGREES)
                .toList();
    }
}
