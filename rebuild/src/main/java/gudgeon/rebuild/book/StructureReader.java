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
        List<Joint> joints = book.list("joints", false).stream()
                .map(new JointReader(faults, ids)::joint)
                .toList();
        List<Step> steps = book.list("steps", false).stream().map(this::step).toList();
        List<Check> checks =
                book.list("checks", false).stream().map(this::check).toList();
        DimensionReader measured = new DimensionReader(faults, ids);
        List<Dimension> dimensions =
                book.list("dimensions", false).stream().map(measured::dimension).toList();
        List<FamilyMember> family =
                book.list("family", false).stream().map(measured::member).toList();
        ids.tellUnknown();
        return new Structure(positions, joints, steps, checks, dimensions, family);
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
                seatFit(fields),
                fields.text("bearing"),
                oversizes(fields),
                fields.text("note"),
                fields.where());
    }

    private Optional<SeatFit> seatFit(Fields fields) {
        if (!fields.has("fit")) {
            return Optional.empty();
        }
        Fields fit = fields.block("fit", "");
        OptionalDouble warmest = fit.has("warmest")
                ? sized(fit.text("warmest"), Unit.CELSIUS, fit.where("warmest"), fit.at("warmest"))
                : OptionalDouble.empty();
        return Optional.of(new SeatFit(fit.text("size"), fit.text("part"), fit.text("into"), warmest));
    }

    private List<Double> oversizes(Fields fields) {
        List<Double> sizes = new ArrayList<>();
        for (Reference written : fields.references("oversizes")) {
            sized(written.id(), Unit.MM, written.where(), fields.at("oversizes"))
                    .ifPresent(sizes::add);
        }
        return sizes;
    }

    private OptionalDouble sized(String text, Unit unit, Where where, String path) {
        String sentence = "'" + Words.shortened(text) + "' is not in " + unit.symbol() + ".";
        try {
            SizeText size = SizeText.of(text);
            if (size.unit().orElse(unit) == unit && size.value() > 0) {
                return OptionalDouble.of(size.value());
            }
        } catch (SizeText.NotASize fault) {
            sentence = fault.sentence();
        }
        faults.fault(where, path, sentence, "Write a number above 0 in " + unit.symbol() + ".");
        return OptionalDouble.empty();
    }

    private static boolean yes(Fields fields, String key) {
        return fields.word(key).map("true"::equals).orElse(false);
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
                new SpanReader(faults).at(fields, "expect"),
                fields.text("late"),
                fields.texts("tools"),
                fields.whole("minutes").orElse(0),
                fields.texts("cautions"),
                fields.where());
    }

    private List<String> named(Fields fields, String key, StructureIds.Kind... kinds) {
        return ids.named(fields.references(key), fields.at(key), kinds);
    }
}
