package gudgeon.rebuild.fasten;

import java.util.List;
import java.util.Optional;

/**
 * What goes into a hole.
 *
 * @param joint the joint's id
 * @param hole the hole's id
 * @param kind name of the kind from the heap; empty where one must be bought, or where it never lay in the heap
 * @param verdict how its length is; of one to be bought {@link LengthVerdict#RIGHT}
 * @param recorded whether a person said so, at take-down or since
 * @param others kinds that would do as well, of the same heap; none where it is forced
 * @param mayBeBought whether this hole is, or may as well be, the one a fastener is bought for
 */
public record HoleChoice(
        String joint,
        String hole,
        Optional<String> kind,
        LengthVerdict verdict,
        boolean recorded,
        List<String> others,
        boolean mayBeBought) {
    public HoleChoice {
        others = List.copyOf(others);
    }

    /** Whether nothing else may go there. */
    public boolean isForced() {
        return others.isEmpty() && !(kind.isPresent() && mayBeBought);
    }

    /** Whether one must be bought for it. */
    public boolean isToBuy() {
        return kind.isEmpty() && !recorded;
    }

    /** What goes there, a sentence. */
    public String sentence() {
        if (isToBuy()) {
            return "Nothing in the heap is right for " + hole + ": buy one"
                    + (others.isEmpty() ? "." : ", or move one here and buy for the hole that it comes from.");
        }
        String what = hole + " takes " + kind.orElse("the one that is recorded for it");
        String why = recorded ? ", as recorded" : isForced() ? ", and nothing else" : "";
        String swap = others.isEmpty() ? "" : "; as well may go there " + String.join(" or ", others);
        return what + why + swap + (verdict == LengthVerdict.RIGHT ? "." : "; its length is " + verdict.words() + ".");
    }
}
