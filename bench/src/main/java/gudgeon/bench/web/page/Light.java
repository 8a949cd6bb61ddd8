package gudgeon.bench.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.Map;
import java.util.Optional;

/** Day or garage: a small style sheet that the person chooses for a device, over what the device says itself. */
public final class Light {
    private static final String COOKIE = "light";
    private static final int TEN_YEARS_S = 10 * 365 * 24 * 3600;
    private static final String GARAGE = "@import url(/assets/garage.css) screen";

    private static final Map<String, String> SHEETS =
            Map.of("day", ":root { color-scheme: light; }", "garage", GARAGE + ";");
    private static final String AS_THE_DEVICE_SAYS = GARAGE + " and (prefers-color-scheme: dark);";

    /** Opens its addresses. */
    public void on(RoutesConfig routes) {
        routes.get("/light.css", Light::sheet);
        routes.post("/light", Light::choose);
    }

    private static void sheet(Context ctx) {
        String chosen = Optional.ofNullable(ctx.cookie(COOKIE)).orElse("");
        ctx.header("Cache-Control", "no-store");
        ctx.contentType("text/css").result(SHEETS.getOrDefault(chosen, AS_THE_DEVICE_SAYS));
    }

    private static void choose(Context ctx) {
        String asked = Optional.ofNullable(ctx.formParam("light")).orElse("");
        String light = SHEETS.containsKey(asked) ? asked : "device";
        ctx.cookie(new Cookie(COOKIE, light, "/", TEN_YEARS_S, false, true, null, SameSite.STRICT));
        ctx.redirect(back(ctx), HttpStatus.SEE_OTHER);
    }

    /** The page it was chosen on, if the browser says which; only its path, so that no other place can be named. */
    private static String back(Context ctx) {
        String from = Optional.ofNullable(ctx.header("Referer")).orElse("");
        String path = from.replaceFirst("^https?://[^/]*", "");
        return path.startsWith("/") && !path.startsWith("//") ? path : "/";
    }
}
