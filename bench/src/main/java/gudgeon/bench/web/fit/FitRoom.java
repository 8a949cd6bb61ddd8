package gudgeon.bench.web.fit;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.mechanics.clearance.Curves;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.compare.Comparison;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.Simulation;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The room where parts are tried before they go in: {@code /books/<name>/fit} and {@code /builds/<id>/fit}. */
public final class FitRoom {
    /** Fine enough for a plot a finger's breadth wide for each ten degrees, and quick to work out. */
    private static final double PLOT_STEP_DEG = 2;

    private static final Set<GapKind> TO_CROWN = EnumSet.of(GapKind.BORE, GapKind.VALVE, GapKind.NEAREST, GapKind.SIDE);
    private static final long SEED = 20_240_229;
    private static final int GREATEST_DRAWS = 50_000;

    private final Pages pages;
    private final Map<String, Geometry> books;
    private final Builds builds;
    private final Drawing drawing = new Drawing();

    /** The room for the books served, each under its name, and for the builds on the shelf with their parts as measured. */
    public FitRoom(Pages pages, Map<String, Geometry> books, Builds builds) {
        this.pages = pages;
        this.books = Map.copyOf(books);
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/books/{book}/fit", this::ofBook);
        routes.get("/builds/{build}/fit", this::ofBuild);
    }

    private void ofBook(Context ctx) {
        Geometry book = Optional.ofNullable(books.get(ctx.pathParam("book"))).orElseThrow(NotFoundResponse::new);
        show(ctx, book, Map.of());
    }

    /** The fit of a build: its book's figures with what was measured on its parts laid over them. */
    private void ofBuild(Context ctx) {
        Opened opened = builds.open(ctx, Tab.TODAY);
        AsMeasured measured = AsMeasured.of(opened.build()).orElseThrow(NotFoundResponse::new);
        Optional<String> piston = measured.choice().pistonId();
        if (ctx.queryString() == null && piston.isPresent()) {
            String gasket = measured.choice()
                    .gasketId()
                    .map(id -> "&gasket=" + URLEncoder.encode(id, StandardCharsets.UTF_8))
                    .orElse("");
            ctx.redirect(ctx.path() + "?piston=" + URLEncoder.encode(piston.get(), StandardCharsets.UTF_8) + gasket);
            return;
        }
        show(ctx, measured.geometry(), Map.of("frame", opened.frame()));
    }

    private void show(Context ctx, Geometry book, Map<String, ?> around) {
        Asked asked = Asked.of(book, ctx.queryParamMap());
        // a page that changes in place asks for the verdict first and for the cures after it
        boolean curesLater = ctx.queryParam("cures") != null;
        Map<String, Object> values = new HashMap<>(around);
        values.put("page", page(ctx.path(), book, asked, curesLater));
        pages.show(ctx, "fit/page.jte", values);
    }

    private FitPage page(String address, Geometry book, Asked asked, boolean curesLater) {
        List<SizeGroup> groups = SizeGroup.of(book, asked);
        try {
            return new FitPage(address, book, asked, groups, Optional.of(found(book, asked, curesLater)), List.of());
        } catch (UnknownChoice refused) {
            return new FitPage(address, book, asked, groups, Optional.empty(), refused.sentences());
        }
    }

    private FitPage.Found found(Geometry book, Asked asked, boolean curesLater) {
        TrialFit fit = curesLater
                ? TrialFit.withoutCures(book, asked.choice(), asked.lengths().unit())
                : TrialFit.of(book, asked.choice(), asked.lengths().unit());
        Curves curves = fit.curves(PLOT_STEP_DEG);
        return new FitPage.Found(
                fit,
                curesLater && !fit.allClear(),
                GapPlot.of(fit, curves, asked.lengths()),
                drawing.json(fit, curves, asked.lengths()),
                asked.atDeg().orElseGet(() -> firstDeg(fit)),
                asked.settle() ? settled(book, asked, fit) : Optional.empty(),
                compared(book, asked));
    }

    /** Where the cursor stands at first: where a valve comes worst to the crown. */
    private static double firstDeg(TrialFit fit) {
        return fit.findings().stream()
                .filter(finding -> finding.kind() == GapKind.BORE)
                .min(Comparator.comparingDouble(finding -> finding.gap().leastMm() - finding.wantedMm()))
                .map(finding -> finding.gap().atDeg())
                .orElse(0.0);
    }

    private static Optional<Comparison> compared(Geometry book, Asked asked) {
        boolean wanted = !asked.otherId().isEmpty() && !asked.otherId().equals(asked.pistonId());
        return wanted
                ? Optional.of(Comparison.of(
                        book.with(asked.choice().changed()),
                        asked.pistonId(),
                        asked.otherId(),
                        asked.choice(),
                        asked.lengths().unit()))
                : Optional.empty();
    }

    private static Optional<Simulation> settled(Geometry book, Asked asked, TrialFit fit) {
        return fit.worst()
                .filter(worst -> TO_CROWN.contains(worst.kind()))
                .map(worst -> TrialFit.simulate(
                        book,
                        asked.choice(),
                        asked.lengths().unit(),
                        worst.kind(),
                        worst.valves().get(0),
                        SEED,
                        GREATEST_DRAWS));
    }
}
