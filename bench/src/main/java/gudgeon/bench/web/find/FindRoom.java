package gudgeon.bench.web.find;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.find.Hunt;
import gudgeon.rebuild.find.Ranking;
import gudgeon.rebuild.find.Sealing;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.LeakPath;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.journal.Trouble;
import gudgeon.rebuild.valvework.SeatSaving;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.LongStream;

/** The searches for faults, {@code /builds/<id>/fault}, and one of them, {@code .../fault/<search>}. */
public final class FindRoom {
    private final Pages pages;
    private final Builds builds;

    public FindRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/fault", this::all);
        routes.get("/builds/{build}/fault/{hunt}", this::one);
    }

    /**
     * A trouble that can be looked into.
     *
     * @param hunt name of a new search for it
     */
    public record Offer(Trouble trouble, String hunt) {
        /** Its name in a form. */
        public String key() {
            return trouble.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * An entry in words.
     *
     * @param number its number
     */
    public record Line(long number, String sentence) {}

    private void all(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FAULT);
        Build build = opened.build();
        List<Hunt> hunts = Hunt.all(build);
        pages.show(
                ctx,
                "find/page.jte",
                opened.with(Map.of(
                        "hunts", hunts,
                        "offers",
                                Arrays.stream(Trouble.values())
                                        .map(one -> offer(one, hunts))
                                        .toList(),
                        "readings", readings(build),
                        "sealing", Sealing.of(build).sentences(),
                        "seats", SeatSaving.all(build),
                        "paths", List.of(LeakPath.values()))));
    }

    private static Offer offer(Trouble trouble, List<Hunt> hunts) {
        String key = new Offer(trouble, "").key();
        int number = 1;
        while (true) {
            String name = key + "-" + number;
            if (hunts.stream().noneMatch(hunt -> hunt.id().equals(name))) {
                return new Offer(trouble, name);
            }
            number++;
        }
    }

    /** What was read of how it seals, in the order of the journal. */
    private static List<Line> readings(Build build) {
        return LongStream.rangeClosed(1, build.size())
                .boxed()
                .flatMap(number -> build
                        .fact(number)
                        .filter(Finding.OfSealing.class::isInstance)
                        .map(fact -> new Line(number, Telling.of(fact, build.structure())))
                        .stream())
                .toList();
    }

    private void one(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FAULT);
        Hunt hunt = Hunt.of(opened.build(), ctx.pathParam("hunt")).orElseThrow(NotFoundResponse::new);
        pages.show(
                ctx, "find/hunt.jte", opened.with(Map.of("hunt", hunt, "ranking", Ranking.of(opened.build(), hunt))));
    }
}
