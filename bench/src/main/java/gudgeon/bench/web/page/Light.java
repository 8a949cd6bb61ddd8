package gudgeon.bench.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/** Day or garage: a small style sheet that the person chooses for a device, over what the device says itself. */
public final class Light {
    private static final String COOKIE = "light";
    private static final int TEN_YEARS_S = 10 * 365 * 24 * 3600;
    private static final String FOLDER = "/gudgeon/bench/web/assets/";

    private final Map<String, String> sheets = Map.of("day", read("day.css"), "garage", read("garage.css"));

    /** Opens its addresses. */
    public void on(RoutesConfig routes) {
        routes.get("/light.css", this::sheet);
        routes.post("/light", Light::choose);
    }

    private void sheet(Context ctx) {
        String chosen = Optional.ofNullable(ctx.cookie(COOKIE)).orElse("");
        ctx.header("Cache-Control", "no-store");
        ctx.contentType("text/css").result(sheets.getOrDefault(chosen, ""));
    }

    private static void choose(Context ctx) {
        String asked = Optional.ofNullable(ctx.formParam("light")).orElse("");
        String light = asked.equals("day") || asked.equals("garage") ? asked : "device";
        ctx.cookie(new Cookie(COOKIE, light, "/", TEN_YEARS_S, false, true, null, SameSite.STRICT));
        ctx.redirect(back(ctx), HttpStatus.SEE_OTHER);
    }

    /** The page it was chosen on, if the browser says which; only its path, so that no other place can be named. */
    private static String back(Context ctx) {
        String from = Optional.ofNullable(ctx.header("Referer")).orElse("");
        String path = from.replaceFirst("^https?://[^/]*", "");
        return path.startsWith("/") && !path.startsWith("//") ? path : "/";
    }

    private static String read(String name) {
        try (InputStream stream = Light.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new IllegalStateException("the style sheet " + name + " is not on the class path");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
