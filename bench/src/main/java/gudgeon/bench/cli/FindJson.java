package gudgeon.bench.cli;

import gudgeon.rebuild.find.Answer;
import gudgeon.rebuild.find.Evidence;
import gudgeon.rebuild.find.Hunt;
import gudgeon.rebuild.find.NextTest;
import gudgeon.rebuild.find.Ranked;
import gudgeon.rebuild.find.Ranking;
import gudgeon.rebuild.plan.Buy;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A search for a fault as JSON, described in docs/find-json.md. Keys stay as they are; new ones may be added. */
final class FindJson {
    private FindJson() {}

    static String text(Hunt hunt, Ranking ranking) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("search", hunt.id());
        json.put("trouble", hunt.trouble().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.put("open", hunt.isOpen());
        json.put("sentence", ranking.sentence());
        json.put("bits", ranking.bits());
        json.put("suspects", ranking.ranked().stream().map(FindJson::suspect).toList());
        json.put("seen", ranking.evidence().stream().map(FindJson::seen).toList());
        json.put("alike", ranking.alike());
        json.put("next", ranking.best().map(next -> next.test().id()).orElse(null));
        json.put("tests", ranking.next().stream().map(FindJson::test).toList());
        json.put("assumptions", ranking.assumptions());
        return Json.text(json);
    }

    private static Map<String, Object> suspect(Ranked one) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("suspect", one.suspect().id());
        json.put("name", one.suspect().name());
        json.put("before", one.before());
        json.put("chance", one.chance());
        json.put("basis", one.suspect().basis());
        json.put("shows", one.suspect().shows());
        json.put("explains", one.explains());
        json.put("reach", one.suspect().reach());
        return json;
    }

    private static Map<String, Object> seen(Evidence evidence) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("entries", evidence.entries());
        json.put("said", evidence.said());
        json.put("logLikelihood", evidence.logLikelihood());
        return json;
    }

    private static Map<String, Object> test(NextTest next) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("test", next.test().id());
        json.put("name", next.test().name());
        json.put("how", next.test().how());
        json.put("cautions", next.test().cautions());
        json.put("answers", next.test().answers().stream().map(FindJson::answer).toList());
        json.put("bits", next.bits());
        json.put("minutes", next.minutes());
        json.put("bitsPerHour", next.bitsPerHour());
        json.put("off", next.off());
        json.put("destroyed", next.buy().stream().map(Buy::position).toList());
        json.put("working", next.working());
        return json;
    }

    private static Map<String, Object> answer(Answer answer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("answer", answer.id());
        json.put("words", answer.words());
        return json;
    }
}
