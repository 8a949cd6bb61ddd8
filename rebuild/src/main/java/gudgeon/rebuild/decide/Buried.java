package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.source.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** What it would cost to get at a part again, against what a new one costs. */
final class Buried {
    private static final long MINUTES_PER_HOUR = 60;

    /** Off and on again, off taken as half of on; common practice, no source. */
    private static final double OFF_AND_ON = 1.5;

    /** A part that costs no more than this for each hour of work over it is cheap, in its own currency; a habit, no source. */
    private static final BigDecimal CHEAP_AN_HOUR = BigDecimal.TEN;

    private final Build build;

    Buried(Build build) {
        this.build = build;
    }

    /** Why a new part is fitted whatever the old one measures, if it is. */
    Optional<String> cheap(Position position) {
        long minutes = minutesOver(position);
        if (minutes < MINUTES_PER_HOUR) {
            return Optional.empty();
        }
        String again = Amount.time(minutes) + " of work would be undone and done again to get at it";
        if (!position.bearing().isEmpty()) {
            return Optional.of("A rolling bearing shows little of its wear from outside, and " + again + ".");
        }
        BigDecimal worth = CHEAP_AN_HOUR
                .multiply(BigDecimal.valueOf(minutes))
                .divide(BigDecimal.valueOf(MINUTES_PER_HOUR), RoundingMode.HALF_UP);
        return price(position)
                .map(one -> one.times(position.quantity()))
                .filter(all -> all.amount().compareTo(worth) <= 0)
                .map(all ->
                        "A new one costs " + all.words() + ", and " + again + ". A cheap buried part is always new.");
    }

    /** What a worn part that is kept is weighed against, if it lies deep. */
    Optional<String> weigh(Position position) {
        long minutes = minutesOver(position);
        return minutes < MINUTES_PER_HOUR
                ? Optional.empty()
                : Optional.of(
                        "It is worn within its limits, and " + Amount.time(minutes)
                                + " of work would be undone and done again to get at it: weigh the price of a new one against that.");
    }

    private long minutesOver(Position position) {
        double minutes = build.structure().allCovering(position.id()).stream()
                .filter(step -> !step.fits().contains(position.id()))
                .mapToInt(Step::minutes)
                .sum();
        return Math.round(OFF_AND_ON * minutes);
    }

    /** The least that one was offered or ordered for; where currencies differ, the last one said. */
    private Optional<Money> price(Position position) {
        Stream<String> offered = build.told(Offered.class, position.id()).stream()
                .map(Told::fact)
                .map(Offered::price);
        Stream<String> ordered = build.told(Ordered.class, position.id()).stream()
                .map(Told::fact)
                .map(Ordered::price);
        return Stream.concat(offered, ordered)
                .flatMap(text -> money(text).stream())
                .reduce((first, then) -> first.currency().equals(then.currency())
                        ? Stream.of(first, then)
                                .min(Comparator.comparing(Money::amount))
                                .orElseThrow()
                        : then);
    }

    private static Optional<Money> money(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Money.of(text));
        } catch (Money.NotMoney unreadable) {
            return Optional.empty();
        }
    }
}
