package gudgeon.rebuild.record;

import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.Optional;

/** Facts without the money and the names that are not to be told. What a person wrote as free text is left as it is. */
record Discreet(Wanted wanted) {
    /** Stands for whoever signed. */
    static final String SOMEONE = "the builder";

    /** The fact as it may be told; empty where nothing of it is left to tell. */
    Optional<Fact> told(Fact fact) {
        if (fact instanceof Corrected wrong) {
            return Optional.of(
                    new Corrected(wrong.entry(), wrong.why(), wrong.instead().flatMap(this::told)));
        }
        if (fact instanceof PostagePaid) {
            return wanted.prices() ? Optional.of(fact) : Optional.empty();
        }
        return Optional.of(withoutPrice(withoutNames(fact)));
    }

    private Fact withoutNames(Fact fact) {
        if (wanted.people()) {
            return fact;
        }
        if (fact instanceof Offered it) {
            return new Offered(it.position(), it.part(), it.origin(), "", it.price(), it.days(), it.sizes());
        }
        if (fact instanceof Ordered it) {
            return new Ordered(
                    it.order(),
                    it.position(),
                    it.part(),
                    it.origin(),
                    it.count(),
                    "",
                    it.price(),
                    it.days(),
                    it.promised(),
                    it.sizes());
        }
        if (fact instanceof WorkSent it) {
            return new WorkSent(it.position(), it.part(), "", it.work(), it.price(), it.days());
        }
        return fact instanceof StartSigned it ? new StartSigned(SOMEONE, it.open(), it.reason()) : fact;
    }

    private Fact withoutPrice(Fact fact) {
        if (wanted.prices()) {
            return fact;
        }
        if (fact instanceof PartEntered it) {
            return new PartEntered(it.part(), it.position(), it.origin(), it.count(), it.family(), "", it.remark());
        }
        if (fact instanceof Offered it) {
            return new Offered(it.position(), it.part(), it.origin(), it.from(), "", it.days(), it.sizes());
        }
        if (fact instanceof Ordered it) {
            return new Ordered(
                    it.order(),
                    it.position(),
                    it.part(),
                    it.origin(),
                    it.count(),
                    it.from(),
                    "",
                    it.days(),
                    it.promised(),
                    it.sizes());
        }
        if (fact instanceof WorkSent it) {
            return new WorkSent(it.position(), it.part(), it.to(), it.work(), "", it.days());
        }
        if (fact instanceof Returned it) {
            return new Returned(it.order(), it.position(), it.part(), it.count(), it.why(), "");
        }
        return fact instanceof OptionLine it
                ? new OptionLine(
                        it.option(), it.position(), it.what(), it.origin(), it.family(), "", it.days(), it.sizes())
                : fact;
    }
}
