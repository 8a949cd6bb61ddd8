package gudgeon.bench.web.source;

import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.source.Offer;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import gudgeon.rebuild.source.Supplier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What can be ordered in one go: all that one supplier offers, or all that nobody offered yet.
 *
 * @param from the supplier; empty for what nobody offered
 * @param lines what is to be ordered, with what is offered for it
 * @param days how long it takes to come, as the first offer says that says so
 */
public record Group(String from, List<Line> lines, Optional<Days> days) {
    public Group {
        lines = List.copyOf(lines);
    }

    /**
     * A position in a group.
     *
     * @param part the position's line on the list
     * @param offer what is offered for it there, if anything
     */
    public record Line(PartsLine part, Optional<Offer> offer) {}

    /** The groups of a list: one of each supplier that offers something, then the rest. */
    public static List<Group> of(PartsList list) {
        List<Group> groups = new ArrayList<>();
        for (Supplier supplier : list.suppliers()) {
            List<Line> lines = supplier.offers().stream()
                    .flatMap(offer -> list.toOrder().stream()
                            .filter(line -> line.position().equals(offer.position()))
                            .map(line -> new Line(line, Optional.of(offer))))
                    .toList();
            if (!lines.isEmpty()) {
                groups.add(new Group(supplier.name(), lines, days(lines)));
            }
        }
        List<Line> rest = list.toOrder().stream()
                .filter(line -> line.offers().isEmpty())
                .map(line -> new Line(line, Optional.empty()))
                .toList();
        if (!rest.isEmpty()) {
            groups.add(new Group("", rest, Optional.empty()));
        }
        return groups;
    }

    private static Optional<Days> days(List<Line> lines) {
        return lines.stream()
                .flatMap(line -> line.offer().stream())
                .flatMap(offer -> offer.days().stream())
                .findFirst();
    }
}
