package gudgeon.bench.web;

import gudgeon.bench.web.about.AboutRoom;
import gudgeon.bench.web.about.HandbookRoom;
import gudgeon.bench.web.assemble.AssembleRoom;
import gudgeon.bench.web.device.DeviceRoom;
import gudgeon.bench.web.device.EnterRoom;
import gudgeon.bench.web.device.Guard;
import gudgeon.bench.web.device.Network;
import gudgeon.bench.web.device.Reach;
import gudgeon.bench.web.engine.BookRoom;
import gudgeon.bench.web.engine.EngineRoom;
import gudgeon.bench.web.entry.EntryRoom;
import gudgeon.bench.web.fasten.FastenersRoom;
import gudgeon.bench.web.fasten.JointRoom;
import gudgeon.bench.web.find.FindRoom;
import gudgeon.bench.web.fit.FitRoom;
import gudgeon.bench.web.journal.JournalRoom;
import gudgeon.bench.web.lesson.LessonRoom;
import gudgeon.bench.web.measure.BoreRoom;
import gudgeon.bench.web.measure.InstrumentRoom;
import gudgeon.bench.web.measure.MeasureRoom;
import gudgeon.bench.web.measure.PaperRoom;
import gudgeon.bench.web.measure.WalkRoom;
import gudgeon.bench.web.options.OptionsRoom;
import gudgeon.bench.web.order.OrderRoom;
import gudgeon.bench.web.page.Assets;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Languages;
import gudgeon.bench.web.page.Light;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.PhotoRoom;
import gudgeon.bench.web.print.LabelRoom;
import gudgeon.bench.web.print.PrintRoom;
import gudgeon.bench.web.print.PrintsRoom;
import gudgeon.bench.web.record.RecordRoom;
import gudgeon.bench.web.shelf.ShelfRoom;
import gudgeon.bench.web.source.InspectRoom;
import gudgeon.bench.web.source.PartsRoom;
import gudgeon.bench.web.source.ScheduleRoom;
import gudgeon.bench.web.source.SheetRoom;
import gudgeon.bench.web.start.StartRoom;
import gudgeon.bench.web.strip.StripRoom;
import gudgeon.bench.web.timing.TimingRoom;
import gudgeon.bench.web.today.TodayRoom;
import gudgeon.bench.web.undo.UndoRoom;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.Geometry;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelfFault;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.staticfiles.Location;
import java.net.URI;
import java.time.Clock;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The running server. It listens on this machine's loopback address, and beyond it only where a network is given; it closes with
 * {@link #close}.
 */
public final class Bench implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Bench.class);

    private final Javalin server;
    private final Reach reach;

    private Bench(Javalin server, Reach reach) {
        this.server = server;
        this.reach = reach;
    }

    /**
     * Serves the builds on the shelf, and books whose fit can be tried.
     *
     * @param shelf the shelf; it stays the caller's to close
     * @param photos the photos of its builds
     * @param books the books served, each under its name
     * @param port the port, or 0 for any that is free
     * @throws io.javalin.util.JavalinBindException if the port is taken
     */
    public static Bench start(Shelf shelf, Photos photos, List<NamedBook> books, int port) {
        return start(shelf, photos, books, port, Optional.empty());
    }

    /** The same, on a network too. */
    public static Bench start(Shelf shelf, Photos photos, List<NamedBook> books, int port, Optional<Network> network) {
        return start(shelf, photos, books, port, network, Rates.USUAL);
    }

    static Bench start(
            Shelf shelf, Photos photos, List<NamedBook> books, int port, Optional<Network> network, Rates rates) {
        List<NamedBook> served = List.copyOf(books);
        Reach reach = new Reach(network);
        return new Bench(
                Javalin.create(config -> {
                            reach.on(config.jetty, port);
                            config.jetty.modifyServer(rates::on);
                            configure(config, new Builds(shelf, photos), served, reach);
                        })
                        .start(),
                reach);
    }

    /** Where the pages are for this machine. */
    public URI address() {
        return reach.laptop();
    }

    /** Where they are for other devices; none without a network. */
    public List<URI> addressesForOthers() {
        return reach.others();
    }

    /** Every address that is asked for with GET, as its pattern. */
    List<String> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(one -> one.endpoint)
                .filter(one -> one.method.equals(HandlerType.GET))
                .map(one -> one.path)
                .toList();
    }

    @Override
    public void close() {
        server.stop();
    }

    private static void configure(JavalinConfig config, Builds builds, List<NamedBook> books, Reach reach) {
        config.startup.showJavalinBanner = false;
        config.staticFiles.add(files -> {
            files.hostedPath = Assets.FOLDER;
            files.directory = "/gudgeon/bench/web/assets";
            files.location = Location.CLASSPATH;
            files.headers = Map.of("Cache-Control", Assets.KEPT);
        });
        config.http.maxRequestSize = Safeguards.LARGEST_WITH_FILE;
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        Languages languages = new Languages(builds);
        Pages pages = new Pages(languages);
        Clock clock = Clock.system(ZoneId.systemDefault());
        Alarms alarms = new Alarms();
        RoutesConfig routes = config.routes;
        Safeguards.on(routes);
        EnterRoom enter = new EnterRoom(pages, reach, clock);
        routes.before(new Guard(enter)::at);
        enter.on(routes);
        new DeviceRoom(pages, reach, clock).on(routes);
        new ThreeLibrary().on(routes);
        new Light().on(routes);
        languages.on(routes);
        new AboutRoom(pages).on(routes);
        new HandbookRoom(pages).on(routes);
        routes.get("/marks", ctx -> pages.show(ctx, "look/page.jte", Map.of()));
        new ShelfRoom(pages, builds.shelf(), books, alarms, clock).on(routes);
        new TodayRoom(pages, builds, alarms, clock).on(routes);
        new StripRoom(pages, builds).on(routes);
        new MeasureRoom(pages, builds).on(routes);
        new WalkRoom(pages, builds).on(routes);
        new BoreRoom(pages, builds).on(routes);
        new InstrumentRoom(pages, builds, clock).on(routes);
        new PaperRoom(pages, builds).on(routes);
        new FastenersRoom(pages, builds).on(routes);
        new PrintRoom(pages, builds).on(routes);
        new PrintsRoom(pages, builds, reach::others).on(routes);
        new LabelRoom(pages, builds, reach::others, clock).on(routes);
        new JointRoom(pages, builds).on(routes);
        new AssembleRoom(pages, builds, clock).on(routes);
        new PartsRoom(pages, builds, clock).on(routes);
        new InspectRoom(pages, builds, clock).on(routes);
        new ScheduleRoom(pages, builds, clock).on(routes);
        new SheetRoom(pages, builds, clock).on(routes);
        new UndoRoom(pages, builds).on(routes);
        new EngineRoom(pages, builds).on(routes);
        new OrderRoom(pages, builds).on(routes);
        new OptionsRoom(pages, builds).on(routes);
        new BookRoom(pages, builds).on(routes);
        new LessonRoom(pages, builds, clock).on(routes);
        new JournalRoom(pages, builds, clock.getZone()).on(routes);
        new StartRoom(pages, builds, alarms).on(routes);
        new FindRoom(pages, builds).on(routes);
        new TimingRoom(pages, builds).on(routes);
        new RecordRoom(pages, builds).on(routes);
        new PhotoRoom(builds).on(routes);
        new EntryRoom(pages, builds, clock).on(routes);
        Map<String, Geometry> byName = new LinkedHashMap<>();
        books.forEach(named -> byName.put(named.name(), named.book()));
        new FitRoom(pages, byName, builds).on(routes);
        faultsOn(config.routes, pages);
    }

    private static void faultsOn(RoutesConfig routes, Pages pages) {
        routes.exception(NotFoundResponse.class, (fault, ctx) -> sayNotHere(pages, ctx));
        routes.exception(HttpResponseException.class, (fault, ctx) -> {
            ctx.status(fault.getStatus());
            pages.fault(ctx, "That could not be done", String.valueOf(fault.getMessage()));
        });
        routes.exception(ShelfFault.class, (fault, ctx) -> {
            LOG.warn("While serving {}: {}", ctx.path(), fault.getMessage());
            ctx.status(503);
            pages.fault(ctx, "The data folder can't do that", fault.getMessage());
        });
        routes.exception(Exception.class, (fault, ctx) -> {
            LOG.error("While serving {}", ctx.path(), fault);
            ctx.status(500);
            pages.fault(
                    ctx,
                    "Something went wrong in Gudgeon",
                    "This page could not be made. The cause is written where Gudgeon was started. Go back, and try"
                            + " without the last change.");
        });
        routes.error(404, ctx -> {
            if (!Pages.shown(ctx)) {
                sayNotHere(pages, ctx);
            }
        });
    }

    private static void sayNotHere(Pages pages, Context ctx) {
        ctx.status(404);
        pages.fault(ctx, "There is no such page", "Nothing is served at this address. Start from the shelf.");
    }
}
