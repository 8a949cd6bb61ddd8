package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Strip-down: what can come off next.
 *
 * @param next positions whose part is in and that nothing covers, in reverse of the order in which they go on
 */
public record TakingDown(List<Off> next) {
    public TakingDown {
        next = List.copyOf(next);
    }

    /** What can come off next of a build. */
    public static TakingDown of(Build build) {
        Structure structure = build.structure();
        List<Off> next = new ArrayList<>();
        for (Position position : structure.positions()) {
            if (structure.stepFitting(position.id()).isEmpty()) {
                addIfFree(build, position, "", next);
            }
        }
        for (String id : structure.precedence().order()) {
            Optional<Step> step = structure.step(id);
            step.map(Step::fits).orElse(List.of()).stream()
                    .flatMap(position -> structure.position(position).stream())
                    .forEach(position -> addIfFree(build, position, id, next));
        }
        Collections.reverse(next);
        return new TakingDown(next);
    }

    private static void addIfFree(Build build, Position position, String step, List<Off> next) {
        // a step that fits nothing has nothing that could come off, so it can't be what lies over a part
        boolean free = InPlace.over(build, position.id()).stream()
                .allMatch(over -> over.fits().isEmpty());
        if (free && !build.place(position.id()).isOut()) {
            next.add(new Off(position.id(), position.name(), position.quantity(), step));
        }
    }

    /**
     * Positions that are empty and of which no part is known, as in an engine that came in pieces; without those whose part is new
     * each time.
     */
    public static List<Position> missing(Build build) {
        return build.structure().positions().stream()
                .filter(position -> !position.singleUse())
                .filter(position -> build.place(position.id()).isOut())
                .filter(position -> build.partFor(position.id()).isEmpty())
                .toList();
    }

    /** A bag for the next part: the number or letter after the one used last, that no bag has yet. */
    public static String suggestedBag(Build build) {
        return suggestedBags(build, 1).get(0);
    }

    /** As many bags as are wanted for the next parts, none of which any bag has yet. */
    public static List<String> suggestedBags(Build build, int count) {
        Set<String> used = new HashSet<>();
        long latest = 0;
        String bag = "0";
        for (Position position : build.structure().positions()) {
            String of = build.place(position.id())
                    .off()
                    .map(off -> off.bag().strip())
                    .orElse("");
            long about = build.lastAbout(position.id());
            if (!of.isEmpty() && used.add(of) && about > latest) {
                latest = about;
                bag = of;
            }
        }
        List<String> next = new ArrayList<>();
        while (next.size() < count) {
            bag = Bag.after(bag);
            if (used.add(bag)) {
                next.add(bag);
            }
        }
        return next;
    }
}
