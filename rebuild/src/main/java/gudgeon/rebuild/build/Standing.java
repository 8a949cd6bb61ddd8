package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import java.util.List;
import java.util.Optional;
import org.pcollections.HashTreePMap;
import org.pcollections.PMap;

/**
 * How steps, checks and positions stand. Of what no entry spoke, it follows from how the engine was found.
 *
 * @param together whether the engine was found together
 * @param steps the steps that an entry spoke of
 * @param checks the checks that an entry spoke of
 * @param places the positions that an entry spoke of
 */
record Standing(
        boolean together, PMap<String, StepState> steps, PMap<String, CheckState> checks, PMap<String, Place> places) {
    static final Standing NOTHING_YET =
            new Standing(false, HashTreePMap.empty(), HashTreePMap.empty(), HashTreePMap.empty());

    StepState step(String id) {
        return Optional.ofNullable(steps.get(id)).orElse(together ? StepState.AS_FOUND : StepState.OPEN);
    }

    CheckState check(String id) {
        return Optional.ofNullable(checks.get(id)).orElse(together ? CheckState.AS_FOUND : CheckState.OPEN);
    }

    Place place(String position) {
        return Optional.ofNullable(places.get(position)).orElse(together ? Place.AS_FOUND : Place.EMPTY);
    }

    boolean covers(Step step) {
        return step(step.id()).stands()
                || step.fits().stream()
                        .findFirst()
                        .filter(position -> !place(position).isOut())
                        .isPresent();
    }

    List<Check> unproven(Structure structure, String step) {
        return structure.step(step).stream()
                .flatMap(held -> structure.checksHolding(step).stream()
                        .filter(check -> !check(check.id()).lets(held)))
                .toList();
    }

    Standing found(boolean asOne) {
        return new Standing(asOne, steps, checks, places);
    }

    Standing with(String step, StepState state) {
        return new Standing(together, steps.plus(step, state), checks, places);
    }

    Standing with(String check, CheckState state) {
        return new Standing(together, steps, checks.plus(check, state), places);
    }

    Standing with(String position, Place place) {
        return new Standing(together, steps, checks, places.plus(position, place));
    }
}
