package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;
import static gudgeon.rebuild.journal.Naming.with;

import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.math.BigDecimal;
import java.util.Optional;

/** What an entry about buying and machining says. */
record SourcingWords(Naming naming) {
    String sentence(Sourcing fact) {
        if (fact instanceof Offered offered) {
            return "Offered for " + naming.name(offered.position()) + part(offered.part(), offered.origin())
                    + with(" by ", offered.from()) + with(" at ", offered.price()) + days(offered.days())
                    + with(": ", naming.dimensions(offered.sizes())) + ".";
        }
        if (fact instanceof Ordered ordered) {
            return "Ordered: " + naming.counted(ordered.position(), ordered.count())
                    + part(ordered.part(), ordered.origin()) + with(" from ", ordered.from())
                    + (ordered.price().isEmpty() ? "" : " at " + ordered.price() + " each")
                    + Naming.order(ordered.order()) + days(ordered.days())
                    + ordered.promised().map(day -> ", promised for " + day).orElse("")
                    + with(": ", naming.dimensions(ordered.sizes())) + ".";
        }
        if (fact instanceof Arrived came) {
            return "Came in: " + naming.counted(came.position(), came.count()) + Naming.order(came.order()) + "."
                    + and(came.remark());
        }
        if (fact instanceof PostagePaid paid) {
            return "Postage paid" + Naming.order(paid.order()) + ": " + paid.price() + ".";
        }
        return fact instanceof Returned back
                ? "Sent back: " + naming.counted(back.position(), back.count()) + quoted(back.part())
                        + Naming.order(back.order()) + with(", refund ", back.refund()) + "." + and(back.why())
                : ofWork(fact);
    }

    private String ofWork(Sourcing fact) {
        if (fact instanceof WorkSent sent) {
            return "To " + (sent.to().isEmpty() ? "the machinist" : sent.to()) + " went "
                    + naming.part(sent.position(), sent.part()) + with(" at ", sent.price()) + days(sent.days()) + "."
                    + and(sent.work());
        }
        if (fact instanceof WorkBack back) {
            return "Back from the machinist: " + naming.part(back.position(), back.part()) + "." + and(back.remark());
        }
        PaceSet pace = (PaceSet) fact;
        return "Time for the bench: "
                + BigDecimal.valueOf(pace.hours()).stripTrailingZeros().toPlainString() + " h a week.";
    }

    private static String part(String part, Optional<Origin> origin) {
        return quoted(part) + origin.map(from -> ", " + from.words()).orElse("");
    }

    private static String quoted(String part) {
        return part.isEmpty() ? "" : " '" + part + "'";
    }

    static String days(Optional<Days> days) {
        return days.map(span -> ", "
                        + (span.least() == span.most()
                                ? span.likely() + " days"
                                : span.least() + " to " + span.most() + " days, likely " + span.likely()))
                .orElse("");
    }
}
