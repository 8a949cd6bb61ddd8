package gudgeon.rebuild.source;

import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import gudgeon.rebuild.source.Money.NotMoney;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Why the price in a fact can't be taken down as it stands. A price may be left open. */
public final class PriceRefusals {
    private PriceRefusals() {}

    /** Every reason, each a sentence, once. */
    public static List<String> of(List<Fact> facts) {
        return facts.stream()
                .flatMap(fact -> price(fact).stream())
                .filter(price -> !price.isBlank())
                .flatMap(PriceRefusals::refusal)
                .distinct()
                .toList();
    }

    private static Stream<String> refusal(String price) {
        try {
            Money.of(price);
            return Stream.empty();
        } catch (NotMoney why) {
            return Stream.of(why.sentence());
        }
    }

    private static Optional<String> price(Fact fact) {
        if (fact instanceof Offered offered) {
            return Optional.of(offered.price());
        } else if (fact instanceof Ordered ordered) {
            return Optional.of(ordered.price());
        } else if (fact instanceof PostagePaid paid) {
            return Optional.of(paid.price());
        } else if (fact instanceof Returned back) {
            return Optional.of(back.refund());
        } else if (fact instanceof WorkSent sent) {
            return Optional.of(sent.price());
        } else if (fact instanceof PartEntered part) {
            return Optional.of(part.price());
        }
        return fact instanceof OptionLine line ? Optional.of(line.price()) : Optional.empty();
    }
}
