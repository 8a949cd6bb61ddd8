package gudgeon.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import org.jspecify.annotations.Nullable;

/**
 * What keeps the pages to this machine: only requests addressed to the loopback by name are answered, so that a page from
 * elsewhere can't reach in by pointing its own name here, and the browser is told to load nothing from outside.
 */
final class Safeguards {
    private static final String POLICY = "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none';"
            + " form-action 'self'; frame-ancestors 'none'";

    private Safeguards() {}

    static void on(RoutesConfig routes) {
        routes.before(Safeguards::guard);
    }

    private static void guard(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cache-Control", "no-cache");
        if (!isLoopback(ctx.header("Host"))) {
            throw new ForbiddenResponse("Gudgeon answers this machine only, at 127.0.0.1 or localhost.");
        }
        String origin = ctx.header("Origin");
        if (!ctx.method().equals(HandlerType.GET) && origin != null && !isOwn(origin, ctx.header("Host"))) {
            throw new ForbiddenResponse("This was sent from a page that is not Gudgeon's, so it was not taken down.");
        }
    }

    /** Whether a page that sends something came from here; browsers always say where a page that posts came from. */
    static boolean isOwn(String origin, @Nullable String host) {
        return origin.equals("http://" + host);
    }

    static boolean isLoopback(@Nullable String host) {
        return host != null && host.matches("(127\\.0\\.0\\.1|localhost|\\[::1])(:\\d{1,5})?");
    }
}
