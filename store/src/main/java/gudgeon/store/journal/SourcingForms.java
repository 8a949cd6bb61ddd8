package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.List;

/** The forms of facts about buying and machining. */
final class SourcingForms {
    private SourcingForms() {}

    static final List<FactForm<?>> ALL = List.of(
            form(
                    "offered",
                    Offered.class,
                    (fact, to) -> {
                        to.put("position", fact.position()).put("part", fact.part());
                        fact.origin().ifPresent(origin -> to.put("origin", JsonFields.word(origin)));
                        to.put("from", fact.from()).put("price", fact.price());
                        FactForms.days(to, fact.days());
                        FactForms.named(to, "sizes", fact.sizes());
                    },
                    from -> new Offered(
                            from.said("position"),
                            from.text("part"),
                            from.maybe("origin", Origin.class),
                            from.text("from"),
                            from.text("price"),
                            from.days("days"),
                            from.namedOrNone("sizes"))),
            form(
                    "ordered",
                    Ordered.class,
                    (fact, to) -> to.put("order", fact.order())
                            .put("position", fact.position())
                            .put("count", fact.count())
                            .put("from", fact.from())
                            .put("price", fact.price()),
                    from -> new Ordered(
                            from.text("order"),
                            from.said("position"),
                            from.count("count"),
                            from.text("from"),
                            from.text("price"))),
            form(
                    "ordered",
                    2,
                    Ordered.class,
                    (fact, to) -> {
                        to.put("order", fact.order())
                                .put("position", fact.position())
                                .put("part", fact.part());
                        fact.origin().ifPresent(origin -> to.put("origin", JsonFields.word(origin)));
                        to.put("count", fact.count()).put("from", fact.from()).put("price", fact.price());
                        FactForms.days(to, fact.days());
                        fact.promised().ifPresent(day -> to.put("promised", day.toString()));
                        FactForms.named(to, "sizes", fact.sizes());
                    },
                    from -> new Ordered(
                            from.text("order"),
                            from.said("position"),
                            from.text("part"),
                            from.maybe("origin", Origin.class),
                            from.count("count"),
                            from.text("from"),
                            from.text("price"),
                            from.days("days"),
                            from.day("promised"),
                            from.namedOrNone("sizes"))),
            form(
                    "arrived",
                    Arrived.class,
                    (fact, to) -> to.put("order", fact.order())
                            .put("position", fact.position())
                            .put("count", fact.count())
                            .put("remark", fact.remark()),
                    from -> new Arrived(
                            from.text("order"), from.said("position"), from.count("count"), from.text("remark"))),
            form(
                    "postage-paid",
                    PostagePaid.class,
                    (fact, to) -> to.put("order", fact.order()).put("price", fact.price()),
                    from -> new PostagePaid(from.text("order"), from.said("price"))),
            form(
                    "returned",
                    Returned.class,
                    (fact, to) -> to.put("order", fact.order())
                            .put("position", fact.position())
                            .put("part", fact.part())
                            .put("count", fact.count())
                            .put("why", fact.why())
                            .put("refund", fact.refund()),
                    from -> new Returned(
                            from.text("order"),
                            from.said("position"),
                            from.text("part"),
                            from.count("count"),
                            from.text("why"),
                            from.text("refund"))),
            form(
                    "work-sent",
                    WorkSent.class,
                    (fact, to) -> FactForms.days(
                            to.put("position", fact.position())
                                    .put("part", fact.part())
                                    .put("to", fact.to())
                                    .put("work", fact.work())
                                    .put("price", fact.price()),
                            fact.days()),
                    from -> new WorkSent(
                            from.said("position"),
                            from.text("part"),
                            from.text("to"),
                            from.text("work"),
                            from.text("price"),
                            from.days("days"))),
            form(
                    "work-back",
                    WorkBack.class,
                    (fact, to) -> to.put("position", fact.position())
                            .put("part", fact.part())
                            .put("remark", fact.remark()),
                    from -> new WorkBack(from.said("position"), from.text("part"), from.text("remark"))),
            form(
                    "pace-set",
                    PaceSet.class,
                    (fact, to) -> to.put("hours", fact.hours()),
                    from -> new PaceSet(from.hours("hours"))));
}
