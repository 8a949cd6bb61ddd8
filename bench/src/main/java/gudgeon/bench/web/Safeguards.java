package gudgeon.bench.web;

import gudgeon.bench.web.device.Reach;
import io.javalin.config.RoutesConfig;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What every request goes through first: it must be addressed to this server by its own address, so that a page from elsewhere can't
 * reach in by pointing its own name here; what is sent must come from a page of this server; it must say how long it is and not be
 * too long; and the browser is told to load and run nothing but what this server has in files of its own.
 */
final class Safeguards {
    /** A photo of a good camera, and the form around it. */
    static final long LARGEST_WITH_FILE = 30L * 1024 * 1024;
    /** An engine book of the largest size, every letter of it escaped. */
    static final long LARGEST_FORM = 4L * 1024 * 1024;

    private static final String POLICY = "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none';"
            + " form-action 'self'; frame-ancestors 'none'";
    private static final Set<String> OWN_PAGES = Set.of("same-origin", "none");

    private Safeguards() {}

    static void on(RoutesConfig routes) {
        routes.before(Safeguards::guard);
    }

    private static void guard(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("X-Frame-Options", "DENY");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        ctx.header("Cache-Control", "no-cache");
        String host = ctx.header("Host");
        if (!(Reach.isLaptop(ctx) ? isLoopback(host) : isServed(ctx, host))) {
            throw new ForbiddenResponse(
                    "Gudgeon answers at its own addresses only: on this machine at 127.0.0.1 or localhost, and on the"
                            + " network, if it serves that, at the addresses it prints when it starts.");
        }
        String origin = ctx.header("Origin");
        if ((origin != null && !isOwn(origin, ctx.scheme(), host)) || isSentFromElsewhere(ctx)) {
            throw new ForbiddenResponse("This was sent from a page that is not Gudgeon's, so it was not taken down.");
        }
        measure(ctx);
    }

    /** Browsers that say so say where a page that sends came from, whatever else they leave out. */
    private static boolean isSentFromElsewhere(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        return !ctx.method().equals(HandlerType.GET) && site != null && !OWN_PAGES.contains(site);
    }

    private static void measure(Context ctx) {
        if (ctx.header("Transfer-Encoding") != null) {
            throw new HttpResponseException(
                    HttpStatus.LENGTH_REQUIRED.getCode(),
                    "This was sent without saying how long it is, which no page of Gudgeon does.");
        }
        long most = ctx.isMultipartFormData() ? LARGEST_WITH_FILE : LARGEST_FORM;
        if (ctx.req().getContentLengthLong() > most) {
            throw new ContentTooLargeResponse("What was sent is too large: more than " + (most >> 20)
                    + " MB. Send a smaller photo, or a shorter text.");
        }
    }

    /** Whether a page that sends something came from here; browsers always say where a page that posts came from. */
    static boolean isOwn(String origin, String scheme, @Nullable String host) {
        return origin.equals(scheme + "://" + host);
    }

    static boolean isLoopback(@Nullable String host) {
        return host != null && host.matches("(127\\.0\\.0\\.1|localhost|\\[::1])(:\\d{1,5})?");
    }

    /** Whether it is the very address at which the request came in. */
    private static boolean isServed(Context ctx, @Nullable String host) {
        String address = ctx.req().getLocalAddr();
        int port = ctx.req().getLocalPort();
        boolean usual = port == (ctx.scheme().equals("https") ? 443 : 80);
        return (address + ":" + port).equals(host) || (usual && address.equals(host));
    }
}
