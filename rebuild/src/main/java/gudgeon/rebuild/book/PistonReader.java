package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a piston. */
final class PistonReader {
    private final Set<String> valveIds;
    private final Faults faults;

    PistonReader(Set<String> valveIds, Faults faults) {
        this.valveIds = valveIds;
        this.faults = faults;
    }

    PistonEntry read(Fields fields) {
        return new PistonEntry(
                fields.id(),
                PistonEntry.From.valueOf(fields.word("from").orElse("original").toUpperCase(Locale.ROOT)),
                fields.text("note"),
                crown(fields.block("crown", "")),
                fields.size("land"),
                fields.optionalSize("compression-height"),
                fields.optionalSize("protrusion"),
                fields.has("groove") ? Optional.of(groove(fields.block("groove", ""))) : Optional.empty(),
                fields.optionalSize("crown-thickness"),
                pockets(fields));
    }

    private static PistonEntry.Groove groove(Fields fields) {
        return new PistonEntry.Groove(fields.size("below"), fields.size("depth"));
    }

    private static CrownEntry crown(Fields fields) {
        if (fields.has("dome")) {
            return new CrownEntry.Dome(fields.size("dome"), fields.size("base"));
        }
        if (fields.has("dish")) {
            return new CrownEntry.Dish(fields.size("dish"), fields.size("rim"));
        }
        fields.word("flat");
        return new CrownEntry.Flat();
    }

    private List<PocketEntry> pockets(Fields fields) {
        List<PocketEntry> pockets = new ArrayList<>();
        for (Map.Entry<String, Fields> named : fields.named("pockets").entrySet()) {
            Fields pocket = named.getValue();
            String valve = named.getKey();
            if (!valveIds.contains(valve)) {
                faults.fault(
                        pocket.where(),
                        fields.at("pockets"),
                        "A pocket is named '" + Words.shortened(valve) + "', but no valve has that id.",
                        Words.nearest(valve, valveIds)
                                .map(near -> "Did you mean '" + near + "'?")
                                .orElse("The valves are: " + String.join(", ", valveIds) + "."));
            }
            pockets.add(new PocketEntry(
                    valve,
                    pocket.size("diameter"),
                    pocket.size("depth"),
                    pocket.size("offset"),
                    pocket.size("azimuth"),
                    pocket.size("tilt")));
        }
        return pockets;
    }
}
