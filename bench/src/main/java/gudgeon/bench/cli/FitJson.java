package gudgeon.bench.cli;

import gudgeon.mechanics.clearance.Span;
import gudgeon.rebuild.fit.CureLine;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.Share;
import gudgeon.rebuild.fit.TrialFit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** A trial fit as JSON, described in docs/fit-json.md. Keys stay as they are; new ones may be added. */
final class FitJson {
    private FitJson() {}

    static String text(TrialFit fit) {
        return Json.text(of(fit));
    }

    private static Map<String, @Nullable Object> of(TrialFit fit) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("engine", fit.engine());
        json.put("choice", choice(fit));
        json.put("allClear", fit.allClear());
        json.put("sentence", fit.sentence());
        Map<String, @Nullable Object> valves = new LinkedHashMap<>();
        fit.valveIds().forEach(id -> valves.put(id, valve(fit, id)));
        json.put("valves", valves);
        json.put("valveToValve", least(fit, GapKind.VALVE_TO_VALVE));
        json.put("wallGap", least(fit, GapKind.WALL));
        json.put("deckGap", least(fit, GapKind.DECK));
        json.put("tightForwardDeg", orNull(fit.tightForwardDeg()));
        json.put("tightBackwardDeg", orNull(fit.tightBackwardDeg()));
        json.put("compressionRatio", figure(fit, "compressionRatio"));
        json.put("sweptCm3", figure(fit, "sweptCm3"));
        Map<String, @Nullable Object> figures = new LinkedHashMap<>();
        fit.figures().forEach(figure -> figures.put(figure.key(), figure(figure)));
        json.put("figures", figures);
        json.put("budget", fit.worst().map(worst -> budget(worst.budget())).orElse(List.of()));
        json.put("cures", fit.cures().stream().map(FitJson::cure).toList());
        json.put("next", fit.next().map(next -> next.sentence()).orElse(null));
        return json;
    }

    private static Map<String, @Nullable Object> choice(TrialFit fit) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("piston", fit.choice().pistonId().orElse(null));
        json.put("gasket", fit.choice().gasketId().orElse(null));
        json.put("teethMoved", fit.choice().teethMoved());
        json.put("valveClearanceMm", orNull(fit.choice().valveClearanceMm()));
        json.put("turned", fit.choice().turned());
        return json;
    }

    private static Map<String, @Nullable Object> valve(TrialFit fit, String id) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("boreGap", gap(fit, GapKind.BORE, id));
        json.put("valveGap", gap(fit, GapKind.VALVE, id));
        json.put("nearestGap", gap(fit, GapKind.NEAREST, id));
        json.put("sideGap", gap(fit, GapKind.SIDE, id));
        json.put("wallGap", gap(fit, GapKind.WALL, id));
        return json;
    }

    private static @Nullable Object gap(TrialFit fit, GapKind kind, String id) {
        return fit.findings().stream()
                .filter(finding -> finding.kind() == kind && finding.valves().equals(List.of(id)))
                .findFirst()
                .map(FitJson::gap)
                .orElse(null);
    }

    /** The least of a kind of gap, whichever valves it belongs to. */
    private static @Nullable Object least(TrialFit fit, GapKind kind) {
        Optional<Finding> least = fit.findings().stream()
                .filter(finding -> finding.kind() == kind)
                .min(Comparator.comparingDouble(finding -> finding.gap().leastMm()));
        return least.map(finding -> {
                    Map<String, @Nullable Object> json = gap(finding);
                    json.put("valves", finding.valves());
                    return json;
                })
                .orElse(null);
    }

    private static Map<String, @Nullable Object> gap(Finding finding) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("leastMm", finding.gap().leastMm());
        json.put("leanLeastMm", finding.leanLeastMm().orElse(null));
        json.put("atDeg", finding.gap().atDeg());
        json.put("xMm", finding.gap().place().xMm());
        json.put("yMm", finding.gap().place().yMm());
        json.put("zMm", finding.gap().place().zMm());
        json.put("standardUncertaintyMm", finding.standardUncertaintyMm());
        json.put("wantedMm", finding.wantedMm());
        json.put("wantedSource", finding.wantedSource());
        json.put("verdict", finding.verdict().name().toLowerCase(Locale.ROOT));
        List<Span> spans = finding.gap().touching();
        json.put("touchesFromDeg", spans.isEmpty() ? null : spans.get(0).fromDeg());
        json.put("touchesToDeg", spans.isEmpty() ? null : spans.get(0).toDeg());
        json.put(
                "spans",
                spans.stream()
                        .map(span -> List.of(span.fromDeg(), span.toDeg()))
                        .toList());
        json.put("sentence", finding.sentence());
        json.put("budget", budget(finding.budget()));
        return json;
    }

    private static List<Map<String, Object>> budget(List<Share> shares) {
        return shares.stream()
                .map(share -> {
                    Map<String, Object> json = new LinkedHashMap<>();
                    json.put("input", share.input().path());
                    json.put("label", share.input().label());
                    json.put("sensitivity", share.sensitivity());
                    json.put("share", share.share());
                    return json;
                })
                .toList();
    }

    private static @Nullable Object figure(TrialFit fit, String key) {
        return fit.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .map(Figure::low)
                .orElse(null);
    }

    private static Map<String, @Nullable Object> figure(Figure figure) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("label", figure.label());
        json.put("low", figure.low());
        json.put("high", figure.high());
        json.put("unit", figure.unit());
        json.put("standardUncertainty", figure.standardUncertainty());
        return json;
    }

    private static Map<String, @Nullable Object> cure(CureLine cure) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("works", cure.works());
        json.put("what", cure.what());
        json.put("toValue", orNull(cure.toValue()));
        json.put("costs", cure.costs());
        json.put("whyNot", cure.whyNot());
        return json;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
