package gudgeon.store.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.ChanceTaken;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.CheckWaived;
import gudgeon.rebuild.journal.Fact.Cleaned;
import gudgeon.rebuild.journal.Fact.Compared;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.Disposed;
import gudgeon.rebuild.journal.Fact.FaultFound;
import gudgeon.rebuild.journal.Fact.Fitted;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Fact.StepBegun;
import gudgeon.rebuild.journal.Fact.StepDone;
import gudgeon.rebuild.journal.Fact.StepStopped;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Fact.TimeSpent;
import gudgeon.rebuild.journal.Fact.Undone;
import gudgeon.rebuild.journal.Fact.WentTight;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;

/** The form of every kind of fact. */
final class FactForms {
    private FactForms() {}

    private static final List<FactForm<?>> WORK = List.of(
            form(
                    "started",
                    Started.class,
                    (fact, to) -> to.put("engine", fact.engine())
                            .put("book", fact.book())
                            .put("found", JsonFields.word(fact.found())),
                    from -> new Started(from.text("engine"), from.hash("book"), from.word("found", Found.class))),
            form(
                    "book-changed",
                    BookChanged.class,
                    (fact, to) -> to.put("book", fact.book()).put("why", fact.why()),
                    from -> new BookChanged(from.hash("book"), from.text("why"))),
            form(
                    "taken-off",
                    TakenOff.class,
                    (fact, to) -> to.put("position", fact.position())
                            .put("count", fact.count())
                            .put("bag", fact.bag())
                            .put("place", fact.place())
                            .put("remark", fact.remark()),
                    from -> new TakenOff(
                            from.said("position"),
                            from.count("count"),
                            from.text("bag"),
                            from.text("place"),
                            from.text("remark"))),
            form(
                    "part-entered",
                    PartEntered.class,
                    (fact, to) -> to.put("part", fact.part())
                            .put("position", fact.position())
                            .put("origin", JsonFields.word(fact.origin()))
                            .put("count", fact.count())
                            .put("remark", fact.remark()),
                    from -> new PartEntered(
                            from.said("part"),
                            from.said("position"),
                            from.word("origin", Origin.class),
                            from.count("count"),
                            from.text("remark"))),
            form(
                    "part-entered",
                    2,
                    PartEntered.class,
                    (fact, to) -> to.put("part", fact.part())
                            .put("position", fact.position())
                            .put("origin", JsonFields.word(fact.origin()))
                            .put("count", fact.count())
                            .put("family", fact.family())
                            .put("price", fact.price())
                            .put("remark", fact.remark()),
                    from -> new PartEntered(
                            from.said("part"),
                            from.said("position"),
                            from.word("origin", Origin.class),
                            from.count("count"),
                            from.text("family"),
                            from.text("price"),
                            from.text("remark"))),
            form(
                    "measured",
                    Measured.class,
                    (fact, to) -> {
                        to.put("position", fact.position()).put("part", fact.part());
                        named(to, "sizes", fact.sizes());
                    },
                    from -> new Measured(from.said("position"), from.text("part"), from.named("sizes"))),
            form(
                    "compared",
                    Compared.class,
                    (fact, to) -> {
                        to.put("position", fact.position()).put("part", fact.part());
                        texts(to, "what", fact.what());
                        to.put("agrees", fact.agrees()).put("remark", fact.remark());
                    },
                    from -> new Compared(
                            from.said("position"),
                            from.text("part"),
                            from.texts("what"),
                            from.yes("agrees"),
                            from.text("remark"))),
            form(
                    "cleaned",
                    Cleaned.class,
                    (fact, to) -> to.put("position", fact.position())
                            .put("how", JsonFields.word(fact.how()))
                            .put("remark", fact.remark()),
                    from -> new Cleaned(from.said("position"), from.word("how", Cleaning.class), from.text("remark"))),
            form(
                    "disposed",
                    Disposed.class,
                    (fact, to) -> to.put("position", fact.position())
                            .put("part", fact.part())
                            .put("disposition", JsonFields.word(fact.disposition()))
                            .put("why", fact.why()),
                    from -> new Disposed(
                            from.said("position"),
                            from.text("part"),
                            from.word("disposition", Disposition.class),
                            from.text("why"))),
            form(
                    "step-begun",
                    StepBegun.class,
                    (fact, to) -> to.put("step", fact.step()),
                    from -> new StepBegun(from.said("step"))),
            form(
                    "step-done",
                    StepDone.class,
                    (fact, to) -> to.put("step", fact.step()).put("remark", fact.remark()),
                    from -> new StepDone(from.said("step"), from.text("remark"))),
            form(
                    "step-stopped",
                    StepStopped.class,
                    (fact, to) -> to.put("step", fact.step()).put("why", fact.why()),
                    from -> new StepStopped(from.said("step"), from.text("why"))),
            form(
                    "fitted",
                    Fitted.class,
                    (fact, to) -> to.put("position", fact.position())
                            .put("part", fact.part())
                            .put("count", fact.count())
                            .put("way", JsonFields.word(fact.way()))
                            .put("remark", fact.remark()),
                    from -> new Fitted(
                            from.said("position"),
                            from.text("part"),
                            from.count("count"),
                            from.word("way", Way.NOT_SAID),
                            from.text("remark"))),
            form(
                    "check-passed",
                    CheckPassed.class,
                    (fact, to) -> to.put("check", fact.check())
                            .put("reading", fact.reading())
                            .put("remark", fact.remark()),
                    from -> new CheckPassed(from.said("check"), from.text("reading"), from.text("remark"))),
            form(
                    "check-failed",
                    CheckFailed.class,
                    (fact, to) -> to.put("check", fact.check())
                            .put("reading", fact.reading())
                            .put("remark", fact.remark()),
                    from -> new CheckFailed(from.said("check"), from.text("reading"), from.text("remark"))),
            form(
                    "check-waived",
                    CheckWaived.class,
                    (fact, to) -> to.put("check", fact.check()).put("why", fact.why()),
                    from -> new CheckWaived(from.said("check"), from.said("why"))),
            form(
                    "undone",
                    Undone.class,
                    (fact, to) -> texts(to.put("step", fact.step()).put("why", fact.why()), "to-buy", fact.toBuy()),
                    from -> new Undone(from.said("step"), from.text("why"), from.texts("to-buy"))),
            form(
                    "fault-found",
                    FaultFound.class,
                    (fact, to) -> to.put("where", fact.at()).put("what", fact.what()),
                    from -> new FaultFound(from.said("where"), from.text("what"))),
            form(
                    "went-tight",
                    WentTight.class,
                    (fact, to) -> {
                        fact.forwardDeg().ifPresent(angle -> to.put("forward-deg", angle));
                        fact.backwardDeg().ifPresent(angle -> to.put("backward-deg", angle));
                        to.put("remark", fact.remark());
                    },
                    from -> new WentTight(
                            from.crankAngle("forward-deg"), from.crankAngle("backward-deg"), from.text("remark"))),
            form(
                    "noted",
                    Noted.class,
                    (fact, to) -> to.put("on", fact.on()).put("text", fact.text()),
                    from -> new Noted(from.text("on"), from.said("text"))),
            form(
                    "photographed",
                    Photographed.class,
                    (fact, to) ->
                            to.put("on", fact.on()).put("photo", fact.photo()).put("caption", fact.caption()),
                    from -> new Photographed(from.text("on"), from.hash("photo"), from.text("caption"))),
            form(
                    "time-spent",
                    TimeSpent.class,
                    (fact, to) -> to.put("on", fact.on()).put("minutes", fact.minutes()),
                    from -> new TimeSpent(from.text("on"), from.minutes("minutes"))),
            form(
                    "chance-taken",
                    ChanceTaken.class,
                    (fact, to) ->
                            to.put("origin", JsonFields.word(fact.origin())).put("chance", fact.chance()),
                    from -> new ChanceTaken(from.word("origin", Origin.class), from.share("chance"))),
            form(
                    "corrected",
                    Corrected.class,
                    (fact, to) -> {
                        to.put("entry", fact.entry()).put("why", fact.why());
                        fact.instead().ifPresent(instead -> FactJson.write(instead, to.putObject("instead")));
                    },
                    from -> new Corrected(
                            from.key("entry"),
                            from.text("why"),
                            from.object("instead").flatMap(instead -> FactJson.instead(instead, from)))));

    /** Every form that was ever written; of each kind the one with the highest version is written now. */
    static final List<FactForm<?>> ALL = Stream.of(
                    WORK,
                    MeasuringForms.ALL,
                    SourcingForms.ALL,
                    DecidingForms.ALL,
                    FasteningForms.ALL,
                    FindingForms.ALL,
                    ProvingForms.ALL,
                    HandingForms.ALL)
            .flatMap(List::stream)
            .toList();

    static <T extends Fact> FactForm<T> form(
            String word, Class<T> kind, BiConsumer<T, ObjectNode> writing, Function<JsonFields, T> reading) {
        return form(word, 1, kind, writing, reading);
    }

    static <T extends Fact> FactForm<T> form(
            String word,
            int version,
            Class<T> kind,
            BiConsumer<T, ObjectNode> writing,
            Function<JsonFields, T> reading) {
        return new FactForm<>(word, version, kind, writing, reading);
    }

    static void texts(ObjectNode to, String name, List<String> texts) {
        texts.forEach(to.putArray(name)::add);
    }

    /** Texts by name, in the order of the names, so that equal facts are equal lines. */
    static void named(ObjectNode to, String name, Map<String, String> texts) {
        ObjectNode object = to.putObject(name);
        new TreeMap<>(texts).forEach(object::put);
    }

    /** How long something is on its way, where that is known. */
    static void days(ObjectNode to, Optional<Days> days) {
        days.ifPresent(
                span -> to.putArray("days").add(span.least()).add(span.likely()).add(span.most()));
    }
}
