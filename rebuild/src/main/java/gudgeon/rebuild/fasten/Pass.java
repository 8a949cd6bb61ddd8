package gudgeon.rebuild.fasten;

import gudgeon.rebuild.sentence.Amount;
import java.util.List;

/**
 * One round of tightening a joint.
 *
 * @param number which, from 1
 * @param share of the full torque, above 0, at most 1
 * @param again whether full torque was reached in an earlier one, so that this only goes round once more
 * @param had holes that have had it, in the order of tightening
 * @param left holes that have not
 */
public record Pass(int number, double share, boolean again, List<String> had, List<String> left) {
    public Pass {
        had = List.copyOf(had);
        left = List.copyOf(left);
    }

    /** What it is, such as "pass 2, to 70 %". */
    public String name() {
        return "pass " + number + ", " + (again ? "once more round at full torque" : "to " + percent());
    }

    private String percent() {
        return share == 1 ? "full torque" : Math.round(100 * share) + " %";
    }

    /** How far it is, such as "3 of 8 holes have had pass 2, to 70 %.". */
    public String sentence() {
        int all = had.size() + left.size();
        return had.size() + " of " + Amount.of(all, "hole") + (had.size() == 1 ? " has had " : " have had ") + name()
                + ".";
    }

    /** Whether every hole has had it. */
    public boolean isDone() {
        return left.isEmpty();
    }
}
