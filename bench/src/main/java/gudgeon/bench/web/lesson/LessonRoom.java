package gudgeon.bench.web.lesson;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.bench.web.shelf.Beginning;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.lesson.Difference;
import gudgeon.rebuild.lesson.Improved;
import gudgeon.rebuild.lesson.Lesson;
import gudgeon.rebuild.lesson.Manuscript;
import gudgeon.rebuild.lesson.NextTime;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Next time, the engine book given back improved: {@code /builds/<id>/lessons}. */
public final class LessonRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public LessonRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/lessons", ctx -> show(ctx, builds.open(ctx, Tab.ENGINE), "", List.of()));
        routes.get("/builds/{build}/lessons/book.yaml", this::download);
        routes.post("/builds/{build}/lessons/next", this::begin);
    }

    /**
     * A lesson as the page shows it.
     *
     * @param lesson which it is
     * @param differences what it changes in the lines of the book
     */
    public record Shown(Lesson lesson, List<Difference> differences) {
        public Shown {
            differences = List.copyOf(differences);
        }

        private static Shown of(Lesson lesson, Manuscript book) {
            return new Shown(
                    lesson,
                    lesson.amendments().stream()
                            .map(book::difference)
                            .filter(difference -> !difference.isNone())
                            .toList());
        }
    }

    private void show(Context ctx, Opened opened, String name, List<String> refusals) {
        NextTime next = NextTime.of(opened.build());
        String text = text(opened);
        Manuscript book = Manuscript.of(text);
        pages.show(
                ctx,
                "lesson/page.jte",
                opened.with(Map.of(
                        "next", next,
                        "lessons",
                                next.lessons().stream()
                                        .map(lesson -> Shown.of(lesson, book))
                                        .toList(),
                        "improved", Improved.of(text, next.accepted()),
                        "name", name,
                        "refusals", refusals)));
    }

    private String text(Opened opened) {
        return builds.shelf().bookText(opened.frame().id());
    }

    private Improved improved(Opened opened) {
        return Improved.of(text(opened), NextTime.of(opened.build()).accepted());
    }

    private void download(Context ctx) {
        Improved improved = improved(builds.open(ctx, Tab.ENGINE));
        ctx.contentType("text/yaml; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"engine-book.yaml\"")
                .result(improved.text());
    }

    private void begin(Context ctx) {
        Opened opened = builds.open(ctx, Tab.ENGINE);
        String name = Optional.ofNullable(ctx.formParam("name")).orElse("").strip();
        Found found = "in-pieces".equals(ctx.formParam("found")) ? Found.IN_PIECES : Found.TOGETHER;
        Improved improved = improved(opened);
        List<String> refusals = new ArrayList<>();
        Beginning.refusalOf(name).ifPresent(refusals::add);
        if (!improved.usable()) {
            refusals.add("The book can't be used with what is accepted. Leave out what brings the faults below.");
        }
        if (!refusals.isEmpty()) {
            ctx.status(422);
            show(ctx, opened, name, refusals);
            return;
        }
        String id = new Beginning(builds.shelf(), clock).of(name, improved.text(), found, Device.of(ctx));
        ctx.redirect("/builds/" + id, HttpStatus.SEE_OTHER);
    }
}
