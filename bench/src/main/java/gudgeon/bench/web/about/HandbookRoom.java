package gudgeon.bench.web.about;

import gudgeon.bench.about.Handbook;
import gudgeon.bench.language.Language;
import gudgeon.bench.web.page.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;

/** The handbook inside the program, so that it can be read where there is no network: {@code /handbook}. */
public final class HandbookRoom {
    private final Pages pages;

    public HandbookRoom(Pages pages) {
        this.pages = pages;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/handbook", ctx -> show(ctx, Handbook.FIRST));
        routes.get("/handbook/{page}", ctx -> show(ctx, ctx.pathParam("page")));
        routes.get("/handbook/images/{picture}", HandbookRoom::picture);
    }

    private void show(Context ctx, String page) {
        Language language = pages.localization(ctx).language();
        Markdown text = Markdown.of(Handbook.page(language, page).orElseThrow(NotFoundResponse::new));
        String title = text.title();
        pages.show(
                ctx,
                "about/handbook.jte",
                Map.of("title", title, "first", page.equals(Handbook.FIRST), "text", text.content()));
    }

    private static void picture(Context ctx) {
        ctx.contentType("image/png")
                .result(Handbook.picture(ctx.pathParam("picture")).orElseThrow(NotFoundResponse::new));
    }
}
