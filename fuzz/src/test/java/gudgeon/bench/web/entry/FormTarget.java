package gudgeon.bench.web.entry;

import gudgeon.fuzz.Promise;
import gudgeon.fuzz.Tarn;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.source.PriceRefusals;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The forms of the pages, as a browser sends them. What is not refused reads back from the journal the same, and can be told, folded
 * and looked through for alarms.
 */
public final class FormTarget {
    private static final Build BUILD = Tarn.worn();
    private static final Alarms ALARMS = new Alarms();
    private static final Instant NOW = Instant.parse("2026-01-31T12:00:00Z");

    private FormTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        List<String> refusals = new ArrayList<>();
        Form form = new Form(fields(new String(input, StandardCharsets.UTF_8)), refusals);
        List<Fact> facts = new FactForm(BUILD, form).facts();
        refusals.addAll(Refusals.of(BUILD, facts));
        refusals.addAll(PriceRefusals.of(facts));
        refusals.forEach(Promise::sentence);
        form.questions().forEach(question -> question.sentences().forEach(Promise::sentence));
        if (refusals.isEmpty()) {
            facts.forEach(FormTarget::kept);
            ALARMS.standing(BUILD.asIf(facts)).forEach(alarm -> Promise.sentence(alarm.what()));
        }
    }

    /** As the shelf does before it writes: an entry that could not be read again is refused with sentences. */
    private static void kept(Fact fact) {
        Entry entry = new Entry("e-1", NOW, "bench", BUILD.size(), fact);
        Reading again = EntryJson.read(EntryJson.write(entry));
        if (again instanceof Reading.Refused refused) {
            Promise.said(refused.sentences());
        } else {
            Promise.same(new Reading.Read(List.of(entry)), again, "the entry");
            Promise.kept(!Telling.of(fact, BUILD.structure()).isBlank(), "told as nothing: " + fact);
        }
    }

    private static Map<String, List<String>> fields(String sent) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (String pair : sent.split("&", -1)) {
            int equals = pair.indexOf('=');
            String name = equals < 0 ? pair : pair.substring(0, equals);
            String value = equals < 0 ? "" : pair.substring(equals + 1);
            fields.computeIfAbsent(decoded(name), any -> new ArrayList<>()).add(decoded(value));
        }
        return fields;
    }

    private static String decoded(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notEncoded) {
            return text;
        }
    }
}
