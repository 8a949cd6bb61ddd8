package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Cover;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Fact;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.pcollections.PMap;

/** What is together and what is proved while a journal is folded, and how the one follows from the other. */
final class Assembly {
    private final Structure structure;
    private final Disturbances disturbances;
    private final PartsInFold parts;
    private Standing standing;
    private PMap<String, Long> faults;
    private Optional<Long> tight;

    Assembly(Structure structure, Disturbances disturbances, PartsInFold parts, State from) {
        this.structure = structure;
        this.disturbances = disturbances;
        this.parts = parts;
        standing = from.standing();
        faults = from.faults();
        tight = from.tight();
    }

    Standing standing() {
        return standing;
    }

    PMap<String, Long> faults() {
        return faults;
    }

    Optional<Long> tight() {
        return tight;
    }

    /** How the engine was found. */
    void found(boolean asOne) {
        standing = standing.found(asOne);
    }

    void faultFound(String at, long number) {
        faults = faults.plus(at, number);
    }

    void wentTight(long number) {
        tight = Optional.of(number);
    }

    void put(String position, Place place) {
        standing = standing.with(position, place);
    }

    void supply(String position, UnaryOperator<Supply> change) {
        Place before = place(position);
        put(position, before.supplied(change.apply(before.supply())));
    }

    void stopped(Fact.StepStopped fact) {
        StepState before = step(fact.step());
        StepState.Status status = StepState.Status.STOPPED;
        standing = standing.with(
                fact.step(), new StepState(status, before.begun(), 0, Optional.empty(), before.unproven(), fact.why()));
    }

    void passed(Fact.CheckPassed fact, long number) {
        set(fact.check(), CheckState.Status.PASSED, number, fact.reading(), fact.remark());
        faults = faults.minus(fact.check());
    }

    StepState step(String id) {
        return standing.step(id);
    }

    private CheckState check(String id) {
        return standing.check(id);
    }

    Place place(String position) {
        return standing.place(position);
    }

    void begin(String step, long number) {
        List<String> unproven =
                standing.unproven(structure, step).stream().map(Check::id).toList();
        standing =
                standing.with(step, new StepState(StepState.Status.BEGUN, number, 0, Optional.empty(), unproven, ""));
    }

    void done(Fact.StepDone fact, long number, Instant at) {
        if (step(fact.step()).status() != StepState.Status.BEGUN) {
            begin(fact.step(), number);
        }
        StepState before = step(fact.step());
        standing = standing.with(
                fact.step(),
                new StepState(StepState.Status.DONE, before.begun(), number, Optional.of(at), before.unproven(), ""));
        faults = faults.minus(fact.step());
        disturbances.byDoing(fact.step()).forEach(check -> makeVoid(check, number));
    }

    /** Takes off all that a step fitted, and whatever of other steps covers it. */
    void undo(String step, long number, String why) {
        List<String> fits = structure.step(step).map(Step::fits).orElse(List.of());
        List<String> off = new ArrayList<>(List.of(step));
        Cover.of(structure, fits, standing::covers).forEach(over -> off.add(over.id()));
        off.forEach(id -> open(id, number, id.equals(step) ? why : "It stood over what was taken off."));
        off.forEach(this::canBeLookedAt);
    }

    private void open(String id, long number, String why) {
        if (step(id).underHand()) {
            endWaivers(id);
        }
        StepState state = new StepState(StepState.Status.OPEN, 0, 0, Optional.empty(), List.of(), why);
        standing = standing.with(id, state);
        faults = faults.minus(id);
        disturbances.byTakingOff(id).forEach(check -> makeVoid(check, number));
        structure.step(id).map(Step::fits).orElse(List.of()).forEach(position -> takeOut(position, number));
    }

    /** A check was waived for one doing of a step, not for every one to come. */
    private void endWaivers(String step) {
        structure.checksHolding(step).stream()
                .map(Check::id)
                .filter(check -> check(check).status() == CheckState.Status.WAIVED)
                .forEach(check -> standing = standing.with(check, CheckState.OPEN));
    }

    /** What was found together could not be looked at; once a step is off that held it back, and nothing else covers it, it can. */
    private void canBeLookedAt(String step) {
        structure.checksHolding(step).stream()
                .filter(check -> check(check.id()).status() == CheckState.Status.AS_FOUND)
                .filter(check -> Cover.of(structure, structure.cleared(check), standing::covers)
                        .isEmpty())
                .forEach(check -> standing = standing.with(check.id(), CheckState.OPEN));
    }

    private void takeOut(String position, long number) {
        Place before = place(position);
        boolean singleUse =
                structure.position(position).map(Position::singleUse).orElse(false);
        if (singleUse && before.fitted() > 0 && !before.part().isEmpty()) {
            parts.replace(position, before.part(), part -> part.spentBy(before.count()));
        }
        put(position, before.out(number, singleUse));
        faults = faults.minus(position);
        tight = Optional.empty();
        disturbances.byTakingOff(position).forEach(check -> makeVoid(check, number));
        structure.stepsDoneOn(position).stream()
                .map(Step::id)
                .filter(id -> step(id).stands())
                .forEach(id -> open(id, number, "What it was done on came off."));
    }

    private void makeVoid(String check, long by) {
        CheckState before = check(check);
        CheckState after = before.voided(by);
        if (!after.equals(before)) {
            standing = standing.with(check, after);
        }
    }

    void set(String check, CheckState.Status status, long at, String reading, String remark) {
        // what was only found so explains no failure
        boolean asFoundWillDo = status == CheckState.Status.PASSED;
        List<String> outOfTurn = structure.check(check).map(Check::after).orElse(List.of()).stream()
                .filter(first -> check(first).status() != CheckState.Status.PASSED)
                .filter(first -> !asFoundWillDo || check(first).status() != CheckState.Status.AS_FOUND)
                .toList();
        standing = standing.with(check, new CheckState(status, at, reading, remark, outOfTurn, OptionalLong.empty()));
    }

    void takenOff(Fact.TakenOff fact, long number) {
        Place before = place(fact.position());
        if (!before.isOut()) {
            structure
                    .stepFitting(fact.position())
                    .ifPresentOrElse(
                            step -> partlyUndone(fact.position(), step, number),
                            () -> takeOut(fact.position(), number));
        }
        put(fact.position(), place(fact.position()).takenOff(fact));
    }

    /** One part of a step came off: what covers it is off, the step is open, its other parts stay until they come off too. */
    private void partlyUndone(String position, Step step, long number) {
        Cover.of(structure, List.of(position), over -> standing.covers(over) && !over.equals(step))
                .forEach(over -> {
                    open(over.id(), number, "It stood over what was taken off.");
                    canBeLookedAt(over.id());
                });
        takeOut(position, number);
        standing = standing.with(step.id(), StepState.OPEN);
        disturbances.byTakingOff(step.id()).forEach(check -> makeVoid(check, number));
        canBeLookedAt(step.id());
    }

    void cleaned(Fact.Cleaned fact, long number) {
        if (fact.how().leavesGrit()) {
            put(fact.position(), place(fact.position()).blasted(number));
            disturbances.byBlasting(fact.position()).forEach(check -> makeVoid(check, number));
        }
    }

    void fitted(Fact.Fitted fact, long number) {
        Place before = place(fact.position());
        String part = nameOf(fact, before, number);
        parts.enterUnlessKnown(fact.position(), part, number);
        boolean another =
                before.isFilled() && !(before.fitted() > 0 && before.part().equals(part));
        if (another) {
            takeOut(fact.position(), number);
        }
        if (before.isOut()) {
            // what was wrong with the part on the bench was put right, or another part goes in
            faults = faults.minus(fact.position());
        }
        int wanted = structure.position(fact.position()).map(Position::quantity).orElse(1);
        Place now = place(fact.position()).filled(part, fact.count(), wanted, fact.way(), number);
        put(fact.position(), now);
        disturbances.byDoing(fact.position()).forEach(check -> makeVoid(check, number));
    }

    /** A part that can be used only once and came by order is not the one that came off, even if nobody named it. */
    private String nameOf(Fact.Fitted fact, Place place, long number) {
        boolean asArrived = fact.part().isEmpty()
                && place.supply().arrived() > 0
                && structure
                        .position(fact.position())
                        .filter(Position::singleUse)
                        .isPresent();
        if (!asArrived) {
            return fact.part();
        }
        return place.status() == Place.Status.PARTLY_IN ? place.part() : "as arrived, entry " + number;
    }
}
