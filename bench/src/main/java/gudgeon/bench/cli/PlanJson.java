package gudgeon.bench.cli;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.plan.BestOrder;
import gudgeon.rebuild.plan.Buy;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.plan.Undo;
import gudgeon.rebuild.plan.Waiting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A plan and an undoing as JSON, described in docs/plan-json.md. Keys stay as they are; new ones may be added. */
final class PlanJson {
    private PlanJson() {}

    static String text(Plan plan, Optional<BestOrder> best) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("now", plan.now().stream().map(PlanJson::doable).toList());
        json.put("waiting", plan.waiting().stream().map(PlanJson::waiting).toList());
        json.put("nextHoldPoint", plan.nextHoldPoint().map(Check::id).orElse(null));
        Map<String, @Nullable Object> progress = new LinkedHashMap<>();
        progress.put("done", plan.progress().done());
        progress.put("all", plan.progress().all());
        progress.put("minutesLeft", plan.progress().minutesLeft());
        progress.put("sentence", plan.progress().sentence());
        json.put("progress", progress);
        best.ifPresent(order -> json.put("order", order(order)));
        return Json.text(json);
    }

    static String text(Undo undo) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("of", undo.of());
        json.put("off", undo.off().stream().map(PlanJson::step).toList());
        json.put("again", undo.again().stream().map(PlanJson::step).toList());
        json.put("voidChecks", undo.voidChecks());
        json.put("buy", undo.buy().stream().map(PlanJson::buy).toList());
        json.put("minutesOff", undo.minutesOff());
        json.put("minutesBack", undo.minutesBack());
        json.put("back", undo.back());
        json.put("sentences", undo.sentences());
        return Json.text(json);
    }

    private static Map<String, Object> doable(Doable doable) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", doable.id());
        json.put("isCheck", doable.isCheck());
        json.put("name", doable.name());
        json.put("minutes", doable.minutes());
        json.put("why", doable.why());
        return json;
    }

    private static Map<String, Object> waiting(Waiting waiting) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", waiting.id());
        json.put("isCheck", waiting.isCheck());
        json.put("name", waiting.name());
        List<Map<String, Object>> reasons = waiting.reasons().stream()
                .map(reason -> {
                    Map<String, Object> one = new LinkedHashMap<>();
                    one.put("kind", reason.kind().name().toLowerCase(Locale.ROOT));
                    one.put("id", reason.id());
                    one.put("sentence", reason.sentence());
                    return one;
                })
                .toList();
        json.put("reasons", reasons);
        return json;
    }

    private static Map<String, Object> order(BestOrder best) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("order", best.order());
        json.put("costMinutes", best.cost());
        json.put("boundMinutes", best.bound());
        json.put("proven", best.proven());
        json.put("bookOrder", best.bookOrder());
        json.put("bookCostMinutes", best.bookCost());
        json.put("sentence", best.sentence());
        json.put("gains", best.gains());
        json.put("assumptions", best.assumptions());
        return json;
    }

    private static Map<String, Object> step(Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", step.id());
        json.put("name", step.name());
        json.put("minutes", step.minutes());
        return json;
    }

    private static Map<String, @Nullable Object> buy(Buy buy) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("position", buy.position());
        json.put("name", buy.name());
        json.put("quantity", buy.quantity());
        json.put("price", buy.price().isBlank() ? null : buy.price());
        return json;
    }
}
