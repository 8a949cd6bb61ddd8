package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionDropped;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Deciding.OptionTaken;
import java.util.Optional;

/** Why a fact about options can't be taken down as it stands. */
final class DecidingRefusals {
    private static final int LONGEST_NAME = 60;

    private final Build build;
    private final Refusals refusals;

    DecidingRefusals(Build build, Refusals refusals) {
        this.build = build;
        this.refusals = refusals;
    }

    void look(Deciding fact) {
        if (fact instanceof OptionDrawn drawn) {
            refusals.said(drawn.option(), "a short name for the option, such as 'rebore'");
            if (drawn.option().length() > LONGEST_NAME) {
                refusals.refuse("A short name has at most " + LONGEST_NAME + " letters. Say more behind it.");
            }
            return;
        }
        drawn(fact.option());
        if (fact instanceof OptionLine line) {
            line(line);
        } else if (fact instanceof OptionTaken taken) {
            refusals.said(taken.why(), "why it is taken; the next owner will read it");
        } else if (fact instanceof OptionDropped dropped) {
            refusals.said(dropped.why(), "why it is dropped, so that it need not be thought through again");
        }
    }

    private void drawn(String option) {
        if (build.told(OptionDrawn.class, option).isEmpty()) {
            refusals.refuse("No option '" + option + "' is drawn in this build. Draw it first.");
        }
    }

    private void line(OptionLine line) {
        if (!line.family().isEmpty() && build.structure().member(line.family()).isEmpty()) {
            refusals.refuse(
                    "The engine book knows no engine '" + line.family() + "' in the family. Choose one from the list.");
        }
        line.sizes().forEach((id, size) -> {
            Optional<Dimension> dimension =
                    build.structure().dimension(id).filter(known -> known.of().equals(line.position()));
            if (dimension.isEmpty()) {
                refusals.refuse("The engine book has no dimension '" + id + "' of the "
                        + build.structure().name(line.position()) + ". Choose one from the list.");
            }
            dimension
                    .map(known -> TypedSize.of(known.unit(), size, 1))
                    .filter(TypedSize.Refused.class::isInstance)
                    .map(TypedSize.Refused.class::cast)
                    .ifPresent(refused -> refusals.refuse(
                            dimension.orElseThrow().name() + ": '" + size + "' can't be read. " + refused.sentence()));
        });
    }
}
