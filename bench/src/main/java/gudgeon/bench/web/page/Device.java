package gudgeon.bench.web.page;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** Which device a request comes from: a name it is given once and brings back, so that the journal can say who ticked what. */
public final class Device {
    private static final String COOKIE = "device";
    private static final String LET_IN = "gudgeon.device";

    private Device() {}

    /** Says which device a request comes from, by the name under which it was let in. */
    public static void is(Context ctx, String name) {
        ctx.attribute(LET_IN, name);
    }

    /** What kind of device the browser says it is. */
    public static String kind(Context ctx) {
        return kind(Optional.ofNullable(ctx.userAgent()).orElse("").toLowerCase(Locale.ROOT));
    }

    /** The device's name: the one under which it was let in, else one that a browser on the laptop is given. */
    public static String of(Context ctx) {
        String letIn = ctx.attribute(LET_IN);
        if (letIn != null) {
            return letIn;
        }
        String brought = Cookies.brought(ctx, COOKIE);
        if (brought.matches("[a-z]{1,12}-[0-9a-f]{4}")) {
            return brought;
        }
        String name = kind(ctx) + "-" + UUID.randomUUID().toString().substring(0, 4);
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
