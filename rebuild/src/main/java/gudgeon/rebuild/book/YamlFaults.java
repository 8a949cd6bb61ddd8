package gudgeon.rebuild.book;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says in a fitter's words why a file can't be read as YAML. */
final class YamlFaults {
    /** What a parser's complaint mostly means; the first that fits is said. */
    private static final List<Map.Entry<String, String>> MEANINGS = List.of(
            Map.entry(
                    "mapping values are not allowed",
                    "A colon stands where none can be. Put text that holds a colon in quotes, or check the"
                            + " indentation of this line."),
            Map.entry(
                    "could not find expected ':'",
                    "A key without its colon. Write the key, a colon, a space, the value."),
            Map.entry("flow mapping", "A '{' is not closed, or a comma or a colon is missing between its keys."),
            Map.entry("flow sequence", "A '[' is not closed, or a comma is missing between its values."),
            Map.entry("quoted scalar", "A quotation mark is not closed."),
            Map.entry(
                    "block mapping",
                    "The indentation does not fit the lines above. Put keys of one block under each other."),
            Map.entry(
                    "block collection", "The indentation does not fit the lines above. Put the '-' under each other."),
            Map.entry("block sequence", "The indentation does not fit the lines above. Put the '-' under each other."),
            Map.entry(
                    "cannot start any token",
                    "A letter stands here that a value can't begin with. Put the text in quotes."),
            Map.entry("anchor", "Text that begins with '&' or '*' must stand in quotes."),
            Map.entry("directive", "A line that begins with '%' is not used in an engine book. Take it out."),
            Map.entry("tag", "Text that begins with '!' must stand in quotes."));

    private YamlFaults() {}

    static void tell(YamlEngineException e, String text, Faults faults) {
        if (tabs(text, faults)) {
            return;
        }
        if (e instanceof ReaderException reader) {
            String before =
                    text.substring(0, text.offsetByCodePoints(0, Math.min(reader.getPosition(), codePoints(text))));
            int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
            faults.fault(
                    new Where(line, before.length() - before.lastIndexOf('\n')),
                    "",
                    "An invisible control character (" + String.format(Locale.ROOT, "U+%04X", reader.getCodePoint())
                            + ") stands here.",
                    "Delete it and type the line again.");
            return;
        }
        Where where = e instanceof MarkedYamlEngineException marked
                ? marked.getProblemMark()
                        .or(marked::getContextMark)
                        .map(BookOutline::where)
                        .orElse(new Where(1, 1))
                : new Where(1, 1);
        String problem = e instanceof MarkedYamlEngineException marked
                ? Optional.ofNullable(marked.getProblem()).orElse("") + " "
                        + Optional.ofNullable(marked.getContext()).orElse("")
                : "";
        String meaning = MEANINGS.stream()
                .filter(known -> problem.contains(known.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("Check this line and the one above: indentation, colons, quotes and brackets.");
        faults.fault(where, "", "The file can't be read as YAML from here on.", meaning);
    }

    private static int codePoints(String text) {
        return text.codePointCount(0, text.length());
    }

    /** Tabs in the indentation are the commonest reason, and can't be seen. */
    private static boolean tabs(String text, Faults faults) {
        String[] lines = text.split("\n", -1);
        boolean any = false;
        for (int i = 0; i < lines.length; i++) {
            String margin = lines[i].substring(
                    0, lines[i].length() - lines[i].stripLeading().length());
            if (margin.contains("\t") && !lines[i].isBlank()) {
                faults.fault(
                        new Where(i + 1, margin.indexOf('\t') + 1),
                        "",
                        "A tab stands in the indentation of this line.",
                        "Use spaces: YAML does not allow tabs there.");
                any = true;
            }
        }
        return any;
    }
}
