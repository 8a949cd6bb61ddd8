package gudgeon.bench.web.source;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.source.PartsList;
import gudgeon.store.source.PartsFile;
import gudgeon.store.source.PartsTable;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The parts list for a spreadsheet: {@code /builds/<id>/parts/list.csv}, and what one sends back: {@code POST
 * /builds/<id>/parts/file}, shown before anything is kept.
 */
public final class SheetRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public SheetRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/parts/list.csv", this::download);
        routes.post("/builds/{build}/parts/file", this::read);
    }

    private void download(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"parts.csv\"")
                .result(PartsTable.text(PartsList.of(opened.build(), LocalDate.now(clock))));
    }

    private void read(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        PartsFile file = PartsFile.of(opened.build(), content(ctx));
        List<String> told = file.facts().stream()
                .map(fact -> Telling.of(fact, opened.build().structure()))
                .toList();
        ctx.status(file.facts().isEmpty() && !file.faults().isEmpty() ? 422 : 200);
        pages.show(ctx, "source/file.jte", opened.with(Map.of("file", file, "told", told)));
    }

    /** The file sent, or one byte more than is read of one that is too large. */
    private static byte[] content(Context ctx) {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile("file") : null;
        if (file == null) {
            return new byte[0];
        }
        try (InputStream content = file.content()) {
            return content.readNBytes(PartsFile.LARGEST + 1);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
