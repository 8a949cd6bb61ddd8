package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.FamilyMember;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Supply;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.source.Money;
import gudgeon.rebuild.source.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says what of an option is in hand, and adds up what it costs. */
final class OptionParts {
    private final Build build;

    OptionParts(Build build) {
        this.build = build;
    }

    OptionPart part(OptionLine line) {
        boolean inHand = isInHand(line);
        return new OptionPart(
                line,
                build.structure().name(line.position()),
                build.structure().member(line.family()).map(FamilyMember::name).orElse(""),
                inHand,
                standing(line, inHand),
                fault(line));
    }

    Bill bill(List<OptionPart> parts) {
        List<Money> all = new ArrayList<>();
        List<Money> toCome = new ArrayList<>();
        List<String> unpriced = new ArrayList<>();
        for (OptionPart part : parts) {
            Optional<Money> price = price(part.line());
            if (price.isEmpty()) {
                unpriced.add(part.name());
            }
            price.ifPresent(all::add);
            price.filter(money -> !part.inHand() && !isOrdered(part.line())).ifPresent(toCome::add);
        }
        return new Bill(new Sum(all), new Sum(toCome), unpriced);
    }

    private String standing(OptionLine line, boolean inHand) {
        if (!Applied.isNew(line)) {
            return build.partFor(line.position()).isPresent()
                    ? "work on the part that is there"
                    : "no part is here to work on";
        }
        return inHand ? "in hand" : isOrdered(line) ? "ordered, not come yet" : "to be bought";
    }

    private boolean isOrdered(OptionLine line) {
        Supply supply = build.place(line.position()).supply();
        return Applied.isNew(line) && supply.ordered() > 0;
    }

    /** Whether a part of that origin and family is here that can be used. */
    boolean isInHand(OptionLine line) {
        return Applied.isNew(line)
                && build.told(PartEntered.class, line.position()).stream()
                        .map(Told::fact)
                        .filter(part -> part.family().equals(line.family()))
                        .filter(part -> line.origin().isEmpty()
                                || part.origin() == line.origin().get())
                        .flatMap(part -> build.part(line.position(), part.part()).stream())
                        .anyMatch(part -> !part.spent() && part.agrees());
    }

    private static Optional<Money> price(OptionLine line) {
        try {
            return line.price().isBlank() ? Optional.empty() : Optional.of(Money.of(line.price()));
        } catch (Money.NotMoney unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<String> fault(OptionLine line) {
        if (line.price().isBlank()) {
            return Optional.empty();
        }
        try {
            Money.of(line.price());
            return Optional.empty();
        } catch (Money.NotMoney unreadable) {
            return Optional.of(unreadable.sentence());
        }
    }
}
