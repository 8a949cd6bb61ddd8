package gudgeon.bench.web.page;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;

/** What a device is given to keep, and brings back with each request; no other site's page can send it. */
public final class Cookies {
    private static final int TEN_YEARS_S = 10 * 365 * 24 * 3600;

    private Cookies() {}

    /** What the device brought; empty if nothing. */
    public static String brought(Context ctx, String name) {
        return Optional.ofNullable(ctx.cookie(name)).orElse("");
    }

    /** Gives the device something to keep under a name; out of a script's reach, and over an encrypted line only by such. */
    public static void give(Context ctx, String name, String value) {
        ctx.cookie(new Cookie(name, value, "/", TEN_YEARS_S, ctx.req().isSecure(), true, null, SameSite.STRICT));
    }
}
