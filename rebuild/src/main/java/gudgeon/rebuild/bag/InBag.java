package gudgeon.rebuild.bag;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Space;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact.TakenOff;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What came off at one position and was put away.
 *
 * @param position where it sat
 * @param off how it came off
 * @param entry number of the entry that says so
 * @param at when that was
 * @param back whether it is in the engine again, so that it lies there no more
 * @param becomes what is to become of it, once decided
 * @param step the step that fits it, if the book has one
 */
public record InBag(
        Position position,
        TakenOff off,
        long entry,
        Instant at,
        boolean back,
        Optional<Disposition> becomes,
        Optional<Step> step) {

    static Optional<InBag> of(Build build, Position position) {
        List<Told<TakenOff>> told = build.told(TakenOff.class, position.id());
        Place place = build.place(position.id());
        Optional<Step> step = build.structure().stepFitting(position.id());
        boolean back = !place.isOut() && place.part().isEmpty();
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(told.get(told.size() - 1))
                        .map(last -> new InBag(
                                position, last.fact(), last.number(), last.at(), back, place.disposition(), step));
    }

    /** What it is and how many there are, such as "2 × valve collet"; where the book has another number, that too. */
    public String words() {
        int count = off.count();
        String named = count > 1 ? count + " × " + position.name() : position.name();
        return count == position.quantity() ? named : named + " (" + count + " of " + position.quantity() + ")";
    }

    /** Which side of the engine it belongs to, such as "wet side"; empty where the book does not say. */
    public String side() {
        List<String> sides = position.spaces().stream().map(Space::word).toList();
        return switch (sides.size()) {
            case 0 -> "";
            case 1 -> position.spaces().get(0) == Space.OUTSIDE ? sides.get(0) : sides.get(0) + " side";
            default -> "between " + String.join(" and ", sides);
        };
    }

    /** Whether it is known what is to become of it. */
    public boolean isDecided() {
        return back || position.singleUse() || becomes.isPresent();
    }

    /** How it stands, in a few words. */
    public String state() {
        if (back) {
            return "in the engine again";
        }
        if (position.singleUse()) {
            return "not used again";
        }
        return becomes.map(Disposition::words).orElse("not decided");
    }
}
