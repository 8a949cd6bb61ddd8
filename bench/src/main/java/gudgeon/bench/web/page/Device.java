package gudgeon.bench.web.page;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** Which device a request comes from: a name it is given once and brings back, so that the journal can say who ticked what. */
public final class Device {
    private static final String COOKIE = "device";

    private Device() {}

    /** The device's name; a new device is given one. */
    public static String of(Context ctx) {
        String brought = Cookies.brought(ctx, COOKIE);
        if (brought.matches("[a-z]{1,12}-[0-9a-f]{4}")) {
            return brought;
        }
        String name = kind(Optional.ofNullable(ctx.userAgent()).orElse("").toLowerCase(Locale.ROOT)) + "-"
                + UUID.randomUUID().toString().substring(0, 4);
        Cookies.give(ctx, COOKIE, name);
        return name;
    }

    private static String kind(String agent) {
        if (agent.contains("ipad") || agent.contains("tablet")) {
            return "tablet";
        }
        return agent.contains("mobile") || agent.contains("iphone") ? "phone" : "laptop";
    }
}
