package gudgeon.bench.web.record;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.rebuild.record.Wish;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** The record of a build, asked for and fetched: {@code /builds/<id>/record}. */
public final class RecordRoom {
    private final Pages pages;
    private final Builds builds;
    private final Records records;

    public RecordRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
        records = new Records(builds.photos());
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/record", this::show);
        routes.post("/builds/{build}/record", this::begin);
        routes.get("/builds/{build}/record/file", this::fetch);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.RECORD);
        pages.show(
                ctx,
                "record/page.jte",
                opened.with(Map.of("making", records.of(opened.frame().id()), "record", record(opened, Wish.USUAL))));
    }

    private BuildRecord record(Opened opened, Wish wish) {
        String id = opened.frame().id();
        return BuildRecord.of(
                opened.build(),
                opened.frame().name(),
                builds.shelf().lastHash(id).orElse(""),
                wish);
    }

    private void begin(Context ctx) {
        Opened opened = builds.open(ctx, Tab.RECORD);
        Wish wish = new Wish(ctx.formParam("prices") != null, ctx.formParam("people") != null);
        Making.Kind kind = "page".equals(ctx.formParam("kind")) ? Making.Kind.PAGE : Making.Kind.PDF;
        records.begin(opened.frame().id(), record(opened, wish), kind, pages.localization(ctx));
        ctx.redirect(opened.frame().self(), HttpStatus.SEE_OTHER);
    }

    private void fetch(Context ctx) {
        Opened opened = builds.open(ctx, Tab.RECORD);
        Making making = records.of(opened.frame().id()).orElseThrow(NotFoundResponse::new);
        Path file = making.file().orElseThrow(NotFoundResponse::new);
        String name = "record-" + opened.frame().id() + "." + making.kind().ending();
        try {
            ctx.contentType(making.kind().mediaType())
                    .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                    .result(Files.newInputStream(file));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
