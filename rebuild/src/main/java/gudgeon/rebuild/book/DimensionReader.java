package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Derivation.As;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the book's dimensions, and the sizes that the family's engines have of them. */
final class DimensionReader {
    private final Faults faults;
    private final StructureIds ids;
    private final SpanReader spans;

    DimensionReader(Faults faults, StructureIds ids) {
        this.faults = faults;
        this.ids = ids;
        this.spans = new SpanReader(faults);
    }

    Dimension dimension(Fields fields) {
        String id = ids.own(fields, StructureIds.Kind.DIMENSION);
        List<String> of = named(fields, "of", StructureIds.Kind.POSITION);
        Optional<Expect> usual = spans.at(fields, "usual");
        Optional<Expect> standard = spans.at(fields, "new");
        Optional<Expect> service = spans.of(fields);
        Unit unit = unit(fields, service.or(() -> standard).or(() -> usual));
        for (String key : List.of("usual", "new", "at-least", "at-most")) {
            Optional<Expect> span = key.equals("usual") ? usual : key.equals("new") ? standard : service;
            if (fields.has(key) && span.filter(known -> known.unit() != unit).isPresent()) {
                faults.fault(
                        fields.where(key),
                        fields.at(key),
                        "'" + key + "' is in " + span.orElseThrow().unit().symbol() + ", the dimension in "
                                + unit.symbol() + ".",
                        "Write all of them in one unit, or say the right one at 'unit'.");
            }
        }
        return new Dimension(
                id,
                fields.text("name"),
                of.isEmpty() ? "" : of.get(0),
                fields.text("key"),
                fields.text("how"),
                fields.text("with"),
                places(fields),
                fields.whole("pieces").orElse(1),
                unit,
                usual,
                standard,
                service,
                derivation(fields),
                fields.word("inspect").map("true"::equals).orElse(false),
                fields.text("note"),
                fields.where());
    }

    private static Unit unit(Fields fields, Optional<Expect> span) {
        return fields.word("unit")
                .flatMap(word -> Optional.ofNullable(StructureForms.UNITS.get(word)))
                .or(() -> span.map(Expect::unit))
                .orElse(Unit.MM);
    }

    private Places places(Fields fields) {
        List<String> places = fields.texts("places");
        List<String> heights = fields.texts("heights");
        if (!places.isEmpty() && (!heights.isEmpty() || fields.has("axes"))) {
            faults.fault(
                    fields.where("places"),
                    fields.at("places"),
                    "'places' does not go with 'heights' and 'axes'.",
                    "Write either places, or heights and axes.");
        }
        return new Places(places.isEmpty() ? heights : places, fields.texts("axes"));
    }

    private Optional<Derivation> derivation(Fields fields) {
        if (!fields.has("derived")) {
            return Optional.empty();
        }
        Fields derived = fields.block("derived", "");
        List<String> of = new ArrayList<>();
        // what it is worked out of may be one dimension twice, so these are not made one
        derived.references("of").forEach(reference -> of.add(reference.id()));
        named(derived, "of", StructureIds.Kind.DIMENSION);
        return derived.word("as")
                .map(word -> As.valueOf(word.toUpperCase(Locale.ROOT)))
                .map(as -> {
                    if (!as.takes(of.size())) {
                        faults.fault(
                                derived.where(),
                                derived.at("of"),
                                "This is worked out of " + as.counts() + ", and " + of.size() + " stand here.",
                                "Name as many dimensions as the rule takes.");
                    }
                    return new Derivation(as, of);
                });
    }

    FamilyMember member(Fields fields) {
        return new FamilyMember(
                ids.own(fields, StructureIds.Kind.MEMBER),
                fields.text("name"),
                fields.text("note"),
                parts(fields),
                fields.where());
    }

    private Map<String, Map<String, FamilyMember.SizeOfPart>> parts(Fields fields) {
        Map<String, Map<String, FamilyMember.SizeOfPart>> parts = new HashMap<>();
        String path = fields.at("parts");
        for (Node.Pair part : pairs(fields.entry("parts"), path)) {
            ids.named(List.of(new Reference(part.key(), part.keyWhere())), path, StructureIds.Kind.POSITION);
            Map<String, FamilyMember.SizeOfPart> sizes = new LinkedHashMap<>();
            for (Node.Pair size : pairs(part.entry(), path + "." + part.key())) {
                ids.named(
                        List.of(new Reference(size.key(), size.keyWhere())),
                        path + "." + part.key(),
                        StructureIds.Kind.DIMENSION);
                size(size.entry(), path + "." + part.key() + "." + size.key())
                        .ifPresent(read -> sizes.put(size.key(), read));
            }
            parts.put(part.key(), sizes);
        }
        return parts;
    }

    private List<Node.Pair> pairs(Node entry, String path) {
        if (entry instanceof Node.Block block) {
            return block.pairs();
        }
        if (entry.where().line() > 0) {
            faults.fault(
                    entry.where(),
                    path,
                    "Here stands " + entry.kind() + ", where a block of keys is wanted.",
                    "Write a key, a colon, and what belongs to it.");
        }
        return List.of();
    }

    private Optional<FamilyMember.SizeOfPart> size(Node entry, String path) {
        String sentence = "Here stands " + entry.kind() + ", where a size is wanted.";
        if (entry instanceof Node.Text text) {
            try {
                return Optional.of(new FamilyMember.SizeOfPart(
                        SizeText.of(text.text()).value(), text.text().strip()));
            } catch (SizeText.NotASize fault) {
                sentence = fault.sentence();
            }
        }
        faults.fault(entry.where(), path, sentence, "Write a number with its unit, such as '47.0 mm'.");
        return Optional.empty();
    }

    private List<String> named(Fields fields, String key, StructureIds.Kind... kinds) {
        return ids.named(fields.references(key), fields.at(key), kinds);
    }
}
