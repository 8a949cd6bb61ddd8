package gudgeon.bench.web;

import gudgeon.bench.web.fit.FitRoom;
import gudgeon.bench.web.page.Pages;
import gudgeon.rebuild.book.Geometry;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.staticfiles.Location;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The running server. It listens on this machine's loopback address only, and closes with {@link #close}. */
public final class Bench implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Bench.class);
    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin server;

    private Bench(Javalin server) {
        this.server = server;
    }

    /**
     * Serves the books.
     *
     * @param books the books served, each under its name
     * @param port the port, or 0 for any that is free
     * @throws io.javalin.util.JavalinBindException if the port is taken
     */
    public static Bench start(List<NamedBook> books, int port) {
        List<NamedBook> served = List.copyOf(books);
        return new Bench(Javalin.create(config -> configure(config, served)).start(LOOPBACK, port));
    }

    /** Where the pages are. */
    public URI address() {
        return URI.create("http://" + LOOPBACK + ":" + server.port() + "/");
    }

    @Override
    public void close() {
        server.stop();
    }

    private static void configure(JavalinConfig config, List<NamedBook> books) {
        config.startup.showJavalinBanner = false;
        config.staticFiles.add(files -> {
            files.hostedPath = "/assets";
            files.directory = "/gudgeon/bench/web/assets";
            files.location = Location.CLASSPATH;
        });
        Pages pages = new Pages();
        Safeguards.on(config.routes);
        new ThreeLibrary().on(config.routes);
        config.routes.get("/", ctx -> pages.show(ctx, "home.jte", Map.of("books", books)));
        Map<String, Geometry> byName = new LinkedHashMap<>();
        books.forEach(named -> byName.put(named.name(), named.book()));
        new FitRoom(pages, byName).on(config.routes);
        faultsOn(config.routes, pages);
    }

    private static void faultsOn(RoutesConfig routes, Pages pages) {
        routes.exception(NotFoundResponse.class, (fault, ctx) -> sayNotHere(pages, ctx));
        routes.exception(HttpResponseException.class, (fault, ctx) -> {
            ctx.status(fault.getStatus());
            pages.fault(ctx, "That could not be done", String.valueOf(fault.getMessage()));
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
        pages.fault(ctx, "There is no such page", "Nothing is served at this address. Start from the list of books.");
    }
}
