package gudgeon.bench.web.engine;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.store.shelf.Outcome;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The engine book's text, changed in place with its faults beside it: {@code /builds/<id>/book}. */
public final class BookRoom {
    private final Pages pages;
    private final Builds builds;

    public BookRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/book", this::show);
        routes.post("/builds/{build}/book", this::change);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.ENGINE);
        page(ctx, opened, builds.shelf().bookText(opened.frame().id()), List.of());
    }

    private void change(Context ctx) {
        Opened opened = builds.open(ctx, Tab.ENGINE);
        String text = Optional.ofNullable(ctx.formParam("text")).orElse("").replace("\r\n", "\n");
        String why = Optional.ofNullable(ctx.formParam("why")).orElse("").strip();
        List<String> refusals = new ArrayList<>();
        if (new EngineBookReader().read(text) instanceof BookReading.Refused) {
            refusals.add("The book is not changed: it has the faults below. Your text is kept here until you leave.");
        }
        if (why.isEmpty()) {
            refusals.add("Write why the book is changed; the next owner will read it.");
        }
        if (refusals.isEmpty() && !"check".equals(ctx.formParam("act"))) {
            long seen = Optional.ofNullable(ctx.formParam("seen"))
                    .filter(number -> number.matches("\\d{1,9}"))
                    .map(Long::parseLong)
                    .orElse(opened.build().size());
            Outcome outcome = builds.shelf().changeBook(opened.frame().id(), text, why, Device.of(ctx), seen);
            if (outcome instanceof Outcome.Kept) {
                ctx.redirect(opened.frame().address(Tab.ENGINE), HttpStatus.SEE_OTHER);
                return;
            }
            refusals.addAll(outcome.sentences());
        }
        if ("check".equals(ctx.formParam("act"))) {
            refusals.clear();
        } else {
            ctx.status(422);
        }
        page(ctx, opened, text, refusals);
    }

    private void page(Context ctx, Opened opened, String text, List<String> refusals) {
        List<Fault> faults = new EngineBookReader().read(text).faults();
        pages.show(ctx, "engine/book.jte", opened.with(Map.of("text", text, "faults", faults, "refusals", refusals)));
    }
}
