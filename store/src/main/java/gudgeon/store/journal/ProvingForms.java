package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Proving.StopTouched;
import java.util.List;

/** The forms of facts about proving, starting and running in. */
final class ProvingForms {
    private static final String DISC = "an angle from 0 up to, but not, 360";

    private ProvingForms() {}

    private static boolean isOnDisc(double deg) {
        return deg >= 0 && deg < 360;
    }

    static final List<FactForm<?>> ALL = List.of(
            form(
                    "stop-touched",
                    StopTouched.class,
                    (fact, to) -> to.put("forward-deg", fact.forwardDeg())
                            .put("backward-deg", fact.backwardDeg())
                            .put("remark", fact.remark()),
                    from -> new StopTouched(
                            from.number("forward-deg", DISC, ProvingForms::isOnDisc),
                            from.number("backward-deg", DISC, ProvingForms::isOnDisc),
                            from.text("remark"))),
            form(
                    "lobe-read",
                    LobeRead.class,
                    (fact, to) -> to.put("valve", fact.valve())
                            .put("lift", fact.lift())
                            .put("opening", fact.opening())
                            .put("closing", fact.closing())
                            .put("remark", fact.remark()),
                    from -> new LobeRead(
                            from.said("valve"),
                            from.said("lift"),
                            from.said("opening"),
                            from.said("closing"),
                            from.text("remark"))),
            form(
                    "ignition-read",
                    IgnitionRead.class,
                    (fact, to) -> to.put("what", JsonFields.word(fact.what()))
                            .put("value", fact.value())
                            .put("remark", fact.remark()),
                    from -> new IgnitionRead(
                            from.word("what", IgnitionSize.class), from.said("value"), from.text("remark"))),
            form(
                    "start-item-seen",
                    StartItemSeen.class,
                    (fact, to) ->
                            to.put("item", fact.item()).put("good", fact.good()).put("remark", fact.remark()),
                    from -> new StartItemSeen(from.said("item"), from.yes("good"), from.text("remark"))),
            form(
                    "start-signed",
                    StartSigned.class,
                    (fact, to) -> {
                        to.put("by", fact.by());
                        FactForms.texts(to, "open", fact.open());
                        to.put("reason", fact.reason());
                    },
                    from -> new StartSigned(from.said("by"), from.texts("open"), from.text("reason"))),
            form(
                    "ran-in",
                    RanIn.class,
                    (fact, to) -> to.put("stage", fact.stage())
                            .put("minutes", fact.minutes())
                            .put("cooled", fact.cooled())
                            .put("found", fact.found()),
                    from -> new RanIn(
                            from.said("stage"), from.minutes("minutes"), from.yes("cooled"), from.text("found"))),
            form(
                    "fluid-changed",
                    FluidChanged.class,
                    (fact, to) -> to.put("fluid", fact.fluid()).put("found", fact.found()),
                    from -> new FluidChanged(from.said("fluid"), from.text("found"))));
}
