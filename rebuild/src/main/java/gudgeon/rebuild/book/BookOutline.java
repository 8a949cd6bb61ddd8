package gudgeon.rebuild.book;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML into entries that know their line. What a book has no use for is refused as it is met, before anything is built of
 * it: aliases (which can make a short file endless), tags, several documents, deep nesting, keys that are not words.
 */
final class BookOutline {
    private static final int DEEPEST = 20;

    private final String text;
    private final Faults faults;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Node root;
    private int documents;

    private BookOutline(String text, Faults faults) {
        this.text = text;
        this.faults = faults;
    }

    /** The file's content; empty with its faults told if it is not to be read further. */
    static Optional<Node> of(String text, Faults faults) {
        BookOutline outline = new BookOutline(text, faults);
        return outline.read() ? Optional.ofNullable(outline.root) : Optional.empty();
    }

    private boolean read() {
        try {
            Iterator<Event> events =
                    new Parse(LoadSettings.builder().build()).parseString(text).iterator();
            while (events.hasNext()) {
                if (!take(events.next())) {
                    return false;
                }
            }
        } catch (YamlEngineException e) {
            YamlFaults.tell(e, text, faults);
            return false;
        }
        if (root == null) {
            faults.ofFile(
                    "The file holds no keys.", "Start it with 'book: 1', then 'engine:', see docs/engine-book.md.");
            return false;
        }
        return true;
    }

    /** Takes the next event; false if the rest is not to be read. */
    private boolean take(Event event) {
        Where where = where(event);
        return switch (event.getEventId()) {
            case DocumentStart -> first(where);
            case Alias ->
                refuse(
                        where,
                        "The alias *"
                                + Words.shortened(
                                        ((AliasEvent) event).getAlias().getValue())
                                + " points to another place of the file, which an engine book does not use.",
                        "Write the value out here.");
            case Scalar ->
                untagged(((ScalarEvent) event).getTag(), where)
                        && put(new Node.Text(scalar((ScalarEvent) event), where));
            case SequenceStart, MappingStart -> begin((CollectionStartEvent) event, where);
            case SequenceEnd, MappingEnd -> end();
            default -> true;
        };
    }

    private boolean first(Where where) {
        documents++;
        return documents == 1
                || refuse(
                        where,
                        "A second document begins here with '---', but a file holds one engine book.",
                        "Take the line out, or put the second book into a file of its own.");
    }

    private boolean untagged(Optional<String> tag, Where where) {
        return tag.isEmpty()
                || refuse(
                        where,
                        "The tag " + Words.shortened(tag.get()) + " is not used in an engine book.",
                        "Leave out the word that begins with '!'; put text that begins with '!' in quotes.");
    }

    private boolean begin(CollectionStartEvent event, Where where) {
        if (open.size() >= DEEPEST) {
            return refuse(
                    where,
                    "Entries stand inside each other more than " + DEEPEST + " deep, which no engine book needs.",
                    "Check the brackets and the indentation here.");
        }
        if (!untagged(event.getTag(), where)) {
            return false;
        }
        Open parent = open.peek();
        if (parent != null && parent.wantsKey()) {
            return refuse(
                    where,
                    "A list or block stands here as a key, where a word is wanted.",
                    "Write a key, a colon and a space, then the value.");
        }
        open.push(new Open(event.getEventId() == Event.ID.MappingStart, where));
        return true;
    }

    private boolean end() {
        return put(open.pop().closed());
    }

    private boolean put(Node entry) {
        Open parent = open.peek();
        if (parent == null) {
            root = entry;
        } else {
            parent.take(entry);
        }
        return true;
    }

    private boolean refuse(Where where, String what, String expected) {
        faults.fault(where, "", what, expected);
        return false;
    }

    private static String scalar(ScalarEvent event) {
        String value = event.getValue();
        return event.isPlain() && (value.equals("~") || value.equals("null")) ? "" : value;
    }

    private static Where where(Event event) {
        return event.getStartMark().map(BookOutline::where).orElse(new Where(1, 1));
    }

    static Where where(Mark mark) {
        return new Where(mark.getLine() + 1, mark.getColumn() + 1);
    }

    /** A list or block whose end is still to come. */
    private static final class Open {
        private final boolean block;
        private final Where where;
        private final List<Node> items = new ArrayList<>();
        private final List<Node.Pair> pairs = new ArrayList<>();
        private Node.@Nullable Text key;

        Open(boolean block, Where where) {
            this.block = block;
            this.where = where;
        }

        boolean wantsKey() {
            return block && key == null;
        }

        void take(Node entry) {
            Node.Text named = key;
            if (!block) {
                items.add(entry);
            } else if (named != null) {
                pairs.add(new Node.Pair(named.text(), named.where(), entry));
                key = null;
            } else if (entry instanceof Node.Text word) {
                key = word;
            }
        }

        Node closed() {
            return block ? new Node.Block(pairs, where) : new Node.Items(items, where);
        }
    }
}
