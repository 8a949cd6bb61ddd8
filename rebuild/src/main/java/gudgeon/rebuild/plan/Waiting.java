package gudgeon.rebuild.plan;

import java.util.List;

/**
 * A step or check that can't be done yet.
 *
 * @param id the step or check
 * @param isCheck whether it is a check
 * @param name what is done, as a fitter says it
 * @param reasons what it waits for, at least one
 */
public record Waiting(String id, boolean isCheck, String name, List<Reason> reasons) {
    public Waiting {
        reasons = List.copyOf(reasons);
    }
}
