package gudgeon.rebuild.source;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.source.Money.NotMoney;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Adds up what was paid and what will be. */
final class Accounts {
    private final Build build;
    private final List<Money> paid = new ArrayList<>();
    private final List<Money> refunded = new ArrayList<>();
    private final List<Money> toCome = new ArrayList<>();
    private final Set<String> unpriced = new LinkedHashSet<>();
    private final Set<String> faults = new LinkedHashSet<>();

    Accounts(Build build) {
        this.build = build;
    }

    /**
     * The account.
     *
     * @param lines what is bought
     * @param work what was at a machinist's or is
     */
    Account of(List<PartsLine> lines, List<OutWork> work) {
        build.told(Sourcing.class).forEach(told -> take(told.fact()));
        for (Told<PartEntered> told : build.told(PartEntered.class)) {
            add(told.fact().price(), "the " + told.fact().part(), 1, paid);
        }
        for (OutWork sent : work) {
            String what = "the work on the " + sent.name();
            if (!add(sent.written(), what, 1, sent.back().isPresent() ? paid : toCome)) {
                unpriced.add(what);
            }
        }
        lines.stream().filter(line -> line.toOrder() > 0).forEach(this::toBuy);
        return new Account(
                new Sum(paid).minus(new Sum(refunded)), new Sum(toCome), List.copyOf(unpriced), List.copyOf(faults));
    }

    private void take(Sourcing fact) {
        if (fact instanceof Ordered ordered) {
            String what = "the " + build.structure().name(ordered.position());
            if (!add(ordered.price(), what, ordered.count(), paid)) {
                unpriced.add(what);
            }
        } else if (fact instanceof PostagePaid postage) {
            add(postage.price(), "postage of order " + postage.order(), 1, paid);
        } else if (fact instanceof Returned back) {
            add(back.refund(), "the refund for the " + build.structure().name(back.position()), 1, refunded);
        }
    }

    private void toBuy(PartsLine line) {
        Optional<Money> cheapest = cheapest(line.offers());
        if (cheapest.isPresent()) {
            toCome.add(cheapest.get().times(line.toOrder()));
        } else {
            unpriced.add("the " + line.name());
        }
    }

    /** The cheapest offer; of offers in several currencies none is, so the first counts. */
    private static Optional<Money> cheapest(List<Offer> offers) {
        List<Money> prices =
                offers.stream().flatMap(offer -> offer.price().stream()).toList();
        boolean one = prices.stream().map(Money::currency).distinct().count() <= 1;
        return one ? prices.stream().min(Comparator.comparing(Money::amount)) : Optional.of(prices.get(0));
    }

    private boolean add(String written, String what, int count, List<Money> to) {
        if (written.isBlank()) {
            return false;
        }
        try {
            to.add(Money.of(written).times(count));
            return true;
        } catch (NotMoney not) {
            faults.add("The price of " + what + " is not counted. " + not.sentence());
            return false;
        }
    }
}
