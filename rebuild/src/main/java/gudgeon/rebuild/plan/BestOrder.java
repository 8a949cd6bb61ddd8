package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * An order of steps and checks in which the work that a fault would undo is least, weighted with the chance of the fault, beside the
 * book's own order: its steps as they stand in the book, each check only when a step cannot go on without it, and those that hold
 * nothing at the end. What an order costs is expected minutes of work undone and done again: for each check and each of its suspects,
 * the chance that the suspect is wrong, times the work of taking off and putting back what was fitted over it before the check.
 *
 * @param order all steps and checks, or those that are left
 * @param cost what it costs, in expected minutes
 * @param bound what no order costs less than
 * @param proven whether no order costs less, but for some millionths
 * @param bookOrder the book's own order
 * @param bookCost what that costs
 * @param gains where the order does better than the book's, sentences, the most worth first
 * @param assumptions what was assumed, sentences
 */
public record BestOrder(
        List<String> order,
        double cost,
        double bound,
        boolean proven,
        List<String> bookOrder,
        double bookCost,
        List<String> gains,
        List<String> assumptions) {
    public BestOrder {
        order = List.copyOf(order);
        bookOrder = List.copyOf(bookOrder);
        gains = List.copyOf(gains);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * The best order found for an engine book of which no part is known.
     *
     * @param limit after which the search ends; the same order comes out every time unless the time runs out
     */
    public static BestOrder of(EngineBook book, Chances chances, Duration limit) {
        Set<String> all = new LinkedHashSet<>(book.structure().precedence().order());
        return of(book.structure(), all, position -> chances.notSaid(), chances, limit);
    }

    /**
     * The best order found for what is left of a build, with the parts that it has.
     *
     * @param limit after which the search ends; the same order comes out every time unless the time runs out
     */
    public static BestOrder of(Build build, Duration limit) {
        Chances chances = Chances.of(build);
        Set<String> left = new Left(build).ids();
        return of(build.structure(), left, position -> chances.of(build, position), chances, limit);
    }

    private static BestOrder of(
            Structure structure, Set<String> left, ToDoubleFunction<String> chanceOf, Chances chances, Duration limit) {
        long begun = System.nanoTime();
        Burying burying = new Burying(structure, chanceOf);
        Orders orders = new Orders(structure, left, burying);
        CheckRace race = orders.race();
        // what comes after the search takes about as long as what came before
        long deadline = 2 * begun + limit.toNanos() - System.nanoTime();
        RaceOrder best = RaceOrder.of(race, deadline);
        List<String> order = orders.with(best.order());
        List<String> booked = orders.ofBook();
        double cost = burying.cost(order);
        return new BestOrder(
                order,
                cost,
                Math.min(cost, best.bound()),
                best.proven(),
                booked,
                burying.cost(booked),
                new Gains(structure, burying).of(order, booked),
                List.of(
                        chances.sentence(),
                        "Taking off is taken as half of putting on, and a step whose minutes the book does not say as "
                                + Burying.MINUTES_NOT_SAID + " min; common practice, no source."));
    }

    /** What the order is worth, as a sentence. */
    public String sentence() {
        String said = String.format(
                Locale.ROOT,
                "Weighted with the chance of each fault, %.1f min of work are undone and done again, %.1f min in the book's own order",
                cost,
                bookCost);
        return proven
                ? said + "; no order does better."
                : said + String.format(Locale.ROOT, "; no order does better than %.1f min.", bound);
    }
}
