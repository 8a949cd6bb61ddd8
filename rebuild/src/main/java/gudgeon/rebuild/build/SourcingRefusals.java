package gudgeon.rebuild.build;

import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.List;
import java.util.function.Predicate;

/** Why a fact about buying and machining can't be taken down as it stands. */
final class SourcingRefusals {
    private static final double HOURS_OF_A_WEEK = 168;

    private final Build build;
    private final Refusals refusals;

    SourcingRefusals(Build build, Refusals refusals) {
        this.build = build;
        this.refusals = refusals;
    }

    void look(Sourcing fact) {
        if (fact instanceof Offered offered) {
            refusals.said(offered.from(), "who offers it");
        } else if (fact instanceof Ordered ordered) {
            refusals.count(ordered.count());
        } else if (fact instanceof Arrived came) {
            refusals.count(came.count());
            ordered(came.order(), came.position());
        } else if (fact instanceof PostagePaid paid) {
            ordered(paid.order());
            refusals.said(paid.price(), "what the postage cost");
        } else if (fact instanceof Returned back) {
            returned(back);
        } else {
            ofWork(fact);
        }
    }

    private void returned(Returned back) {
        refusals.count(back.count());
        ordered(back.order(), back.position());
        refusals.partOf(back.position(), back.part());
        refusals.said(back.why(), "why it goes back");
    }

    private void ofWork(Sourcing fact) {
        if (fact instanceof WorkSent sent) {
            refusals.partOf(sent.position(), sent.part());
            refusals.said(sent.work(), "what is to be done to it");
            if (isAway(sent.position(), sent.part())) {
                refusals.refuse("The " + named(sent.position(), sent.part())
                        + " is with the machinist already. Say first that it is back.");
            }
        } else if (fact instanceof WorkBack back && !isAway(back.position(), back.part())) {
            refusals.refuse("The " + named(back.position(), back.part())
                    + " was not sent to a machinist, so it can't come back.");
        } else if (fact instanceof PaceSet pace && !(pace.hours() > 0 && pace.hours() <= HOURS_OF_A_WEEK)) {
            refusals.refuse(
                    "Hours a week for the bench are above 0 and at most 168. Write how many you find, such as 6.");
        }
    }

    private void ordered(String order, String position) {
        if (isUnknown(build.told(Ordered.class, position), order)) {
            refusals.refuse(
                    "No order '" + order + "' for the " + build.structure().name(position)
                            + " is in the journal. Take the order down first, or leave its name empty.");
        }
    }

    private void ordered(String order) {
        if (isUnknown(build.told(Ordered.class), order)) {
            refusals.refuse("No order '" + order + "' is in the journal. Take the order down first.");
        }
    }

    private static boolean isUnknown(List<Told<Ordered>> orders, String order) {
        return !order.isEmpty()
                && orders.stream().noneMatch(told -> told.fact().order().equals(order));
    }

    /** Whether a part was sent to a machinist more often than it came back. */
    private boolean isAway(String position, String part) {
        return count(WorkSent.class, position, sent -> sent.part().equals(part))
                > count(WorkBack.class, position, back -> back.part().equals(part));
    }

    private <F extends Sourcing> long count(Class<F> kind, String position, Predicate<F> which) {
        return build.told(kind, position).stream()
                .filter(told -> which.test(told.fact()))
                .count();
    }

    private String named(String position, String part) {
        return build.structure().name(position) + (part.isEmpty() ? "" : " '" + part + "'");
    }
}
