package gudgeon.bench.web.page;

import gudgeon.bench.packed.Packed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;

/** Day or garage: a small style sheet that the person chooses for a device, over what the device says itself. */
public final class Light {
    private static final String COOKIE = "light";
    private static final String GARAGE = "/gudgeon/bench/web/assets/garage.css";
    private static final String DAY = ":root { color-scheme: light; }";

    private final Map<String, String> sheets;
    private final String asTheDeviceSays;

    /** Reads the garage's colours. */
    public Light() {
        // put in whole, not imported: a sheet that another imports is asked for late, so that a dark page first flashes
        // light
        String colours = Packed.text(GARAGE);
        sheets = Map.of("day", DAY, "garage", "@media screen {\n" + colours + "}\n");
        asTheDeviceSays = "@media screen and (prefers-color-scheme: dark) {\n" + colours + "}\n";
    }

    /** Opens its addresses. */
    public void on(RoutesConfig routes) {
        routes.get("/light.css", this::sheet);
        routes.post("/light", this::choose);
    }

    private void sheet(Context ctx) {
        String chosen = Cookies.brought(ctx, COOKIE);
        ctx.header("Cache-Control", "no-store");
        ctx.contentType("text/css").result(sheets.getOrDefault(chosen, asTheDeviceSays));
    }

    private void choose(Context ctx) {
        String asked = Optional.ofNullable(ctx.formParam("light")).orElse("");
        String light = sheets.containsKey(asked) ? asked : "device";
        Cookies.give(ctx, COOKIE, light);
        ctx.redirect(CameFrom.path(ctx), HttpStatus.SEE_OTHER);
    }
}
