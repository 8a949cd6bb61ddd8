package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Several blocks of one form, as a key holds them. */
final class Blocks {
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,39}");

    private final Form of;
    private final String name;
    private final String path;
    private final SizeReader sizes;
    private final Faults faults;

    /**
     * The blocks of a key.
     *
     * @param of the form of each
     * @param name the key
     * @param path the key's path
     */
    Blocks(Form of, String name, String path, SizeReader sizes) {
        this.of = of;
        this.name = name;
        this.path = path;
        this.sizes = sizes;
        this.faults = sizes.faults();
    }

    /** The blocks of a list, each under its id; ids that are used twice are told. */
    List<Fields> listed(Node entry, boolean idInSubject) {
        if (!(entry instanceof Node.Items items)) {
            if (entry.where().line() > 0) {
                faults.fault(
                        entry.where(),
                        path,
                        "Here stands " + entry.kind() + ", where a list is wanted.",
                        "Begin each " + of.name() + " with '- id: ' and indent its keys.");
            }
            return List.of();
        }
        if (items.items().isEmpty()) {
            faults.fault(
                    items.where(), path, "The list of " + name + " is empty.", "Add one " + of.name() + " or more.");
        }
        List<Fields> blocks = new ArrayList<>();
        Map<String, Where> ids = new LinkedHashMap<>();
        for (Node item : items.items()) {
            String id = idOf(item).orElse(String.valueOf(blocks.size() + 1));
            String shown = Words.shortened(id);
            blocks.add(new Fields(of, item, path + "." + shown, idInSubject ? shown + " " + of.name() : "", sizes));
            Where before = ids.putIfAbsent(id, item.where());
            if (before != null) {
                faults.fault(
                        item.where(),
                        path,
                        "The id '" + shown + "' is used again, first on line " + before.line() + ".",
                        "Give each " + of.name() + " an id of its own.");
            }
        }
        return blocks;
    }

    private static Optional<String> idOf(Node item) {
        return item instanceof Node.Block block
                ? block.pairs().stream()
                        .filter(pair -> pair.key().equals("id"))
                        .map(Node.Pair::entry)
                        .filter(Node.Text.class::isInstance)
                        .map(entry -> ((Node.Text) entry).text().strip())
                        .filter(id -> !id.isEmpty())
                        .findFirst()
                : Optional.empty();
    }

    /** The blocks of a block, by their names. */
    Map<String, Fields> named(Node entry) {
        Map<String, Fields> blocks = new LinkedHashMap<>();
        if (entry instanceof Node.Block block) {
            for (Node.Pair pair : block.pairs()) {
                String id = Words.shortened(pair.key());
                checkId(pair.key(), pair.keyWhere(), path, faults);
                Fields fields = new Fields(of, pair.entry(), path + "." + id, id + " " + of.name(), sizes);
                if (blocks.putIfAbsent(pair.key(), fields) != null) {
                    faults.fault(
                            pair.keyWhere(),
                            path + "." + id,
                            "The key '" + id + "' stands here again.",
                            "Keep one of the two.");
                }
            }
        } else if (entry.where().line() > 0) {
            faults.fault(
                    entry.where(),
                    path,
                    "Here stands " + entry.kind() + ", where a block of keys is wanted.",
                    "Write the name of each " + of.name() + ", a colon, and its keys indented below.");
        }
        return blocks;
    }

    /** Tells an id that could be mistaken for something else. */
    static void checkId(String id, Where where, String path, Faults faults) {
        if (!ID.matcher(id).matches()) {
            faults.fault(
                    where,
                    path,
                    "'" + Words.shortened(id) + "' can't be used as an id.",
                    "Use letters, digits and hyphens only, such as 'pattern-2'.");
        }
    }
}
