package gudgeon.bench.cli;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Telling;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A replay as JSON, described in docs/replay-json.md. Keys stay as they are; new ones may be added. */
final class ReplayJson {
    private ReplayJson() {}

    static String text(Replay replay) {
        return Json.text(of(replay));
    }

    private static Map<String, Object> of(Replay replay) {
        Build build = replay.build();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("engine", build.book().engine().name());
        json.put("entries", build.size());
        json.put("turns", replay.turns().stream().map(turn -> turn(turn, build)).toList());
        json.put("standing", alarms(replay.standing(), build));
        json.put("unknown", build.unknown());
        return json;
    }

    private static Map<String, Object> turn(Replay.Turn turn, Build build) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("entry", turn.number());
        json.put("key", build.entry(turn.number()).key());
        json.put("sentence", Telling.of(build.entry(turn.number()).fact(), build.structure()));
        json.put("raised", alarms(turn.raised(), build));
        json.put("gone", alarms(turn.gone(), build));
        return json;
    }

    private static List<Map<String, Object>> alarms(List<Alarm> alarms, Build build) {
        return alarms.stream().map(alarm -> alarm(alarm, build)).toList();
    }

    private static Map<String, Object> alarm(Alarm alarm, Build build) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", alarm.kind().key());
        json.put("severity", alarm.severity().word());
        json.put("at", alarm.at());
        json.put("name", build.structure().name(alarm.at()));
        json.put("what", alarm.what());
        json.put("why", alarm.why());
        json.put("todo", alarm.todo());
        json.put("evidence", alarm.evidence());
        json.put("figures", alarm.figures());
        return json;
    }
}
