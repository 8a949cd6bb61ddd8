package gudgeon.bench.language;

import gudgeon.bench.packed.Packed;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The phrases that a page's scripts say by themselves; a page in another language brings their meanings along. */
final class ScriptPhrases {
    /** Scripts that say something: each by {@code said("...")} of words.js. */
    static final List<String> SCRIPTS = List.of("copy", "fasten", "fit", "plan", "queue", "section");

    private static final Pattern SAID = Pattern.compile("\\bsaid\\(\\s*(?:\"([^\"]*)\"|'([^']*)'|`([^`$]*)`)");

    private ScriptPhrases() {}

    static List<String> all() {
        return SCRIPTS.stream().flatMap(ScriptPhrases::in).distinct().toList();
    }

    private static Stream<String> in(String script) {
        Matcher said = SAID.matcher(Packed.text("/gudgeon/bench/web/assets/" + script + ".js"));
        return said.results()
                .map(found -> Stream.of(1, 2, 3)
                        .map(found::group)
                        .filter(phrase -> phrase != null)
                        .findFirst()
                        .orElseThrow());
    }
}
