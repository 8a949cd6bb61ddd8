package gudgeon.rebuild.book;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Checks the keys of a block of the file against its form: unknown, repeated, missing, and those that do not go together. */
final class FormCheck {
    private final Form form;
    private final Node.Block block;
    private final String path;
    private final Faults faults;
    private final Map<String, Node> entries = new LinkedHashMap<>();

    private FormCheck(Form form, Node.Block block, String path, Faults faults) {
        this.form = form;
        this.block = block;
        this.path = path;
        this.faults = faults;
    }

    /** The entries of the block at the keys that are known, its faults told. */
    static Map<String, Node> entries(Form form, Node.Block block, String path, Set<String> others, Faults faults) {
        FormCheck check = new FormCheck(form, block, path, faults);
        check.take(others);
        check.checkPresent();
        return check.entries;
    }

    private String at(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private void take(Set<String> others) {
        Set<String> known = new LinkedHashSet<>(form.names());
        known.addAll(others);
        Map<String, Where> first = new LinkedHashMap<>();
        for (Node.Pair pair : block.pairs()) {
            String key = pair.key();
            Where before = first.putIfAbsent(key, pair.keyWhere());
            if (before != null) {
                faults.fault(
                        pair.keyWhere(),
                        at(Words.shortened(key)),
                        "The key '" + Words.shortened(key) + "' stands here again, first on line " + before.line()
                                + ".",
                        "Keep one of the two.");
            } else if (known.contains(key)) {
                entries.put(key, pair.entry());
            } else {
                unknown(pair, known);
            }
        }
    }

    private void unknown(Node.Pair pair, Set<String> known) {
        String key = Words.shortened(pair.key());
        if (pair.key().strip().matches("\\d+.*")
                && pair.entry() instanceof Node.Text text
                && text.text().isEmpty()) {
            faults.fault(
                    pair.keyWhere(),
                    path,
                    "'" + key + "' stands alone after a comma between braces; a decimal comma does not work there.",
                    "Put the size in quotes or write a decimal point.");
            return;
        }
        String expected = Words.nearest(pair.key(), known)
                .map(near -> "Did you mean '" + near + "'?")
                .orElse("Known here: " + String.join(", ", known) + ".");
        faults.fault(pair.keyWhere(), at(key), "'" + key + "' is not a key of " + article(form.name()) + ".", expected);
    }

    private void checkPresent() {
        for (Form.Key key : form.keys()) {
            if (key.required() && !entries.containsKey(key.name())) {
                missing(key);
            }
        }
        List<Form.Way> begun = form.ways().stream()
                .filter(way -> entries.containsKey(way.lead()))
                .toList();
        if (begun.size() == 1) {
            Form.Way way = begun.get(0);
            way.needed().stream()
                    .filter(name -> !entries.containsKey(name))
                    .forEach(name -> missing(form.key(name).orElseThrow()));
            for (String name : entries.keySet()) {
                if (!way.uses(name)) {
                    Node entry = entries.getOrDefault(name, Fields.nothing());
                    faults.fault(
                            entry.where(),
                            at(name),
                            "'" + name + "' does not go with '" + way.lead() + "' in " + article(form.name()) + ".",
                            "Take one of them out.");
                }
            }
        } else if (!form.ways().isEmpty()) {
            String leads = String.join(
                    "' or '", form.ways().stream().map(Form.Way::lead).toList());
            faults.fault(
                    block.where(),
                    path,
                    (begun.isEmpty()
                                    ? "It is not said which kind of "
                                    : "It is said in more than one way which kind of ")
                            + form.name() + " this is.",
                    "Write one of '" + leads + "'.");
        }
    }

    private void missing(Form.Key key) {
        faults.fault(
                block.where(),
                path,
                "The " + form.name() + " has no '" + key.name() + "'.",
                "Add it: " + key.description());
    }

    private static String article(String name) {
        return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }
}
