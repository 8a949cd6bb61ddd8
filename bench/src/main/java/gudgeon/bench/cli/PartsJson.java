package gudgeon.bench.cli;

import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.Money;
import gudgeon.rebuild.source.Offer;
import gudgeon.rebuild.source.OrderLine;
import gudgeon.rebuild.source.OutWork;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import gudgeon.rebuild.source.SizeCompared;
import gudgeon.rebuild.source.Sum;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A parts list as JSON, described in docs/parts-json.md. Keys stay as they are; new ones may be added. */
final class PartsJson {
    private PartsJson() {}

    static String text(PartsList list, List<Inspection> inspections) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("sentence", list.sentence());
        json.put("lines", list.lines().stream().map(PartsJson::line).toList());
        json.put(
                "orders", list.arrivals().lines().stream().map(PartsJson::order).toList());
        json.put("work", list.work().stream().map(PartsJson::work).toList());
        json.put("inspections", inspections.stream().map(PartsJson::inspection).toList());
        json.put("spent", sum(list.account().spent()));
        json.put("toCome", sum(list.account().toCome()));
        json.put("unpriced", list.account().unpriced());
        json.put("faults", list.account().faults());
        return Json.text(json);
    }

    private static Map<String, @Nullable Object> line(PartsLine line) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("position", line.position());
        json.put("name", line.name());
        json.put("kind", line.want().map(want -> key(want.kind())).orElse(null));
        json.put("sentence", line.sentence());
        json.put("needed", line.needed());
        json.put("onTheWay", line.ordered());
        json.put("inHand", line.inHand());
        json.put("toOrder", line.toOrder());
        json.put("offers", line.offers().stream().map(PartsJson::offer).toList());
        return json;
    }

    private static Map<String, @Nullable Object> offer(Offer offer) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("part", blank(offer.part()));
        json.put("origin", offer.origin().map(PartsJson::key).orElse(null));
        json.put("from", blank(offer.from()));
        json.put("price", blank(offer.written()));
        json.put("days", days(offer.days()));
        json.put("sizes", offer.sizes());
        return json;
    }

    private static Map<String, @Nullable Object> order(OrderLine line) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("order", blank(line.order()));
        json.put("position", line.position());
        json.put("part", blank(line.part()));
        json.put("from", blank(line.from()));
        json.put("ordered", line.ordered());
        json.put("came", line.came());
        json.put("returned", line.returned());
        json.put("price", blank(line.written()));
        json.put("on", line.on().toString());
        json.put("days", days(line.days()));
        json.put("promised", line.promised().map(LocalDate::toString).orElse(null));
        json.put("sizes", line.sizes());
        json.put("state", key(line.state()));
        json.put("sentence", line.sentence());
        return json;
    }

    private static Map<String, @Nullable Object> work(OutWork work) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("position", work.position());
        json.put("part", blank(work.part()));
        json.put("to", blank(work.to()));
        json.put("work", blank(work.work()));
        json.put("price", blank(work.written()));
        json.put("on", work.on().toString());
        json.put("days", days(work.days()));
        json.put("back", work.back().map(LocalDate::toString).orElse(null));
        json.put("sentence", work.sentence());
        return json;
    }

    private static Map<String, Object> inspection(Inspection inspection) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("position", inspection.position());
        json.put("part", inspection.part());
        json.put("outcome", key(inspection.outcome()));
        json.put("sentence", inspection.sentence());
        json.put("sizes", inspection.sizes().stream().map(PartsJson::size).toList());
        json.put("looks", inspection.looks());
        json.put("differing", inspection.differing());
        return json;
    }

    private static Map<String, @Nullable Object> size(SizeCompared size) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("id", size.id());
        json.put("label", size.label());
        json.put("old", blank(size.old()));
        json.put("booked", blank(size.booked()));
        json.put("ordered", blank(size.ordered()));
        json.put("found", blank(size.found()));
        json.put("mates", size.mates());
        json.put("agrees", key(size.agrees()));
        json.put("sentence", size.sentence());
        return json;
    }

    private static List<Map<String, Object>> sum(Sum sum) {
        return sum.amounts().stream().map(PartsJson::money).toList();
    }

    private static Map<String, Object> money(Money money) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("amount", money.amount().toPlainString());
        json.put("currency", money.currency().getCurrencyCode());
        return json;
    }

    private static @Nullable List<Integer> days(Optional<Days> days) {
        return days.map(span -> List.of(span.least(), span.likely(), span.most()))
                .orElse(null);
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static @Nullable String blank(String text) {
        return text.isBlank() ? null : text;
    }
}
