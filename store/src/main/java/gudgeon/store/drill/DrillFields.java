package gudgeon.store.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Takes the fields out of a drill's description. A value that can't be used is told as a sentence, and stands in as an empty one.
 *
 * @param of the fields
 * @param where what the sentences call it
 * @param sentences takes what is wrong
 */
record DrillFields(Map<?, ?> of, String where, List<String> sentences) {
    String said(String key) {
        Object value = of.get(key);
        if (value == null || value.toString().isBlank()) {
            fault("'" + key + "' is missing. Say it");
            return "";
        }
        return value.toString();
    }

    int whole(String key) {
        if (of.get(key) instanceof Integer number && number > 0) {
            return number;
        }
        fault("'" + key + "' is no number of an entry. Count the lines of the journal from 1");
        return 1;
    }

    double number(String key) {
        if (of.get(key) instanceof Number number) {
            return number.doubleValue();
        }
        fault("'" + key + "' is no number. Write it with a point, without its unit");
        return 0;
    }

    /** What is inside, nothing where it is left out. */
    DrillFields inside(String key) {
        Object value = of.get(key);
        if (value != null && !(value instanceof Map<?, ?>)) {
            fault("'" + key + "' is not a list of names and values. Write it as {name: value}");
        }
        return new DrillFields(value instanceof Map<?, ?> map ? map : Map.of(), where + ", '" + key + "'", sentences);
    }

    /** A list, empty where it is left out. */
    List<?> list(String key) {
        Object value = of.get(key);
        if (value == null) {
            return List.of();
        }
        if (value instanceof List<?> list) {
            return list;
        }
        fault("'" + key + "' is no list. Write it in square brackets");
        return List.of();
    }

    /** The members of a list, each with fields. */
    List<DrillFields> each(String key) {
        List<DrillFields> all = new ArrayList<>();
        for (Object member : list(key)) {
            if (member instanceof Map<?, ?> map) {
                all.add(new DrillFields(map, where + ", '" + key + "'", sentences));
            } else {
                fault("'" + key + "' holds " + member + ". Write each as {entry: 4, field: value, from: 1.0, to: 2.0}");
            }
        }
        return all;
    }

    void known(Set<String> keys) {
        of.keySet().stream()
                .map(Objects::toString)
                .filter(key -> !keys.contains(key))
                .forEach(key -> fault("'" + key + "' is not known. Use "
                        + new TreeSet<>(keys).stream().collect(Collectors.joining(", "))));
    }

    void fault(String what) {
        sentences.add(where + ": " + what + ".");
    }
}
