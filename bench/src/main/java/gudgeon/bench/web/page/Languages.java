package gudgeon.bench.web.page;

import gudgeon.bench.language.Language;
import gudgeon.bench.language.Localization;
import gudgeon.bench.language.OwnTexts;
import gudgeon.rebuild.build.Build;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The language that a device reads in: the one chosen on it, else the one its browser asks for. */
public final class Languages {
    private static final String COOKIE = "language";

    private final Builds builds;
    private final Map<Language, Localization> common = new ConcurrentHashMap<>();
    private final Map<String, InBuild> byBuild = new ConcurrentHashMap<>();

    /** The texts of a build, and the localizations that leave them alone. */
    private record InBuild(OwnTexts own, Map<Language, Localization> localizations) {}

    public Languages(Builds builds) {
        this.builds = builds;
    }

    /** Opens its address. */
    public void on(RoutesConfig routes) {
        routes.post("/language", ctx -> {
            Cookies.give(
                    ctx,
                    COOKIE,
                    Optional.ofNullable(ctx.formParam("language"))
                            .flatMap(Language::tagged)
                            .map(Language::tag)
                            .orElse(""));
            ctx.redirect(CameFrom.path(ctx), HttpStatus.SEE_OTHER);
        });
    }

    /** What answers of this request are read in. */
    public Localization localization(Context ctx) {
        Language language = Language.tagged(Cookies.brought(ctx, COOKIE))
                .orElseGet(() -> Language.accepted(
                        Optional.ofNullable(ctx.header("Accept-Language")).orElse("")));
        if (language == Language.ENGLISH) {
            return Localization.ENGLISH;
        }
        return Optional.ofNullable(ctx.pathParamMap().get("build"))
                .flatMap(id -> builds.shelf().build(id).map(build -> of(id, build, language)))
                .orElseGet(() -> common.computeIfAbsent(language, other -> Localization.in(other, Set.of())));
    }

    private Localization of(String id, Build build, Language language) {
        InBuild in = byBuild.computeIfAbsent(id, one -> new InBuild(new OwnTexts(), new ConcurrentHashMap<>()));
        if (in.own().seen() < build.size()) {
            in.own().book(builds.shelf().bookText(id));
            builds.shelf().name(id).ifPresent(in.own()::name);
            in.own().entries(build.entries());
        }
        return in.localizations()
                .computeIfAbsent(
                        language, other -> Localization.in(other, in.own().texts()));
    }
}
