package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the book's joints and their holes. */
final class JointReader {
    private final Faults faults;
    private final StructureIds ids;

    JointReader(Faults faults, StructureIds ids) {
        this.faults = faults;
        this.ids = ids;
    }

    Joint joint(Fields fields) {
        String id = ids.own(fields, StructureIds.Kind.JOINT);
        List<Fields> entries = fields.list("holes", false);
        List<Hole> holes = entries.stream().map(this::hole).toList();
        List<Point> outline = outline(fields);
        new HoleFaults(faults, entries, holes).tell(outline);
        return new Joint(
                id,
                fields.text("name"),
                fields.text("order"),
                sequence(fields, holes),
                fields.word("shape").map(word -> Joint.Shape.valueOf(word.toUpperCase(Locale.ROOT))),
                outline,
                fields.optionalSize("torque"),
                fields.word("lubricated").map(word -> Lubrication.valueOf(word.toUpperCase(Locale.ROOT))),
                fields.whole("passes"),
                yes(fields, "gasket"),
                yes(fields, "warps"),
                fields.text("again"),
                fields.text("note"),
                holes,
                fields.where());
    }

    private Hole hole(Fields fields) {
        return new Hole(
                fields.id(),
                fields.has("at") ? point(fields.entry("at"), fields.at("at")) : Optional.empty(),
                fields.word("kind")
                        .map(word ->
                                Hole.Kind.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')))
                        .orElse(Hole.Kind.SCREW),
                fields.text("thread"),
                fields.text("class"),
                fields.text("head"),
                fields.optionalSize("length"),
                fields.optionalSize("stack"),
                fields.optionalSize("depth"),
                yes(fields, "through"),
                yes(fields, "dowel"),
                fields.word("behind").map(word -> Space.valueOf(word.toUpperCase(Locale.ROOT))),
                fields.optionalSize("room"),
                fields.text("into"),
                yes(fields, "left-hand"),
                fields.optionalSize("torque"),
                fields.text("note"));
    }

    private static boolean yes(Fields fields, String key) {
        return fields.word(key).map("true"::equals).orElse(false);
    }

    /** The maker's order; it names every hole once, or it is no order. */
    private List<String> sequence(Fields fields, List<Hole> holes) {
        List<String> sequence = fields.texts("sequence");
        List<String> all = holes.stream().map(Hole::id).sorted().toList();
        if (!sequence.isEmpty() && !sequence.stream().sorted().toList().equals(all)) {
            faults.fault(
                    fields.where("sequence"),
                    fields.at("sequence"),
                    "The order of tightening does not name each hole of the joint once.",
                    "Name each of its " + all.size() + " holes once, in the maker's order.");
            return List.of();
        }
        return sequence;
    }

    private List<Point> outline(Fields fields) {
        List<Point> corners = new ArrayList<>();
        if (!fields.has("outline")) {
            return corners;
        }
        Node entry = fields.entry("outline");
        List<Node> items = entry instanceof Node.Items several ? several.items() : List.of();
        items.forEach(item -> point(item, fields.at("outline")).ifPresent(corners::add));
        if (items.size() < 3) {
            faults.fault(
                    entry.where(),
                    fields.at("outline"),
                    "An outline has three corners or more.",
                    "Write it as [[0, 0], [80, 0], [80, 60]], in mm.");
        }
        return corners;
    }

    private Optional<Point> point(Node entry, String path) {
        if (entry instanceof Node.Items pair
                && pair.items().size() == 2
                && pair.items().get(0) instanceof Node.Text x
                && pair.items().get(1) instanceof Node.Text y) {
            try {
                return Optional.of(new Point(mm(x), mm(y)));
            } catch (SizeText.NotASize fault) {
                faults.fault(entry.where(), path, fault.sentence(), "Write it as [6.0, 8.5], in mm.");
                return Optional.empty();
            }
        }
        faults.fault(
                entry.where(),
                path,
                "Here stands " + entry.kind() + ", where a point is wanted.",
                "Write it as [6.0, 8.5], to the right and upwards in mm, seen from outside.");
        return Optional.empty();
    }

    private static double mm(Node.Text text) throws SizeText.NotASize {
        SizeText size = SizeText.of(text.text());
        if (size.unit().orElse(Unit.MM) != Unit.MM) {
            throw new SizeText.NotASize("'" + Words.shortened(text.text()) + "' is no length.");
        }
        return size.value();
    }
}
