package gudgeon.bench.cli;

import gudgeon.rebuild.desk.DeskAnswer;
import gudgeon.rebuild.desk.DeskFigure;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Answers of the desk as text or as JSON. */
final class DeskPrint {
    private DeskPrint() {}

    /** Prints an answer and gives the exit code; a question that can't be answered ends the command with its sentences. */
    static int print(DeskAnswer answer, boolean json, PrintWriter out) {
        if (answer instanceof DeskAnswer.Refused refused) {
            throw new Unusable(String.join("\n", refused.sentences()));
        }
        DeskAnswer.Told told = (DeskAnswer.Told) answer;
        if (json) {
            out.println(json(told));
        } else {
            text(told, out);
        }
        return Gudgeon.CLEAR;
    }

    private static void text(DeskAnswer.Told told, PrintWriter out) {
        say(told.heading(), out);
        out.println();
        int widest = told.figures().stream()
                .mapToInt(figure -> figure.label().length())
                .max()
                .orElse(1);
        for (DeskFigure figure : told.figures()) {
            out.printf(Locale.ROOT, "  %-" + widest + "s  %s%n", figure.label(), figure.text());
        }
        out.println();
        told.sentences().forEach(sentence -> say(sentence, out));
        told.cautions().forEach(caution -> say("Caution: " + caution, out));
        told.sources().forEach(source -> say("Source: " + source, out));
    }

    private static void say(String sentence, PrintWriter out) {
        Sheets.wrapped(sentence, Sheets.COLUMNS).forEach(out::println);
    }

    private static String json(DeskAnswer.Told told) {
        Map<String, Object> figures = new LinkedHashMap<>();
        for (DeskFigure figure : told.figures()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("value", figure.value());
            one.put("unit", figure.unit().symbol());
            figures.put(figure.key(), one);
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("heading", told.heading());
        object.put("figures", figures);
        object.put("sentences", told.sentences());
        object.put("cautions", told.cautions());
        object.put("sources", told.sources());
        return Json.text(object);
    }
}
