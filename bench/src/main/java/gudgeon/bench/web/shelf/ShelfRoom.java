package gudgeon.bench.web.shelf;

import gudgeon.bench.web.NamedBook;
import gudgeon.bench.web.device.Reach;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.plan.Plan;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelfFault;
import gudgeon.store.shelf.ShelvedBuild;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All builds, where each stands, and the form that starts one: {@code /}. */
public final class ShelfRoom {
    /** Each build shown is folded, planned and looked over for alarms, so a shelf of a thousand is shown in pages. */
    private static final int A_PAGE = 25;

    private final Pages pages;
    private final Shelf shelf;
    private final List<NamedBook> books;
    private final Alarms alarms;
    private final Clock clock;

    /**
     * The room.
     *
     * @param books books whose fit can be tried without a build
     */
    public ShelfRoom(Pages pages, Shelf shelf, List<NamedBook> books, Alarms alarms, Clock clock) {
        this.alarms = alarms;
        this.pages = pages;
        this.shelf = shelf;
        this.books = List.copyOf(books);
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/", ctx -> show(ctx, "", List.of()));
        routes.post("/builds", this::start);
    }

    /**
     * A build as the shelf shows it.
     *
     * @param shelved which it is
     * @param stands where it stands, or what is wrong with it and what to do: a sentence
     * @param alarms how many alarms stand
     * @param damaged whether it can't be opened
     */
    public record Line(ShelvedBuild shelved, String stands, int alarms, boolean damaged) {}

    private void show(Context ctx, String name, List<String> refusals) {
        List<ShelvedBuild> all = shelf.builds();
        String searched = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        List<ShelvedBuild> found = all.stream()
                .filter(build -> build.name().toLowerCase(Locale.ROOT).contains(searched.toLowerCase(Locale.ROOT)))
                .toList();
        int from = Optional.ofNullable(ctx.queryParam("from"))
                .filter(text -> text.matches("\\d{1,7}"))
                .map(Integer::parseInt)
                .filter(number -> number < found.size())
                .orElse(0);
        List<Line> lines = found.stream()
                .skip(from)
                .limit(A_PAGE)
                .flatMap(shelved -> line(shelved).stream())
                .toList();
        pages.show(
                ctx,
                "shelf/page.jte",
                Map.of(
                        "lines",
                        lines,
                        "searched",
                        searched,
                        "searchable",
                        all.size() > A_PAGE,
                        "next",
                        from + A_PAGE < found.size() ? from + A_PAGE : 0,
                        "archetypes",
                        List.of(Archetype.values()),
                        "books",
                        books,
                        "name",
                        name,
                        "laptop",
                        Reach.isLaptop(ctx),
                        "backupFault",
                        shelf.backupFault(),
                        "refusals",
                        refusals));
    }

    /** A build that is damaged says so, and keeps the others from nothing. */
    private Optional<Line> line(ShelvedBuild shelved) {
        try {
            return shelf.build(shelved.id())
                    .map(build -> new Line(
                            shelved, stands(build), alarms.standing(build).size(), false));
        } catch (ShelfFault damaged) {
            return Optional.of(new Line(shelved, damaged.getMessage(), 0, true));
        }
    }

    private String stands(Build build) {
        return Plan.of(build, clock.instant()).progress().sentence();
    }

    private void start(Context ctx) {
        String name = Optional.ofNullable(ctx.formParam("name")).orElse("").strip();
        List<String> refusals = new ArrayList<>();
        Beginning.refusalOf(name).ifPresent(refusals::add);
        String book = bookText(ctx, refusals);
        if (!book.isEmpty() && new EngineBookReader().read(book) instanceof BookReading.Refused refused) {
            refusals.add("The engine book can't be used yet:");
            refused.faults().stream().map(Fault::sentence).forEach(refusals::add);
        }
        if (!refusals.isEmpty()) {
            ctx.status(422);
            show(ctx, name, refusals);
            return;
        }
        Found found = "in-pieces".equals(ctx.formParam("found")) ? Found.IN_PIECES : Found.TOGETHER;
        String id = new Beginning(shelf, clock).of(name, book, found, Device.of(ctx));
        ctx.redirect("/builds/" + id, HttpStatus.SEE_OTHER);
    }

    private static String bookText(Context ctx, List<String> refusals) {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile("book") : null;
        if (file != null && file.size() > 0) {
            try (InputStream content = file.content()) {
                return new String(content.readNBytes(1 << 20), StandardCharsets.UTF_8);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
        Optional<Archetype> archetype = Archetype.of(String.valueOf(ctx.formParam("archetype")));
        if (archetype.isEmpty()) {
            refusals.add("Choose an archetype, or an engine book of your own.");
        }
        return archetype.map(Archetype::text).orElse("");
    }
}
