package gudgeon.bench.web.page;

import io.javalin.http.Context;
import java.util.Optional;

/** The page on which something was chosen that goes for every page. */
final class CameFrom {
    private CameFrom() {}

    /** Its path, if the browser says which; no more than the path, so that no other place can be named. */
    static String path(Context ctx) {
        String from = Optional.ofNullable(ctx.header("Referer")).orElse("");
        String path = from.replaceFirst("^https?://[^/]*", "");
        return path.startsWith("/") && !path.startsWith("//") ? path : "/";
    }
}
