package gudgeon.rebuild.schedule;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.schedule.Samples.Delivery;
import gudgeon.rebuild.source.Offer;
import gudgeon.rebuild.source.OrderLine;
import gudgeon.rebuild.source.OutWork;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a position waits for, and how long it may take: an order, work at a machinist's, or an order still to be placed. */
final class OnTheWay {
    /** From a shop not far to a copy from another continent; common practice, no source. */
    private static final Days NOT_SAID = new Days(5, 14, 42);
    /** What came later than all that was said comes in these days; common practice, no source. */
    private static final Days OVERDUE = new Days(1, 7, 28);

    /** How late a promise may be kept; common practice, no source. */
    private static final int PROMISE_EARLY = 2;

    private static final int PROMISE_LATE = 14;

    private final Build build;
    private final PartsList parts;
    private final LocalDate today;
    private final List<String> assumptions = new ArrayList<>();

    /**
     * A thing waited for.
     *
     * @param position the position
     * @param what what it is, as a person reads it
     * @param delivery when it comes
     * @param toPlace whether it has still to be ordered
     */
    record Awaited(String position, String what, Delivery delivery, boolean toPlace) {}

    OnTheWay(Build build, PartsList parts, LocalDate today) {
        this.build = build;
        this.parts = parts;
        this.today = today;
    }

    List<String> assumptions() {
        return assumptions;
    }

    /** Whether something is known to come for a position or to be wanted for it; else its part is only to be looked for. */
    boolean isWanted(String position) {
        return parts.lines().stream().anyMatch(line -> line.position().equals(position))
                || parts.work().stream()
                        .anyMatch(sent ->
                                sent.position().equals(position) && sent.back().isEmpty());
    }

    /** What comes for a position, the last of it; when nothing is said of it, it has still to be ordered. */
    Awaited of(String position) {
        String name = build.structure().name(position);
        Optional<OutWork> work = parts.work().stream()
                .filter(sent -> sent.position().equals(position) && sent.back().isEmpty())
                .findFirst();
        if (work.isPresent()) {
            return away(name, work.get());
        }
        Optional<PartsLine> line = parts.lines().stream()
                .filter(one -> one.position().equals(position))
                .findFirst();
        Optional<OrderLine> order = parts.arrivals().lines().stream()
                .filter(one -> one.position().equals(position) && one.open() > 0)
                .max(Comparator.comparing(one -> one.due().orElse(LocalDate.MAX)));
        boolean isShort = line.filter(one -> one.toOrder() > 0).isPresent();
        return order.isPresent() && !isShort ? ordered(name, order.get()) : toPlace(position, name, line);
    }

    private Awaited away(String name, OutWork work) {
        String what = "the " + name + (work.to().isEmpty() ? " at the machinist's" : " at " + work.to());
        return new Awaited(
                work.position(), what, since(what, work.on(), work.days().orElseGet(() -> notSaid(what))), false);
    }

    private Awaited ordered(String name, OrderLine order) {
        String what = "the " + name + (order.from().isEmpty() ? "" : " from " + order.from());
        if (order.promised().isPresent()) {
            long days = ChronoUnit.DAYS.between(order.on(), order.promised().get());
            int likely = (int) Math.max(0, Math.min(days, Days.MOST - PROMISE_LATE));
            assumptions.add("A promised day is taken as kept from " + PROMISE_EARLY + " days early to " + PROMISE_LATE
                    + " days late (common practice, no source).");
            Days span = new Days(Math.max(0, likely - PROMISE_EARLY), likely, likely + PROMISE_LATE);
            return new Awaited(order.position(), what, since(what, order.on(), span), false);
        }
        return new Awaited(
                order.position(), what, since(what, order.on(), order.days().orElseGet(() -> notSaid(what))), false);
    }

    private Awaited toPlace(String position, String name, Optional<PartsLine> line) {
        String what = "the " + name + ", still to be ordered";
        Days days = line.stream()
                .flatMap(one -> one.offers().stream())
                .map(Offer::days)
                .flatMap(Optional::stream)
                .min(Comparator.comparingInt(Days::likely))
                .orElseGet(() -> notSaid("the " + name));
        return new Awaited(position, what, new Delivery(Triangle.of(days), 0), true);
    }

    private Days notSaid(String what) {
        assumptions.add("Nobody said how long " + what + " takes: taken as " + NOT_SAID.least() + " to "
                + NOT_SAID.most() + " days, likely " + NOT_SAID.likely() + " (common practice, no source).");
        return NOT_SAID;
    }

    private Delivery since(String what, LocalDate day, Days days) {
        long gone = Math.max(0, ChronoUnit.DAYS.between(day, today));
        if (gone < days.most() || days.most() == 0) {
            return new Delivery(Triangle.of(days), Math.min(gone, days.most()));
        }
        assumptions.add("The time for " + what + " is over: taken as " + OVERDUE.least() + " to " + OVERDUE.most()
                + " days more (common practice, no source). Ask after it.");
        return new Delivery(Triangle.of(OVERDUE), 0);
    }
}
