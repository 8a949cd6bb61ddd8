package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Finding.HuntClosed;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.Finding.SuspectTaken;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.LeakPath;
import gudgeon.rebuild.journal.Recurs;
import gudgeon.rebuild.journal.Trouble;
import gudgeon.rebuild.journal.Turning;
import java.util.List;

/** The forms of facts about faults looked for. */
final class FindingForms {
    private FindingForms() {}

    static final List<FactForm<?>> ALL = List.of(
            form(
                    "hunt-opened",
                    HuntOpened.class,
                    (fact, to) -> to.put("hunt", fact.hunt())
                            .put("trouble", JsonFields.word(fact.trouble()))
                            .put("what", fact.what()),
                    from -> new HuntOpened(from.said("hunt"), from.word("trouble", Trouble.class), from.text("what"))),
            form(
                    "tight-felt",
                    TightFelt.class,
                    (fact, to) -> to.put("hunt", fact.hunt())
                            .put("turning", JsonFields.word(fact.direction()))
                            .put("angle-deg", fact.angleDeg())
                            .put("doubt-deg", fact.doubtDeg())
                            .put("stroke-known", fact.strokeKnown())
                            .put("recurs", JsonFields.word(fact.recurs()))
                            .put("felt", fact.felt()),
                    from -> new TightFelt(
                            from.said("hunt"),
                            from.word("turning", Turning.class),
                            from.number(
                                    "angle-deg", "an angle from 0 up to, but not, 720", deg -> deg >= 0 && deg < 720),
                            from.number("doubt-deg", "a doubt above 0 to 90 degrees", deg -> deg > 0 && deg <= 90),
                            from.yes("stroke-known"),
                            from.word("recurs", Recurs.NOT_SAID),
                            from.text("felt"))),
            form(
                    "tried",
                    Tried.class,
                    (fact, to) -> to.put("hunt", fact.hunt())
                            .put("test", fact.test())
                            .put("answer", fact.answer())
                            .put("remark", fact.remark()),
                    from -> new Tried(from.said("hunt"), from.said("test"), from.said("answer"), from.text("remark"))),
            form(
                    "suspect-taken",
                    SuspectTaken.class,
                    (fact, to) -> to.put("hunt", fact.hunt())
                            .put("suspect", fact.suspect())
                            .put("why", fact.why()),
                    from -> new SuspectTaken(from.said("hunt"), from.said("suspect"), from.text("why"))),
            form(
                    "hunt-closed",
                    HuntClosed.class,
                    (fact, to) -> to.put("hunt", fact.hunt())
                            .put("suspect", fact.suspect())
                            .put("what", fact.what()),
                    from -> new HuntClosed(from.said("hunt"), from.text("suspect"), from.text("what"))),
            form(
                    "pressure-read",
                    PressureRead.class,
                    (fact, to) -> {
                        to.put("how", JsonFields.word(fact.how()))
                                .put("pressure", fact.pressure())
                                .put("throttle-open", fact.throttleOpen());
                        fact.altitudeM().ifPresent(metres -> to.put("altitude-m", metres));
                        to.put("remark", fact.remark());
                    },
                    from -> new PressureRead(
                            from.word("how", Cranking.class),
                            from.said("pressure"),
                            from.yes("throttle-open"),
                            from.between("altitude-m", -500, 6000),
                            from.text("remark"))),
            form(
                    "leak-down-read",
                    LeakDownRead.class,
                    (fact, to) -> {
                        to.put("loss", fact.loss());
                        FactForms.texts(
                                to,
                                "out",
                                fact.out().stream().map(JsonFields::word).toList());
                        to.put("remark", fact.remark());
                    },
                    from -> new LeakDownRead(
                            from.said("loss"), from.words("out", LeakPath.class), from.text("remark"))));
}
