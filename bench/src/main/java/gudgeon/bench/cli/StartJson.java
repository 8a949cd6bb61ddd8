package gudgeon.bench.cli;

import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.runin.StageNow;
import gudgeon.rebuild.runin.Work;
import gudgeon.rebuild.start.StartItem;
import gudgeon.rebuild.start.StartList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The list before the first start and running in as JSON, described in docs/start-json.md. Keys stay as they are. */
final class StartJson {
    private StartJson() {}

    static String text(StartList list) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("sentence", list.sentence());
        json.put("signed", list.round().signed().isPresent());
        json.put("signedBy", list.round().signed().map(told -> told.fact().by()).orElse(null));
        json.put(
                "signedOver",
                list.round().signed().map(told -> told.fact().open()).orElse(List.of()));
        json.put("items", list.items().stream().map(StartJson::item).toList());
        return Json.text(json);
    }

    private static Map<String, Object> item(StartItem item) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", word(item.kind()));
        json.put("id", item.id());
        json.put("name", item.name());
        json.put("standing", word(item.standing()));
        json.put("holds", item.holds());
        json.put("sentence", item.sentence());
        json.put("evidence", item.evidence());
        return json;
    }

    static String text(RunIn runIn) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("sentence", runIn.sentence());
        json.put("source", runIn.scheme().source());
        json.put("ownScheme", runIn.own());
        json.put("started", runIn.started());
        json.put("done", runIn.isDone());
        json.put("now", runIn.now().map(stage -> stage.stage().id()).orElse(null));
        json.put("stages", runIn.stages().stream().map(StartJson::stage).toList());
        return Json.text(json);
    }

    private static Map<String, @Nullable Object> stage(StageNow stage) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("id", stage.stage().id());
        json.put("name", stage.stage().name());
        json.put("minutes", stage.stage().minutes());
        json.put("minutesRun", stage.minutes());
        json.put("heats", stage.stage().heats());
        json.put("heatsHad", stage.heats());
        json.put("load", stage.stage().load());
        json.put("mostRpm", stage.mostRpm().isPresent() ? stage.mostRpm().getAsInt() : null);
        json.put(
                "meanPistonSpeedMPerS",
                stage.pistonSpeedMPerS().isPresent() ? stage.pistonSpeedMPerS().getAsDouble() : null);
        json.put("over", stage.isOver());
        json.put("limits", stage.limits());
        json.put("after", stage.works().stream().map(StartJson::work).toList());
        return json;
    }

    private static Map<String, Object> work(Work work) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", word(work.kind()));
        json.put("id", work.id());
        json.put("name", work.name());
        json.put("done", work.isDone());
        return json;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
