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
 * @param count how many of it still lie there; the others are in the engine again
 * @param becomes what is to become of it, once decided
 * @param step the step that fits it, if the book has one
 */
public record InBag(
        Position position,
        TakenOff off,
        long entry,
        Instant at,
        int count,
        Optional<Disposition> becomes,
        Optional<Step> step) {

    static Optional<InBag> of(Build build, Position position) {
        List<Told<TakenOff>> told = build.told(TakenOff.class, position.id());
        Place place = build.place(position.id());
        Optional<Step> step = build.structure().stepFitting(position.id());
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(told.get(told.size() - 1))
                        .map(last -> new InBag(
                                position,
                                last.fact(),
                                last.number(),
                                last.at(),
                                left(last.fact(), place),
                                place.disposition(),
                                step));
    }

    /** A part by another name that was fitted in its stead leaves the old one where it is. */
    private static int left(TakenOff off, Place place) {
        if (place.isOut() || !place.part().isEmpty()) {
            return off.count();
        }
        return place.isFilled() ? 0 : Math.max(0, off.count() - place.count());
    }

    /** Whether all of it is in the engine again. */
    public boolean back() {
        return count == 0;
    }

    /** What it is and how many there are, such as "2 × valve collet"; where the book has another number, that too. */
    public String words() {
        int many = back() ? off.count() : count;
        String named = many > 1 ? many + " × " + position.name() : position.name();
        return many == position.quantity() ? named : named + " (" + many + " of " + position.quantity() + ")";
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

    /** What the step that fits it does with it, up to the step's name. */
    public String goesIn() {
        return position.singleUse() ? "A new one goes in with" : "Goes in with";
    }

    /** Whether it is known what is to become of it. */
    public boolean isDecided() {
        return back() || position.singleUse() || becomes.isPresent();
    }

    /** How it stands, in a few words. */
    public String state() {
        if (back()) {
            return "in the engine again";
        }
        if (position.singleUse()) {
            return "not used again";
        }
        return becomes.map(Disposition::words).orElse("not decided");
    }
}
