package gudgeon.rebuild.lesson;

import java.util.ArrayList;
import java.util.List;

/**
 * What changes in the lines of a text.
 *
 * @param line the first of them, from 1
 * @param taken lines that go
 * @param put lines that come in their place
 */
public record Difference(int line, List<String> taken, List<String> put) {
    public Difference {
        taken = List.copyOf(taken);
        put = List.copyOf(put);
    }

    /** The lines that a splice touches, without those that stay as they are. */
    static Difference of(String text, Splice splice) {
        int from = text.lastIndexOf('\n', splice.from() - 1) + 1;
        int end = text.indexOf('\n', splice.to());
        int to = end < 0 ? text.length() : end;
        List<String> old = new ArrayList<>(lines(text.substring(from, to)));
        String after = text.substring(from, splice.from()) + splice.put() + text.substring(splice.to(), to);
        List<String> fresh = new ArrayList<>(lines(after));
        int line =
                1 + (int) text.substring(0, from).chars().filter(c -> c == '\n').count();
        while (!old.isEmpty() && !fresh.isEmpty() && old.get(0).equals(fresh.get(0))) {
            old.remove(0);
            fresh.remove(0);
            line++;
        }
        while (!old.isEmpty() && !fresh.isEmpty() && last(old).equals(last(fresh))) {
            old.remove(old.size() - 1);
            fresh.remove(fresh.size() - 1);
        }
        return new Difference(line, old, fresh);
    }

    private static List<String> lines(String text) {
        return text.lines().toList();
    }

    private static String last(List<String> lines) {
        return lines.get(lines.size() - 1);
    }

    /** Whether nothing changes. */
    public boolean isNone() {
        return taken.isEmpty() && put.isEmpty();
    }
}
