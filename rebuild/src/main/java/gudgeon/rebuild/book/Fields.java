package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A block of the file read by its form. Whatever is wrong is told once; what could not be read is stood in for, so that reading
 * goes on and finds the rest.
 */
final class Fields {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");

    private final Form form;
    private final String path;
    private final String subject;
    private final Where where;
    private final Map<String, Node> entries = new LinkedHashMap<>();
    private final SizeReader sizes;
    private final Faults faults;

    /**
     * Reads a block.
     *
     * @param entry what stands where the block is wanted
     * @param path its path, empty for the whole book
     * @param subject what its sizes are of, such as "exhaust pocket", may be empty
     * @param others keys that are allowed beside the form's
     */
    Fields(Form form, Node entry, String path, String subject, Set<String> others, SizeReader sizes) {
        this.form = form;
        this.path = path;
        this.subject = subject;
        this.where = entry.where();
        this.sizes = sizes;
        this.faults = sizes.faults();
        if (entry instanceof Node.Block block) {
            entries.putAll(FormCheck.entries(form, block, path, others, faults));
        } else if (where.line() > 0) {
            faults.fault(
                    where,
                    path,
                    "Here stands " + entry.kind() + ", where a block of keys is wanted.",
                    "Write one key a line, indented: " + String.join(", ", form.names()) + ".");
        }
    }

    Fields(Form form, Node entry, String path, String subject, SizeReader sizes) {
        this(form, entry, path, subject, Set.of(), sizes);
    }

    /** The same block, its sizes read by another reader. */
    Fields with(SizeReader reader) {
        return new Fields(form, path, subject, where, entries, reader);
    }

    private Fields(Form form, String path, String subject, Where where, Map<String, Node> entries, SizeReader sizes) {
        this.form = form;
        this.path = path;
        this.subject = subject;
        this.where = where;
        this.sizes = sizes;
        this.faults = sizes.faults();
        this.entries.putAll(entries);
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    Where where() {
        return where;
    }

    Where where(String key) {
        Node entry = entries.get(key);
        return entry == null ? where : entry.where();
    }

    String at(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** The size at a key, or a stand-in. */
    Size size(String key) {
        return sized(key, entries.getOrDefault(key, nothing()));
    }

    /** The size at a key, if one stands there. */
    Optional<Size> optionalSize(String key) {
        return Optional.ofNullable(entries.get(key)).map(entry -> sized(key, entry));
    }

    private Size sized(String name, Node entry) {
        Form.Key key = form.key(name).orElseThrow();
        String label = subject.isEmpty() ? key.label() : subject + " " + key.label();
        return sizes.read(entry, at(name), label, (Value.OfSize) key.value());
    }

    /** The opening or closing angle at a key, or a stand-in. */
    Size event(String name, ValveEntry.Kind kind, boolean opens) {
        Form.Key key = form.key(name).orElseThrow();
        return new EventReader(sizes)
                .read(entries.getOrDefault(name, nothing()), at(name), subject + " " + key.label(), kind, opens);
    }

    /** The text at a key; empty if there is none. */
    String text(String key) {
        Node entry = entries.get(key);
        if (entry == null) {
            return "";
        }
        if (entry instanceof Node.Text text && !(text.text().isBlank() && required(key))) {
            return text.text().strip();
        }
        faults.fault(
                entry.where(),
                at(key),
                "Here stands " + entry.kind() + ", where text is wanted.",
                "Write it on one line.");
        return "";
    }

    /** The sentences at a key: a list of them, or one that stands alone; none if there is none. */
    List<String> texts(String key) {
        return references(key).stream().map(Reference::id).toList();
    }

    /** The ids at a key with their places: a list of them, or one that stands alone; none if there is none. */
    List<Reference> references(String key) {
        Node entry = entry(key);
        List<Reference> found = new ArrayList<>();
        for (Node item : entry instanceof Node.Items items ? items.items() : List.of(entry)) {
            if (item instanceof Node.Text text) {
                if (!text.text().isBlank()) {
                    found.add(new Reference(text.text().strip(), text.where()));
                }
            } else {
                faults.fault(
                        item.where(),
                        at(key),
                        "Here stands " + item.kind() + ", where text is wanted.",
                        "Put a text that holds ': ' or '#' in quotes.");
            }
        }
        return found;
    }

    /** The words at a key, each one of those allowed. */
    List<String> words(String name) {
        List<String> allowed = ((Value.OfWords) form.key(name).orElseThrow().value()).words();
        List<String> words = new ArrayList<>();
        for (Reference word : references(name)) {
            if (allowed.contains(word.id())) {
                words.add(word.id());
            } else {
                faults.fault(
                        word.where(),
                        at(name),
                        "Here stands '" + Words.shortened(word.id()) + "'.",
                        "Write " + String.join(", ", allowed) + ": one or more of these.");
            }
        }
        return words;
    }

    private boolean required(String key) {
        return form.key(key).map(Form.Key::required).orElse(false);
    }

    /** The id of this block, or a stand-in. */
    String id() {
        String id = text("id");
        if (!id.isEmpty()) {
            Blocks.checkId(id, where("id"), at("id"), faults);
        }
        return id.isEmpty() ? "?" : id;
    }

    /** The word at a key, if it is one of those allowed. */
    Optional<String> word(String name) {
        Node entry = entries.get(name);
        if (entry == null) {
            return Optional.empty();
        }
        List<String> words = ((Value.OfWord) form.key(name).orElseThrow().value()).words();
        if (entry instanceof Node.Text text && words.contains(text.text().strip())) {
            return Optional.of(text.text().strip());
        }
        String near = entry instanceof Node.Text text
                ? Words.nearest(text.text(), words)
                        .map(word -> "Did you mean '" + word + "'? ")
                        .orElse("")
                : "";
        faults.fault(
                entry.where(),
                at(name),
                "Here stands " + entry.kind() + ".",
                near + "Write " + String.join(", ", words) + (words.size() > 1 ? ": one of these." : "."));
        return Optional.empty();
    }

    /** The whole number at a key, if it is one in its span. */
    OptionalInt whole(String name) {
        Node entry = entries.get(name);
        if (entry == null) {
            return OptionalInt.empty();
        }
        Value.OfWhole span = (Value.OfWhole) form.key(name).orElseThrow().value();
        if (entry instanceof Node.Text text
                && WHOLE.matcher(text.text().strip()).matches()) {
            int number = Integer.parseInt(text.text().strip());
            if (number >= span.low() && number <= span.high()) {
                return OptionalInt.of(number);
            }
        }
        faults.fault(
                entry.where(),
                at(name),
                "Here stands " + entry.kind() + ".",
                span.low() == span.high()
                        ? "Write " + span.low() + "."
                        : "Write a whole number from " + span.low() + " to " + span.high() + ".");
        return OptionalInt.empty();
    }

    /** The entry at a key; one that says nothing more about itself if there is none. */
    Node entry(String key) {
        return entries.getOrDefault(key, nothing());
    }

    /** The block at a key, for a form of its own. */
    Fields block(String key, String blockSubject) {
        Value.OfBlock value = (Value.OfBlock) form.key(key).orElseThrow().value();
        return new Fields(value.form(), entry(key), at(key), blockSubject, sizes);
    }

    /** The blocks of a list, each under its id; ids that are used twice are told. */
    List<Fields> list(String name, boolean idInSubject) {
        Form of = ((Value.OfList) form.key(name).orElseThrow().value()).form();
        return new Blocks(of, name, at(name), sizes).listed(entry(name), idInSubject);
    }

    /** The blocks at a key, by their names. */
    Map<String, Fields> named(String name) {
        Form of = ((Value.OfNamed) form.key(name).orElseThrow().value()).form();
        return new Blocks(of, name, at(name), sizes).named(entry(name));
    }

    /** Stands for what is missing; line 0 says that it is not in the file. */
    static Node nothing() {
        return new Node.Text("", new Where(0, 0));
    }
}
