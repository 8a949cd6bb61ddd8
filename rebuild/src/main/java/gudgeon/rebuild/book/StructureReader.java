package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Check.How;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the book's second part: positions, joints, steps, checks, dimensions. What they name is checked once all are known. */
final class StructureReader {
    private final Fields book;
    private final Faults faults;
    private final StructureIds ids;

    StructureReader(Fields book, Faults faults) {
        this.book = book;
        this.faults = faults;
        this.ids = new StructureIds(faults);
    }

    Structure read() {
        List<Position> positions =
                book.list("positions", false).stream().map(this::position).toList();
        List<Joint> joints =
                book.list("joints", false).stream().map(this::joint).toList();
        List<Step> steps = book.list("steps", false).stream().map(this::step).toList();
        List<Check> checks =
                book.list("checks", false).stream().map(this::check).toList();
        List<Dimension> dimensions =
                book.list("dimensions", false).stream().map(this::dimension).toList();
        ids.tellUnknown();
        return new Structure(positions, joints, steps, checks, dimensions);
    }

    private Position position(Fields fields) {
        return new Position(
                ids.own(fields, StructureIds.Kind.POSITION),
                fields.text("name"),
                fields.whole("quantity").orElse(1),
                fields.words("space").stream()
                        .map(word -> Space.valueOf(word.toUpperCase(Locale.ROOT)))
                        .toList(),
                yes(fields, "single-use"),
                yes(fields, "critical"),
                fields.text("mark"),
                fields.texts("compare"),
                fields.text("sizes"),
                fields.optionalSize("pressed"),
                fields.text("note"),
                fields.where());
    }

    private static boolean yes(Fields fields, String key) {
        return fields.word(key).map("true"::equals).orElse(false);
    }

    private Joint joint(Fields fields) {
        String id = ids.own(fields, StructureIds.Kind.JOINT);
        List<Joint.Hole> holes = fields.list("holes", false).stream()
                .map(hole -> new Joint.Hole(
                        hole.id(),
                        hole.text("thread"),
                        hole.optionalSize("length"),
                        hole.optionalSize("depth"),
                        yes(hole, "through"),
                        hole.text("note")))
                .toList();
        return new Joint(id, fields.text("name"), fields.text("order"), fields.text("note"), holes, fields.where());
    }

    private Step step(Fields fields) {
        return new Step(
                ids.own(fields, StructureIds.Kind.STEP),
                fields.text("name"),
                fields.texts("do"),
                named(fields, "fits", StructureIds.Kind.POSITION),
                named(fields, "into", StructureIds.Kind.POSITION),
                named(fields, "needs", StructureIds.Kind.STEP),
                named(fields, "covers", StructureIds.Kind.POSITION),
                named(fields, "tightens", StructureIds.Kind.JOINT),
                fields.texts("oil"),
                fields.texts("grease"),
                fields.texts("sealant"),
                fields.texts("tools"),
                fields.whole("minutes").orElse(0),
                fields.whole("sets").orElse(0),
                fields.texts("cautions"),
                fields.where());
    }

    private Check check(Fields fields) {
        List<Reference> disturbs = new ArrayList<>(fields.references("disturbed-by"));
        boolean blasting = disturbs.removeIf(reference -> reference.id().equals(StructureForms.BLASTING));
        return new Check(
                ids.own(fields, StructureIds.Kind.CHECK),
                fields.text("name"),
                fields.word("how")
                        .map(word -> How.valueOf(word.toUpperCase(Locale.ROOT)))
                        .orElse(How.SEEN),
                fields.texts("do"),
                named(fields, "clears", StructureIds.Kind.POSITION, StructureIds.Kind.STEP),
                named(fields, "with", StructureIds.Kind.POSITION),
                named(fields, "needs", StructureIds.Kind.STEP),
                named(fields, "after", StructureIds.Kind.CHECK),
                ids.named(disturbs, fields.at("disturbed-by"), StructureIds.Kind.POSITION, StructureIds.Kind.STEP),
                blasting,
                named(fields, "holds", StructureIds.Kind.STEP),
                fields.has("expect") ? wanted(fields.block("expect", "")) : Optional.empty(),
                fields.text("late"),
                fields.texts("tools"),
                fields.whole("minutes").orElse(0),
                fields.texts("cautions"),
                fields.where());
    }

    private Dimension dimension(Fields fields) {
        String id = ids.own(fields, StructureIds.Kind.DIMENSION);
        List<String> of = named(fields, "of", StructureIds.Kind.POSITION);
        return new Dimension(
                id,
                fields.text("name"),
                of.isEmpty() ? "" : of.get(0),
                fields.text("how"),
                fields.text("with"),
                expect(fields),
                fields.text("note"),
                fields.where());
    }

    private List<String> named(Fields fields, String key, StructureIds.Kind... kinds) {
        return ids.named(fields.references(key), fields.at(key), kinds);
    }

    /** The span of a block that is there to state one. */
    private Optional<Expect> wanted(Fields fields) {
        if (!fields.has("at-least") && !fields.has("at-most")) {
            faults.fault(
                    fields.where(),
                    fields.at("at-least"),
                    "The span states neither 'at-least' nor 'at-most'.",
                    "Write one of them or both, or leave 'expect' out where only the maker knows.");
        }
        return expect(fields);
    }

    /** The span that the keys at-least and at-most state, if either is there. */
    private Optional<Expect> expect(Fields fields) {
        Optional<SizeText> least = limit(fields, "at-least");
        Optional<SizeText> most = limit(fields, "at-most");
        if (least.isEmpty() && most.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = least.or(() -> most).flatMap(SizeText::unit).orElse(Unit.MM);
        boolean alike = most.map(size -> size.unit().orElse(Unit.MM) == unit).orElse(true);
        boolean turned = least.isPresent()
                && most.isPresent()
                && least.get().value() > most.get().value();
        if (!alike || turned) {
            faults.fault(
                    fields.where("at-most"),
                    fields.at("at-most"),
                    alike ? "'at-least' is more than 'at-most'." : "'at-least' and 'at-most' are in different units.",
                    "Check both figures and their units.");
        }
        return Optional.of(new Expect(value(least), value(most), unit));
    }

    private static OptionalDouble value(Optional<SizeText> size) {
        return size.map(text -> OptionalDouble.of(text.value())).orElse(OptionalDouble.empty());
    }

    private Optional<SizeText> limit(Fields fields, String key) {
        String text = fields.text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(SizeText.of(text));
        } catch (SizeText.NotASize fault) {
            faults.fault(
                    fields.where(key),
                    fields.at(key),
                    fault.sentence(),
                    "Write a number with its unit, such as '0.05'.");
            return Optional.empty();
        }
    }
}
