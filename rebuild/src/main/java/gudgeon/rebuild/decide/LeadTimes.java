package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Works out how long an option takes. Parts are on their way side by side. Work on one owner of a clearance waits for the new part
 * that is its other owner, because it is finished to that part as measured.
 */
final class LeadTimes {
    private final Structure structure;
    private final List<OptionLine> toCome;

    /**
     * @param lines the option's lines
     * @param isHere whether a line's part is in hand already
     */
    LeadTimes(Structure structure, List<OptionLine> lines, Predicate<OptionLine> isHere) {
        this.structure = structure;
        this.toCome = lines.stream().filter(line -> !isHere.test(line)).toList();
    }

    LeadTime leadTime() {
        List<String> unknown = new ArrayList<>();
        Optional<Days> longest = Optional.empty();
        for (OptionLine line : toCome) {
            Optional<Days> here = line.days().map(days -> plus(days, before(line)));
            if (here.isEmpty()) {
                unknown.add(structure.name(line.position()));
            }
            longest = longer(longest, here);
        }
        return new LeadTime(longest, unknown);
    }

    /** How long the new parts take that a machinist needs in the hand before work on a line begins. */
    private Optional<Days> before(OptionLine work) {
        Optional<Days> longest = Optional.empty();
        if (!Applied.isNew(work)) {
            for (OptionLine other : toCome) {
                if (Applied.isNew(other) && shareAClearance(work.position(), other.position())) {
                    longest = longer(longest, other.days());
                }
            }
        }
        return longest;
    }

    private boolean shareAClearance(String one, String other) {
        return structure.dimensions().stream()
                .flatMap(dimension -> dimension.derived().stream())
                .filter(derived -> derived.as() == Derivation.As.CLEARANCE)
                .map(derived -> derived.of().stream()
                        .flatMap(id -> structure.dimension(id).stream())
                        .map(Dimension::of)
                        .toList())
                .anyMatch(owners -> owners.contains(one) && owners.contains(other));
    }

    private static Days plus(Days days, Optional<Days> before) {
        return before.map(first -> new Days(
                        capped(days.least() + first.least()),
                        capped(days.likely() + first.likely()),
                        capped(days.most() + first.most())))
                .orElse(days);
    }

    private static int capped(int days) {
        return Math.min(Days.MOST, days);
    }

    private static Optional<Days> longer(Optional<Days> one, Optional<Days> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        Days a = one.get();
        Days b = other.get();
        return Optional.of(new Days(
                Math.max(a.least(), b.least()), Math.max(a.likely(), b.likely()), Math.max(a.most(), b.most())));
    }
}
