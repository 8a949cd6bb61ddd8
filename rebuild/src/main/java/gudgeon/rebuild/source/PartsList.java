package gudgeon.rebuild.source;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.source.Money.NotMoney;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What must be bought, why, and how far it has come: a pure function of the build and the day.
 *
 * @param lines positions for which something is needed or was ordered or offered, in the book's order
 * @param arrivals what was ordered and what came of it
 * @param work what was sent to machinists
 * @param suppliers who offers and sends what
 * @param account the money
 */
public record PartsList(
        List<PartsLine> lines, Arrivals arrivals, List<OutWork> work, List<Supplier> suppliers, Account account) {
    public PartsList {
        lines = List.copyOf(lines);
        work = List.copyOf(work);
        suppliers = List.copyOf(suppliers);
    }

    /**
     * The parts list of a build.
     *
     * @param today the day by which something is late
     */
    public static PartsList of(Build build, LocalDate today) {
        Arrivals arrivals = Arrivals.of(build, today);
        List<Offer> offers = offers(build);
        Wants wants = new Wants(build);
        List<PartsLine> lines = build.structure().positions().stream()
                .map(position -> line(build, position, wants.of(position), offers))
                .filter(line -> line.needed() > 0
                        || !line.offers().isEmpty()
                        || arrivals.lines().stream()
                                .anyMatch(order -> order.position().equals(line.position())))
                .toList();
        List<OutWork> work = OutWork.of(build);
        return new PartsList(
                lines, arrivals, work, suppliers(build, arrivals, lines), new Accounts(build).of(lines, work));
    }

    /** What is still to be ordered. */
    public List<PartsLine> toOrder() {
        return lines.stream().filter(line -> line.toOrder() > 0).toList();
    }

    /** How the list stands, as a sentence. */
    public String sentence() {
        long open = arrivals.lines().stream().filter(line -> line.open() > 0).count();
        return toOrder().isEmpty() && open == 0
                ? "Nothing is to be ordered, and nothing is on its way."
                : Amount.of(toOrder().size(), "position") + " to order, " + Amount.of(open, "position")
                        + " still to come.";
    }

    private static PartsLine line(Build build, Position position, Optional<Want> want, List<Offer> offers) {
        int refused = build.parts(position.id()).stream()
                .filter(Wants::isRefused)
                .mapToInt(Part::count)
                .sum();
        int fit = build.parts(position.id()).stream()
                .filter(part -> !Wants.isRefused(part))
                .mapToInt(Part::count)
                .sum();
        int arrived = build.place(position.id()).supply().arrived();
        int ordered = build.place(position.id()).supply().ordered();
        int inHand = Math.max(arrived - refused, build.place(position.id()).isFilled() ? 0 : fit);
        int needed = want.map(Want::count).orElse(0);
        return new PartsLine(
                position.id(),
                position.name(),
                want,
                needed,
                ordered,
                Math.max(0, inHand),
                Math.max(0, needed - ordered - Math.max(0, inHand)),
                offers.stream()
                        .filter(offer -> offer.position().equals(position.id()))
                        .toList());
    }

    private static List<Offer> offers(Build build) {
        Map<List<String>, Offer> offers = new LinkedHashMap<>();
        for (Told<Offered> told : build.told(Offered.class)) {
            Offered offer = told.fact();
            if (build.structure().position(offer.position()).isPresent()) {
                offers.put(
                        List.of(offer.position(), offer.from(), offer.part()),
                        new Offer(
                                told.number(),
                                offer.position(),
                                build.structure().name(offer.position()),
                                offer.part(),
                                offer.origin(),
                                offer.from(),
                                offer.price(),
                                price(offer.price()),
                                offer.days(),
                                offer.sizes()));
            }
        }
        return List.copyOf(offers.values());
    }

    private static Optional<Money> price(String written) {
        try {
            return Optional.of(Money.of(written));
        } catch (NotMoney said) {
            // the account says so of what is ordered; an offer without a price is still one
            return Optional.empty();
        }
    }

    private static List<Supplier> suppliers(Build build, Arrivals arrivals, List<PartsLine> lines) {
        List<Offer> open = lines.stream()
                .filter(line -> line.toOrder() > 0)
                .flatMap(line -> line.offers().stream())
                .toList();
        Set<String> names = new LinkedHashSet<>();
        Stream.concat(
                        arrivals.lines().stream().map(OrderLine::from),
                        open.stream().map(Offer::from))
                .forEach(names::add);
        List<Supplier> suppliers = new ArrayList<>();
        for (String name : names) {
            List<OrderLine> orders = arrivals.lines().stream()
                    .filter(line -> line.from().equals(name))
                    .toList();
            suppliers.add(new Supplier(
                    name,
                    orders,
                    open.stream().filter(offer -> offer.from().equals(name)).toList(),
                    postage(build, orders)));
        }
        return suppliers;
    }

    private static Sum postage(Build build, List<OrderLine> orders) {
        return new Sum(orders.stream()
                .map(OrderLine::order)
                .distinct()
                .filter(order -> !order.isEmpty())
                .flatMap(order -> build.told(PostagePaid.class, order).stream())
                .flatMap(told -> price(told.fact().price()).stream())
                .toList());
    }
}
