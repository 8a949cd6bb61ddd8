package gudgeon.rebuild.start;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StartRound;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What of a book comes before the first start.
 *
 * @param start the first start, where the book says which step it is
 * @param steps steps that come before it, in the book's order
 * @param checks checks that come before it, in the book's order
 */
record BeforeStart(Optional<Step> start, List<Step> steps, List<Check> checks) {
    static BeforeStart of(Build build) {
        Optional<Step> start = StartRound.step(build);
        Set<String> after = new HashSet<>();
        start.ifPresent(step -> after.add(step.id()));
        boolean grew = start.isPresent();
        while (grew) {
            grew = build.structure().checks().stream()
                    .filter(check -> check.needs().stream().anyMatch(after::contains)
                            || check.after().stream().anyMatch(after::contains))
                    .map(check -> after.add(check.id()))
                    .reduce(false, Boolean::logicalOr);
            grew |= build.structure().steps().stream()
                    .filter(step -> step.needs().stream().anyMatch(after::contains))
                    .map(step -> after.add(step.id()))
                    .reduce(false, Boolean::logicalOr);
        }
        return new BeforeStart(
                start,
                build.structure().steps().stream()
                        .filter(step -> !after.contains(step.id()))
                        .toList(),
                build.structure().checks().stream()
                        .filter(check -> !after.contains(check.id()))
                        .toList());
    }
}
