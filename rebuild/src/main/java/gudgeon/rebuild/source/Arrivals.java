package gudgeon.rebuild.source;

import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.source.OrderLine.State;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was ordered, what came of it, and what is short or late.
 *
 * @param lines every position of every order, in the order in which they were first told
 */
public record Arrivals(List<OrderLine> lines) {
    public Arrivals {
        lines = List.copyOf(lines);
    }

    /**
     * The arrivals of a build.
     *
     * @param today the day by which something is late
     */
    public static Arrivals of(Build build, LocalDate today) {
        Map<Key, Line> lines = new LinkedHashMap<>();
        for (Told<Sourcing> told : build.told(Sourcing.class)) {
            if (told.fact() instanceof Fact.OfPosition of
                    && build.structure().position(of.position()).isPresent()) {
                order(told.fact())
                        .ifPresent(order -> lines.computeIfAbsent(key(lines, order, of.position()), Line::new)
                                .take(told));
            }
        }
        return new Arrivals(lines.values().stream()
                .map(line -> line.line(build.structure(), today))
                .toList());
    }

    /** The lines of one order. */
    public List<OrderLine> of(String order) {
        return lines.stream().filter(line -> line.order().equals(order)).toList();
    }

    /** The names of the orders, in the order in which they were first told. */
    public List<String> orders() {
        return lines.stream().map(OrderLine::order).distinct().toList();
    }

    private static Optional<String> order(Sourcing fact) {
        if (fact instanceof Ordered ordered) {
            return Optional.of(ordered.order());
        }
        if (fact instanceof Arrived came) {
            return Optional.of(came.order());
        }
        return fact instanceof Returned back ? Optional.of(back.order()) : Optional.empty();
    }

    /**
     * What comes or goes without the order's name is taken to be of the first order of that position of which something is still to
     * come, else of the last.
     */
    private static Key key(Map<Key, Line> lines, String order, String position) {
        Key exact = new Key(order, position);
        List<Line> like = lines.values().stream()
                .filter(line -> line.key.position().equals(position))
                .toList();
        if (!order.isEmpty() || lines.containsKey(exact) || like.isEmpty()) {
            return exact;
        }
        return like.stream().filter(Line::isOpen).findFirst().orElse(like.get(like.size() - 1)).key;
    }

    private record Key(String order, String position) {}

    /** One position of an order while the journal is read. */
    private static final class Line {
        private final Key key;
        private final List<Told<Ordered>> asked = new ArrayList<>();
        private final List<Long> entries = new ArrayList<>();
        private LocalDate first = LocalDate.EPOCH;
        private int came;
        private int returned;

        Line(Key key) {
            this.key = key;
        }

        void take(Told<Sourcing> told) {
            if (entries.isEmpty()) {
                first = day(told);
            }
            entries.add(told.number());
            if (told.fact() instanceof Ordered ordered) {
                asked.add(new Told<>(told.number(), told.at(), ordered));
            } else if (told.fact() instanceof Arrived arrived) {
                came += arrived.count();
            } else if (told.fact() instanceof Returned back) {
                returned += back.count();
            }
        }

        boolean isOpen() {
            return came < ordered();
        }

        private int ordered() {
            return asked.stream().mapToInt(told -> told.fact().count()).sum();
        }

        OrderLine line(Structure structure, LocalDate today) {
            Optional<Told<Ordered>> last =
                    asked.isEmpty() ? Optional.empty() : Optional.of(asked.get(asked.size() - 1));
            Optional<Ordered> as = last.map(Told::fact);
            int ordered = ordered();
            LocalDate on = last.map(Line::day).orElse(first);
            Optional<LocalDate> due = as.flatMap(Ordered::promised)
                    .or(() -> as.flatMap(Ordered::days).map(span -> on.plusDays(span.most())));
            State state = state(ordered, due.filter(today::isAfter).isPresent());
            String name = structure.name(key.position());
            return new OrderLine(
                    key.order(),
                    key.position(),
                    name,
                    as.map(Ordered::part).orElse(""),
                    as.flatMap(Ordered::origin),
                    as.map(Ordered::from).orElse(""),
                    ordered,
                    came,
                    returned,
                    as.map(Ordered::price).orElse(""),
                    on,
                    as.flatMap(Ordered::days),
                    as.flatMap(Ordered::promised),
                    as.map(Ordered::sizes).orElse(Map.of()),
                    state,
                    entries,
                    sentence(name, ordered, state, due));
        }

        private State state(int ordered, boolean overdue) {
            if (ordered == 0) {
                return State.NOT_ORDERED;
            }
            if (came >= ordered) {
                // one sent in place of one that went back is not one too many
                return came - returned > ordered ? State.TOO_MANY : State.COME;
            }
            return came > 0 ? State.SHORT : overdue ? State.LATE : State.ON_ITS_WAY;
        }

        private String sentence(String name, int ordered, State state, Optional<LocalDate> due) {
            String back = returned > 0 ? " " + returned + " went back." : "";
            String told = name + ": " + came + " of " + ordered + " came";
            return switch (state) {
                        case COME -> name + ": all " + ordered + " came.";
                        case SHORT -> told + "; " + (ordered - came) + " short.";
                        case TOO_MANY -> told + "; " + (came - returned - ordered) + " more than ordered.";
                        case NOT_ORDERED -> name + ": " + came + " came and none was ordered by that name.";
                        case LATE ->
                            name + ": " + ordered + " should have come by "
                                    + due.map(LocalDate::toString).orElse("now") + ".";
                        case ON_ITS_WAY ->
                            name + ": " + ordered + " on the way"
                                    + due.map(day -> ", to be here by " + day).orElse(", no day was said") + ".";
                    }
                    + back;
        }

        private static LocalDate day(Told<?> told) {
            return LocalDate.ofInstant(told.at(), ZoneOffset.UTC);
        }
    }
}
