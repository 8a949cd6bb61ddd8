package gudgeon.rebuild.build;

import gudgeon.rebuild.journal.Origin;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a build of the top end stands at, without its entries, so that two can be held against each other. */
record Snapshot(
        Map<String, StepState> steps,
        Map<String, CheckState> checks,
        Map<String, Place> places,
        Map<String, List<Part>> parts,
        Map<String, Optional<Part>> counting,
        List<Long> faults,
        Optional<Long> tight,
        Map<Origin, Double> chances,
        long minutes) {
    static Snapshot of(Build build) {
        List<String> positions = build.structure().positions().stream()
                .map(position -> position.id())
                .toList();
        return new Snapshot(
                each(build.structure().steps().stream().map(step -> step.id()).toList(), build::step),
                each(
                        build.structure().checks().stream()
                                .map(check -> check.id())
                                .toList(),
                        build::check),
                each(positions, build::place),
                each(positions, build::parts),
                each(positions, build::partFor),
                build.openFaults(),
                build.tight(),
                build.chances(),
                build.minutesSpent());
    }

    private static <T> Map<String, T> each(List<String> ids, Function<String, T> state) {
        return ids.stream().collect(Collectors.toMap(id -> id, state));
    }
}
