package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Measuring.Stocked;
import gudgeon.rebuild.journal.Method;
import java.util.List;

/** The forms of facts about measuring. */
final class MeasuringForms {
    private MeasuringForms() {}

    static final List<FactForm<?>> ALL = List.of(
            form(
                    "reading-taken",
                    ReadingTaken.class,
                    (fact, to) -> {
                        to.put("dimension", fact.dimension())
                                .put("part", fact.part())
                                .put("piece", fact.piece())
                                .put("where", fact.at())
                                .put("value", fact.value())
                                .put("instrument", fact.instrument());
                        fact.celsius().ifPresent(degrees -> to.put("celsius", degrees));
                        to.put("remark", fact.remark());
                    },
                    from -> new ReadingTaken(
                            from.said("dimension"),
                            from.text("part"),
                            from.count("piece"),
                            from.text("where"),
                            from.said("value"),
                            from.text("instrument"),
                            from.celsius("celsius"),
                            from.text("remark"))),
            form(
                    "instrument-kept",
                    InstrumentKept.class,
                    (fact, to) -> {
                        to.put("instrument", fact.instrument())
                                .put("kind", JsonFields.word(fact.kind()))
                                .put("range", fact.range())
                                .put("resolution", fact.resolution())
                                .put("error", fact.error());
                        fact.checked().ifPresent(day -> to.put("checked", day.toString()));
                        to.put("remark", fact.remark());
                    },
                    from -> new InstrumentKept(
                            from.said("instrument"),
                            from.word("kind", InstrumentKind.class),
                            from.text("range"),
                            from.text("resolution"),
                            from.text("error"),
                            from.day("checked"),
                            from.text("remark"))),
            form(
                    "fitting-said",
                    FittingSaid.class,
                    (fact, to) -> {
                        to.put("position", fact.position()).put("method", JsonFields.word(fact.method()));
                        fact.celsius().ifPresent(degrees -> to.put("celsius", degrees));
                        to.put("remark", fact.remark());
                    },
                    from -> new FittingSaid(
                            from.said("position"),
                            from.word("method", Method.class),
                            from.celsius("celsius"),
                            from.text("remark"))),
            form(
                    "stocked",
                    Stocked.class,
                    (fact, to) -> FactForms.texts(to.put("position", fact.position()), "sizes", fact.sizes()),
                    from -> new Stocked(from.said("position"), from.texts("sizes"))));
}
