package gudgeon.bench.cli;

import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.schedule.DateRange;
import gudgeon.rebuild.schedule.Decider;
import gudgeon.rebuild.schedule.Expected;
import gudgeon.rebuild.schedule.Schedule;
import gudgeon.rebuild.schedule.ToPlace;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A schedule as JSON, described in docs/schedule-json.md. Keys stay as they are; new ones may be added. */
final class ScheduleJson {
    private ScheduleJson() {}

    static String text(Schedule schedule) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sentence", schedule.sentence());
        json.put("end", range(schedule.end()));
        json.put("thisEvening", schedule.thisEvening().stream().map(Doable::id).toList());
        json.put(
                "hangsOn",
                schedule.deciders().stream().map(ScheduleJson::decider).toList());
        json.put(
                "toPlace",
                schedule.toPlace().stream().map(ScheduleJson::toPlace).toList());
        json.put(
                "arrivals",
                schedule.arrivals().stream().map(ScheduleJson::expected).toList());
        json.put(
                "holdPoints",
                schedule.holdPoints().stream().map(ScheduleJson::expected).toList());
        json.put("assumptions", schedule.assumptions());
        return Json.text(json);
    }

    private static Map<String, Object> range(DateRange range) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("early", range.early().toString());
        json.put("half", range.half().toString());
        json.put("late", range.late().toString());
        return json;
    }

    private static Map<String, @Nullable Object> decider(Decider decider) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("id", decider.id().isEmpty() ? null : decider.id());
        json.put("share", decider.share());
        json.put("sentence", decider.sentence());
        return json;
    }

    private static Map<String, Object> toPlace(ToPlace order) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("position", order.position());
        json.put("costsDays", order.costsDays());
        json.put("sentence", order.sentence());
        return json;
    }

    private static Map<String, Object> expected(Expected expected) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", expected.id());
        json.put("what", expected.what());
        json.put("day", range(expected.day()));
        return json;
    }
}
