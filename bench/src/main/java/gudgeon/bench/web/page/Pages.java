package gudgeon.bench.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gudgeon.bench.language.Edition;
import io.javalin.http.Context;
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
        ctx.html(edition(ctx).page(output.toString()));
    }

    /** What the answer to a request is read in. */
    public Edition edition(Context ctx) {
        return languages.edition(ctx);
    }

    /** Answers with a sentence on what went wrong and what to do; the status is set by the caller. */
    public void fault(Context ctx, String title, String sentence) {
        show(ctx, "fault.jte", Map.of("title", title, "sentence", sentence));
    }

    /** Whether the request has been answered with a page. */
    public static boolean shown(Context ctx) {
        return ctx.attribute(SHOWN) != null;
    }
}
