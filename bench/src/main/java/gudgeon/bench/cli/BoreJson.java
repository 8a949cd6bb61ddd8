package gudgeon.bench.cli;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.bore.Ask;
import gudgeon.rebuild.bore.BorePlan;
import gudgeon.rebuild.bore.Oversize;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.valvework.SeatWay;
import gudgeon.rebuild.valvework.SeatWays;
import gudgeon.rebuild.valvework.SpringRoom;
import gudgeon.rebuild.valvework.ValveSeat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A bore plan, springs and seats as JSON, described in docs/bore-json.md. Keys stay as they are; new ones may be added. */
final class BoreJson {
    private BoreJson() {}

    static String text(Build build, Optional<BorePlan> plan) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("bore", plan.map(BoreJson::plan).orElse(null));
        json.put("springs", SpringRoom.all(build).stream().map(BoreJson::spring).toList());
        json.put(
                "seats",
                ValveSeat.all(build).stream().map(seat -> seat(build, seat)).toList());
        return Json.text(json);
    }

    private static Map<String, @Nullable Object> plan(BorePlan plan) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("sentence", plan.sentence());
        json.put("ask", plan.ask().map(BoreJson::ask).orElse(null));
        json.put("found", plan.found());
        json.put("pistons", plan.oversizes().stream().map(BoreJson::oversize).toList());
        json.put("after", plan.after());
        json.put("unproven", plan.unproven());
        json.put("cautions", plan.cautions());
        return json;
    }

    private static Map<String, @Nullable Object> ask(Ask ask) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("piston", ask.piston());
        json.put("skirtMm", ask.skirtMm().value());
        json.put("leastMm", ask.bore().leastMm());
        json.put("mostMm", ask.bore().mostMm());
        json.put("proved", ask.bore().proved());
        json.put("work", ask.work());
        return json;
    }

    private static Map<String, @Nullable Object> oversize(Oversize oversize) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("name", oversize.name());
        json.put("finishedMm", oversize.finishedMm());
        json.put("cleansUp", oversize.cleansUp().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.put("sentence", oversize.sentence());
        return json;
    }

    private static Map<String, @Nullable Object> spring(SpringRoom room) {
        Quantity margin = room.spring().marginMm();
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("dimension", room.room().id());
        json.put("name", room.room().name());
        json.put("marginMm", margin.value());
        json.put("standardUncertaintyMm", margin.standardUncertainty());
        json.put("wantedMm", room.wantedMm());
        json.put("short", room.isShort());
        json.put("fromBook", room.fromBook());
        json.put("sentence", room.sentence());
        json.put("shims", room.shims());
        return json;
    }

    private static Map<String, @Nullable Object> seat(Build build, ValveSeat seat) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("valve", seat.valve().id());
        json.put("widthMm", seat.widest().map(Quantity::value).orElse(null));
        json.put("sunkMm", seat.sunkMm().map(Quantity::value).orElse(null));
        json.put("mayRiseMm", seat.mayRiseMm().orElse(null));
        json.put("needsWork", seat.needsWork());
        json.put("sentences", seat.sentences());
        json.put("ways", SeatWays.of(build, seat).stream().map(BoreJson::way).toList());
        return json;
    }

    private static Map<String, @Nullable Object> way(SeatWay way) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("option", way.drawn().option());
        json.put("name", way.drawn().name());
        json.put("why", way.drawn().why());
        json.put("positions", way.lines().stream().map(line -> line.position()).toList());
        return json;
    }
}
