package gudgeon.rebuild.plan;

import java.util.List;

/** Amounts and lists as the sentences of this room say them. */
final class Amount {
    private static final int HOUR = 60;

    private Amount() {}

    /** A number with what it counts, such as "1 step" or "3 steps". */
    static String of(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** A time of work, such as "45 min", "2 h" or "2 h 5 min". */
    static String time(long minutes) {
        if (minutes < HOUR) {
            return minutes + " min";
        }
        return minutes / HOUR + " h" + (minutes % HOUR == 0 ? "" : " " + minutes % HOUR + " min");
    }

    /** Several things in one sentence, such as "a, b and c". */
    static String list(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** With a capital letter, as a sentence begins. */
    static String sentence(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
