package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The ids of the book's second part. Each is used once in the whole book, so that one word always means one thing. */
final class StructureIds {
    /** What an id can be of. */
    enum Kind {
        POSITION("position"),
        JOINT("joint"),
        STEP("step"),
        CHECK("check"),
        DIMENSION("dimension"),
        MEMBER("family's engine");

        private final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    private record Owner(Kind kind, Where where) {}

    private record Use(Reference reference, String path, Set<Kind> kinds) {}

    private final Faults faults;
    private final Map<String, Owner> owners = new LinkedHashMap<>();
    private final List<Use> uses = new ArrayList<>();

    StructureIds(Faults faults) {
        this.faults = faults;
    }

    /** The id of a block, told if another block has it already. */
    String own(Fields fields, Kind kind) {
        String id = fields.id();
        if (fields.text("id").isEmpty()) {
            // told as missing; several such are not one thing
            return id;
        }
        Owner before = owners.putIfAbsent(id, new Owner(kind, fields.where("id")));
        // two of one kind are told where the list is read
        if (before != null && before.kind() != kind) {
            faults.fault(
                    fields.where("id"),
                    fields.at("id"),
                    "The id '" + Words.shortened(id) + "' is used again, first for a " + before.kind().word
                            + " on line " + before.where().line() + ".",
                    "Give each position, joint, step, check and dimension an id of its own.");
        }
        return id;
    }

    /** The ids that a key names, each kept for {@link #tellUnknown}; one named twice counts once. */
    List<String> named(List<Reference> references, String path, Kind... kinds) {
        Set<Kind> allowed = EnumSet.noneOf(Kind.class);
        allowed.addAll(List.of(kinds));
        Set<String> ids = new LinkedHashSet<>();
        for (Reference reference : references) {
            uses.add(new Use(reference, path, allowed));
            ids.add(reference.id());
        }
        return List.copyOf(ids);
    }

    /** Tells every id that was named and that no block has. */
    void tellUnknown() {
        for (Use use : uses) {
            Owner owner = owners.get(use.reference().id());
            if (owner == null || !use.kinds().contains(owner.kind())) {
                tell(use, owner);
            }
        }
    }

    private void tell(Use use, @Nullable Owner owner) {
        String wanted = use.kinds().stream().map(kind -> kind.word).collect(Collectors.joining(" or "));
        List<String> known = owners.entrySet().stream()
                .filter(entry -> use.kinds().contains(entry.getValue().kind()))
                .map(Map.Entry::getKey)
                .toList();
        String id = use.reference().id();
        faults.fault(
                use.reference().where(),
                use.path(),
                owner == null
                        ? "No " + wanted + " has the id '" + Words.shortened(id) + "'."
                        : "'" + Words.shortened(id) + "' is a " + owner.kind().word + ", where a " + wanted
                                + " is wanted.",
                Words.nearest(id, known)
                        .map(near -> "Did you mean '" + near + "'?")
                        .orElse(
                                owner == null
                                        ? "Add it to the book, or take it out here."
                                        : "Write the id of one here."));
    }
}
