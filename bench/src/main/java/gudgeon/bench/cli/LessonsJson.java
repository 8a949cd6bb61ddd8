package gudgeon.bench.cli;

import gudgeon.rebuild.lesson.Difference;
import gudgeon.rebuild.lesson.Lesson;
import gudgeon.rebuild.lesson.Manuscript;
import gudgeon.rebuild.lesson.NextTime;
import gudgeon.rebuild.lesson.Withheld;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a build taught as JSON, described in docs/lessons-json.md. Keys stay as they are. */
final class LessonsJson {
    private LessonsJson() {}

    static String text(NextTime next, Manuscript book) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("sentence", next.sentence());
        json.put(
                "lessons",
                next.lessons().stream().map(lesson -> lesson(lesson, book)).toList());
        json.put("withheld", next.withheld().stream().map(LessonsJson::withheld).toList());
        return Json.text(json);
    }

    private static Map<String, @Nullable Object> lesson(Lesson lesson, Manuscript book) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("id", lesson.id());
        json.put("what", lesson.what());
        json.put("why", lesson.why());
        json.put("entries", lesson.entries());
        json.put(
                "accepted", lesson.decided().map(told -> told.fact().accepted()).orElse(null));
        json.put("changes", changes(lesson, book));
        return json;
    }

    private static List<Map<String, Object>> changes(Lesson lesson, Manuscript book) {
        return lesson.amendments().stream()
                .map(book::difference)
                .filter(difference -> !difference.isNone())
                .map(LessonsJson::change)
                .toList();
    }

    private static Map<String, Object> change(Difference difference) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("line", difference.line());
        json.put("taken", difference.taken());
        json.put("put", difference.put());
        return json;
    }

    private static Map<String, Object> withheld(Withheld withheld) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("what", withheld.what());
        json.put("why", withheld.why());
        json.put("entries", withheld.entries());
        return json;
    }
}
