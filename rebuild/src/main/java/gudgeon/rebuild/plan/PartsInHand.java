package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.plan.Reason.Kind;
import java.util.Optional;

/** Whether there is a part to fit, and if not, what is said of it. */
final class PartsInHand {
    private final Build build;

    PartsInHand(Build build) {
        this.build = build;
    }

    /** Why a position waits for a part; empty if it has one, in place or in hand. */
    Optional<Reason> missing(Position position) {
        Place place = build.place(position.id());
        if (place.isFilled() || place.supply().arrived() >= position.quantity()) {
            return Optional.empty();
        }
        Optional<Part> part = build.partFor(position.id());
        if (part.isEmpty()) {
            return wants(position, place, "Not in hand: " + position.name());
        }
        return part.get().name().isEmpty() ? cameOff(position, place) : tooFew(position, place);
    }

    /** Whether a part not used yet is in hand, as far as was said. */
    boolean hasSpare(Position position) {
        return build.place(position.id()).supply().arrived() >= position.quantity()
                || count(position) >= position.quantity();
    }

    private Optional<Reason> cameOff(Position position, Place place) {
        if (position.singleUse()) {
            return wants(position, place, "The " + position.name() + " that came off can't be used again");
        }
        Disposition becomes = place.disposition().orElse(Disposition.USE_AGAIN);
        if (becomes == Disposition.REPLACE) {
            return wants(position, place, "The " + position.name() + " that came off is to be replaced");
        }
        if (becomes == Disposition.REPAIR) {
            return reason(position, "The " + position.name() + " that came off is to be repaired first.");
        }
        return Optional.empty();
    }

    private Optional<Reason> tooFew(Position position, Place place) {
        int needed = position.quantity() - place.count();
        return !position.singleUse() || count(position) >= needed
                ? Optional.empty()
                : wants(
                        position,
                        place,
                        "Not all in hand: " + position.name() + ", " + count(position) + " of " + needed);
    }

    private int count(Position position) {
        return build.parts(position.id()).stream()
                .filter(part -> !part.spent())
                .mapToInt(Part::count)
                .sum();
    }

    private static Optional<Reason> wants(Position position, Place place, String what) {
        String then = place.supply().ordered() > 0
                ? "; " + place.supply().ordered() + " ordered and not come yet."
                : place.supply().arrived() > 0
                        ? "; " + place.supply().arrived() + " came, needed are " + position.quantity() + "."
                        : ".";
        return reason(position, what + then);
    }

    private static Optional<Reason> reason(Position position, String sentence) {
        return Optional.of(new Reason(Kind.PART, position.id(), sentence));
    }
}
