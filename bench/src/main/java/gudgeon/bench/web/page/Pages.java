package gudgeon.bench.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gudgeon.bench.language.Localization;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;

/** Shows templates. */
public final class Pages {
    private static final String SHOWN = "gudgeon.shown";

    private final Languages languages;
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);

    public Pages(Languages languages) {
        this.languages = languages;
    }

    /**
     * Answers with a page.
     *
     * @param template name of the template
     * @param values what it shows, by the template's parameters
     */
    public void show(Context ctx, String template, Map<String, ?> values) {
        StringOutput output = new StringOutput(65_536);
        templates.render(template, Map.<String, Object>copyOf(values), output);
        ctx.attribute(SHOWN, true);
        ctx.html(localization(ctx).page(output.toString()));
    }

    /** What the answer to a request is read in. */
    public Localization localization(Context ctx) {
        return languages.localization(ctx);
    }

    /**
     * Answers with a sentence on what went wrong and what to do; the status is set by the caller. A script that sends an entry learns
     * whether it is refused, or only not taken now: it keeps that one and sends it again.
     */
    public void fault(Context ctx, String title, String sentence) {
        if (wantsData(ctx)) {
            boolean later = ctx.statusCode() == HttpStatus.SERVICE_UNAVAILABLE.getCode();
            ctx.attribute(SHOWN, true);
            ctx.json(Map.of(
                    "state",
                    later ? "later" : "refused",
                    "sentences",
                    List.of(localization(ctx).text(sentence)),
                    "seen",
                    0));
        } else {
            show(ctx, "fault.jte", Map.of("title", title, "sentence", sentence));
        }
    }

    /** Whether it is a script that asks, and wants no page. */
    public static boolean wantsData(Context ctx) {
        return String.valueOf(ctx.header("Accept")).contains("application/json");
    }

    /** Whether the request has been answered with a page. */
    public static boolean shown(Context ctx) {
        return ctx.attribute(SHOWN) != null;
    }
}
