package gudgeon.bench.web.about;

import gudgeon.bench.about.Edition;
import gudgeon.bench.web.page.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** What this edition is, what is new in it and what it is built on: {@code /about}. */
public final class AboutRoom {
    private final Pages pages;

    public AboutRoom(Pages pages) {
        this.pages = pages;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/about", this::show);
    }

    private void show(Context ctx) {
        pages.show(
                ctx,
                "about/page.jte",
                Map.of(
                        "version",
                        Edition.version(),
                        "changes",
                        Markdown.of(Edition.changes()).content(),
                        "libraries",
                        Edition.libraries()));
    }
}
