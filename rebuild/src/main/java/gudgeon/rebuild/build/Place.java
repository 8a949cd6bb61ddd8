package gudgeon.rebuild.build;

import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Way;
import java.util.Optional;

/**
 * How a position stands.
 *
 * @param status whether its part is in it
 * @param count how many are in it, fitted in this rebuild
 * @param part name of the part fitted; empty for the one that came off
 * @param way which way round it was fitted
 * @param fitted number of the entry that last fitted it, 0 if none did
 * @param off what came off, as last recorded
 * @param removed number of the entry that last took its part out, 0 if none did
 * @param destroyed whether that part can't be used again and none was fitted since
 * @param supply what was bought for it
 * @param blasted number of the entry that last blasted it, 0 if none did
 * @param disposition what is to become of the part that came off
 */
public record Place(
        Status status,
        int count,
        String part,
        Way way,
        long fitted,
        Optional<TakenOff> off,
        long removed,
        boolean destroyed,
        Supply supply,
        long blasted,
        Optional<Disposition> disposition) {
    static final Place EMPTY =
            new Place(Status.OUT, 0, "", Way.NOT_SAID, 0, Optional.empty(), 0, false, Supply.NONE, 0, Optional.empty());

    static final Place AS_FOUND = EMPTY.as(Status.AS_FOUND);

    /** Whether a position's part is in it. */
    public enum Status {
        OUT,
        /** All its parts were fitted in this rebuild. */
        IN,
        /** Fewer than it takes. */
        PARTLY_IN,
        /** In it since before the rebuild began. */
        AS_FOUND
    }

    /** Whether nothing is in it. */
    public boolean isOut() {
        return status == Status.OUT;
    }

    /** Whether all its parts are in place. */
    public boolean isFilled() {
        return status == Status.IN || status == Status.AS_FOUND;
    }

    Place as(Status to) {
        return new Place(to, count, part, way, fitted, off, removed, destroyed, supply, blasted, disposition);
    }

    Place out(long by, boolean singleUse) {
        long taken = isOut() ? removed : by;
        boolean spent = isOut() ? destroyed : singleUse;
        return new Place(Status.OUT, 0, "", Way.NOT_SAID, fitted, off, taken, spent, supply, blasted, disposition);
    }

    Place takenOff(TakenOff fact) {
        Optional<TakenOff> came = Optional.of(fact);
        return new Place(status, count, part, way, fitted, came, removed, destroyed, supply, blasted, disposition);
    }

    Place filled(String with, int more, int wanted, Way round, long by) {
        boolean adds = !isOut() && fitted > 0 && part.equals(with);
        int all = adds ? Math.min(wanted, count + more) : more;
        Status filled = all >= wanted ? Status.IN : Status.PARTLY_IN;
        return new Place(filled, all, with, round, by, off, removed, false, supply.fitted(more), blasted, disposition);
    }

    Place supplied(Supply now) {
        return new Place(status, count, part, way, fitted, off, removed, destroyed, now, blasted, disposition);
    }

    Place blasted(long by) {
        return new Place(status, count, part, way, fitted, off, removed, destroyed, supply, by, disposition);
    }

    Place disposed(Disposition as) {
        return new Place(status, count, part, way, fitted, off, removed, destroyed, supply, blasted, Optional.of(as));
    }
}
