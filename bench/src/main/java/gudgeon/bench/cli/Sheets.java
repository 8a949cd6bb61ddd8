package gudgeon.bench.cli;

import gudgeon.rebuild.sheet.Act;
import gudgeon.rebuild.sheet.AssemblySheet;
import gudgeon.rebuild.sheet.Passage;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sheets as plain text, 80 columns wide: a box to tick at each act, cautions before all else. */
final class Sheets {
    static final int COLUMNS = 80;
    private static final int HEADING = 11;
    private static final int MARGIN = 9;
    private static final int HANGING = 2;

    private final PrintWriter out;

    Sheets(PrintWriter out) {
        this.out = out;
    }

    void print(AssemblySheet sheet) {
        out.println(sheet.title());
        out.println("=".repeat(Math.min(COLUMNS, sheet.title().length())));
        for (String sentence : sheet.opening()) {
            wrapped(sentence, COLUMNS).forEach(out::println);
        }
        sheet.acts().forEach(this::print);
        if (!sheet.sizes().isEmpty()) {
            out.println();
            out.println("To be measured");
            out.println("--------------");
        }
        for (Passage part : sheet.sizes()) {
            out.println();
            out.println(part.heading());
            part.lines().forEach(line -> indented("  - ", line));
        }
    }

    private void print(Act act) {
        out.println();
        if (act.kind() == Act.Kind.HOLD_POINT) {
            out.println("-".repeat(COLUMNS));
        }
        String kind = switch (act.kind()) {
            case STEP -> "";
            case CHECK -> "CHECK: ";
            case HOLD_POINT -> "HOLD POINT: ";
        };
        indented(String.format(Locale.ROOT, "[ ] %3d  ", act.number()), kind + act.name());
        act.cautions().forEach(caution -> indented(heading("CAUTION"), caution));
        for (Passage passage : act.passages()) {
            String heading = heading(passage.heading());
            for (String line : passage.lines()) {
                indented(heading, line);
                heading = heading("");
            }
        }
        if (act.kind() == Act.Kind.HOLD_POINT) {
            out.println("-".repeat(COLUMNS));
        }
    }

    private static String heading(String words) {
        return " ".repeat(MARGIN) + words + " ".repeat(Math.max(1, HEADING - words.length()));
    }

    /** A text behind its lead; its further lines hang, so that the next text is told from them. */
    private void indented(String lead, String text) {
        String before = lead;
        for (String line : wrapped(text, COLUMNS - lead.length() - HANGING)) {
            out.println(before + line);
            before = " ".repeat(lead.length() + HANGING);
        }
    }

    /** A text in lines of at most that many letters, broken between words where that is possible. */
    static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.replaceAll("^\\s+|\\s+$", "").split("\\s+", -1)) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.length() == 0 && rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
