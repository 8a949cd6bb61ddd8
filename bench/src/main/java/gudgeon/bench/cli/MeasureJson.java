package gudgeon.bench.cli;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Condition;
import gudgeon.rebuild.measure.Proof;
import gudgeon.rebuild.measure.Proofs;
import gudgeon.rebuild.measure.Suited;
import gudgeon.rebuild.measure.Tally;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.reading.Component;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import gudgeon.rebuild.reading.Reading;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The verdicts on a build as JSON, described in docs/measure-json.md. Keys stay as they are; new ones may be added. */
final class MeasureJson {
    private MeasureJson() {}

    static String text(Build build, Tally tally, LocalDate today) {
        OwnInstruments own = OwnInstruments.of(build.instruments());
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("sentence", tally.sentence());
        json.put(
                "dimensions",
                tally.verdicts().stream()
                        .map(verdict -> verdict(build, verdict))
                        .toList());
        json.put(
                "instruments",
                own.all().stream().map(one -> instrument(one, today)).toList());
        json.put("instrumentFaults", own.faults());
        return Json.text(json);
    }

    private static Map<String, @Nullable Object> verdict(Build build, Verdict verdict) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("id", verdict.dimension().id());
        json.put("name", verdict.dimension().name());
        json.put("position", verdict.dimension().of());
        json.put("part", verdict.part());
        json.put("unit", verdict.dimension().unit().symbol());
        json.put("outcome", word(verdict.outcome()));
        json.put("condition", verdict.condition() == Condition.NOT_SAID ? null : word(verdict.condition()));
        json.put("sentence", verdict.sentence());
        json.put("chances", verdict.chances().map(MeasureJson::chances).orElse(null));
        json.put(
                "worst",
                verdict.worst()
                        .map(worst -> figure(worst, verdict.dimension().unit()))
                        .orElse(null));
        json.put("missing", verdict.evaluated().missing());
        json.put(
                "readings",
                verdict.evaluated().figures().stream()
                        .flatMap(figure -> figure.readings().stream())
                        .map(MeasureJson::reading)
                        .toList());
        json.put("unread", verdict.evaluated().unread());
        json.put(
                "proofs",
                Proofs.of(build, verdict).stream().map(MeasureJson::proof).toList());
        json.put(
                "suited",
                verdict.dimension().isRead()
                        ? Suited.of(build, verdict.dimension()).stream()
                                .map(MeasureJson::suited)
                                .toList()
                        : List.of());
        return json;
    }

    private static Map<String, Object> chances(Conformity chances) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("below", chances.below());
        json.put("inside", chances.inside());
        json.put("above", chances.above());
        return json;
    }

    private static Map<String, @Nullable Object> figure(Figure figure, Unit unit) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("where", figure.at());
        json.put("piece", figure.piece());
        json.put("value", figure.value());
        json.put("standardUncertainty", figure.doubtKnown() ? figure.quantity().standardUncertainty() : null);
        json.put("expandedUncertainty", figure.doubtKnown() ? figure.expanded() : null);
        json.put("budget", figure.budget().stream().map(MeasureJson::component).toList());
        json.put("budgetLines", figure.lines(unit));
        return json;
    }

    private static Map<String, Object> component(Component component) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("what", component.what());
        json.put("standardUncertainty", component.doubt().standardUncertainty());
        return json;
    }

    private static Map<String, Object> reading(Reading reading) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("entry", reading.entry());
        json.put("where", reading.at());
        json.put("piece", reading.piece());
        json.put("value", reading.value());
        json.put("written", reading.written());
        json.put("instrument", reading.with());
        return json;
    }

    private static Map<String, Object> proof(Proof proof) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("instruments", proof.instruments());
        json.put("outcome", word(proof.outcome()));
        json.put("sentence", proof.sentence());
        return json;
    }

    private static Map<String, @Nullable Object> suited(Suited suited) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("instrument", suited.instrument().name());
        json.put("hopeless", suited.hopeless().orElse(null));
        return json;
    }

    private static Map<String, @Nullable Object> instrument(OwnInstrument own, LocalDate today) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("name", own.name());
        json.put("kind", word(own.kind()));
        json.put("unit", own.scale().unit().symbol());
        json.put("inches", own.inches());
        json.put("resolution", own.scale().resolution());
        json.put("error", own.scale().error());
        json.put("checked", own.checked().map(LocalDate::toString).orElse(null));
        json.put("unchecked", own.unchecked(today).orElse(null));
        return json;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
