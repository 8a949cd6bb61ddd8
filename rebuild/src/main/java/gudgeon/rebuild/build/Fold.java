package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Cover;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Contradiction;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.pcollections.PMap;
import org.pcollections.PSet;
import org.pcollections.PVector;
import org.pcollections.TreePVector;

/** Takes entries one by one; each changes only what its fact is of. */
final class Fold {
    /** Entries looked back on for a contradiction: more than two devices can lie apart. */
    private static final int LOOK_BACK = 500;

    private final Structure structure;
    private final Disturbances disturbances;
    private final Map<String, Optional<Fact>> corrections;

    private PVector<Entry> entries;
    private PSet<String> keys;
    private PMap<String, Optional<Fact>> corrected;
    private PVector<Long> unknown;
    private PVector<Clash> clashes;
    private Optional<Started> started;
    private PMap<String, StepState> steps;
    private PMap<String, CheckState> checks;
    private PMap<String, Place> places;
    private PMap<String, PVector<Part>> parts;
    private PMap<String, Map<String, String>> sizes;
    private PMap<String, Long> faults;
    private Optional<Long> tight;
    private PMap<Origin, Double> chances;
    private long minutes;
    private PMap<String, PVector<Long>> about;

    /**
     * Goes on from a state.
     *
     * @param corrections what is true in place of each corrected entry that is still to be taken
     */
    Fold(Structure structure, Disturbances disturbances, State from, Map<String, Optional<Fact>> corrections) {
        this.structure = structure;
        this.disturbances = disturbances;
        this.corrections = corrections;
        entries = from.entries();
        keys = from.keys();
        corrected = from.corrected();
        unknown = from.unknown();
        clashes = from.clashes();
        started = from.started();
        steps = from.steps();
        checks = from.checks();
        places = from.places();
        parts = from.parts();
        sizes = from.sizes();
        faults = from.faults();
        tight = from.tight();
        chances = from.chances();
        minutes = from.minutes();
        about = from.about();
    }

    State state() {
        return new State(
                entries, keys, corrected, unknown, clashes, started, steps, checks, places, parts, sizes, faults, tight,
                chances, minutes, about);
    }

    /**
     * Takes an entry; one with a key that is there already is the same one sent again, and changes nothing. What a correction says
     * takes the place of the entry it corrects: a slip in the strip-down record, put right months later, takes nothing off again.
     */
    void take(Entry entry) {
        if (keys.contains(entry.key())) {
            return;
        }
        long number = entries.size() + 1L;
        mention(entry.fact().about(), number);
        Optional<Fact> instead = corrections.get(entry.key());
        if (instead == null) {
            clash(entry, number);
            change(entry.fact(), number, entry.at());
        } else {
            corrected = corrected.plus(entry.key(), instead);
            instead.ifPresent(fact -> {
                mention(fact.about(), number);
                change(fact, number, entry.at());
            });
        }
        entries = entries.plus(entry);
        keys = keys.plus(entry.key());
    }

    private void clash(Entry later, long number) {
        long first = Math.max(later.seen() + 1, number - LOOK_BACK);
        for (long earlier = number - 1; earlier >= first; earlier--) {
            Entry before = entries.get(Math.toIntExact(earlier - 1));
            if (!corrected.containsKey(before.key()) && Contradiction.between(before, earlier, later)) {
                clashes = clashes.plus(new Clash(earlier, number));
                return;
            }
        }
    }

    private void mention(String id, long number) {
        PVector<Long> before = about.getOrDefault(id, TreePVector.empty());
        boolean again = !before.isEmpty() && before.get(before.size() - 1) == number;
        if (!id.isEmpty() && !again) {
            about = about.plus(id, before.plus(number));
        }
    }

    private void change(Fact fact, long number, Instant at) {
        boolean ofNothing = fact instanceof Fact.Corrected correction && !keys.contains(correction.entry());
        if (ofNothing || !Known.in(structure, fact)) {
            unknown = unknown.plus(number);
        } else if (!ofStep(fact, number, at) && !ofCheck(fact, number) && !ofPart(fact, number)) {
            ofBuild(fact, number);
        }
    }

    private StepState step(String id) {
        StepState known = steps.get(id);
        return known != null ? known : together() ? StepState.AS_FOUND : StepState.OPEN;
    }

    private boolean together() {
        return started.filter(fact -> fact.found() == Found.TOGETHER).isPresent();
    }

    private Place place(String position) {
        Place known = places.get(position);
        return known != null ? known : together() ? Place.asFound() : Place.EMPTY;
    }

    private boolean covers(Step step) {
        return step(step.id()).stands()
                || step.fits().stream()
                        .findFirst()
                        .filter(position -> place(position).status() != Place.Status.OUT)
                        .isPresent();
    }

    private boolean ofStep(Fact fact, long number, Instant at) {
        if (fact instanceof Fact.StepBegun begun) {
            begin(begun.step(), number);
        } else if (fact instanceof Fact.StepDone done) {
            done(done, number, at);
        } else if (fact instanceof Fact.StepStopped stopped) {
            StepState before = step(stopped.step());
            StepState.Status status = StepState.Status.STOPPED;
            steps = steps.plus(
                    stopped.step(),
                    new StepState(status, before.begun(), 0, Optional.empty(), before.unproven(), stopped.why()));
        } else if (fact instanceof Fact.Undone undone) {
            undo(undone.step(), number, undone.why());
            undone.toBuy().stream()
                    .filter(position -> structure.position(position).isPresent())
                    .forEach(position ->
                            places = places.plus(position, place(position).listed(number, 0)));
        } else {
            return false;
        }
        return true;
    }

    private void begin(String step, long number) {
        List<String> unproven = structure.checksHolding(step).stream()
                .map(Check::id)
                .filter(check -> !checks.getOrDefault(check, CheckState.OPEN).lets())
                .toList();
        steps = steps.plus(step, new StepState(StepState.Status.BEGUN, number, 0, Optional.empty(), unproven, ""));
    }

    private void done(Fact.StepDone fact, long number, Instant at) {
        if (step(fact.step()).status() != StepState.Status.BEGUN) {
            begin(fact.step(), number);
        }
        StepState before = step(fact.step());
        steps = steps.plus(
                fact.step(),
                new StepState(StepState.Status.DONE, before.begun(), number, Optional.of(at), before.unproven(), ""));
        faults = faults.minus(fact.step());
        disturbances.byDoing(fact.step()).forEach(check -> makeVoid(check, number));
    }

    /** Takes off all that a step fitted, and whatever of other steps covers it. */
    private void undo(String step, long number, String why) {
        List<String> fits = structure.step(step).map(Step::fits).orElse(List.of());
        List<String> off = new ArrayList<>(List.of(step));
        Cover.of(structure, fits, this::covers).forEach(over -> off.add(over.id()));
        off.forEach(id -> open(id, number, id.equals(step) ? why : "It stood over what was taken off."));
    }

    private void open(String id, long number, String why) {
        StepState state = new StepState(StepState.Status.OPEN, 0, 0, Optional.empty(), List.of(), why);
        steps = steps.plus(id, state);
        faults = faults.minus(id);
        disturbances.byTakingOff(id).forEach(check -> makeVoid(check, number));
        structure.step(id).map(Step::fits).orElse(List.of()).forEach(position -> takeOut(position, number));
    }

    private void takeOut(String position, long number) {
        Place before = place(position);
        boolean singleUse =
                structure.position(position).map(Position::singleUse).orElse(false);
        if (singleUse && before.fitted() > 0 && !before.part().isEmpty()) {
            replacePart(position, before.part(), part -> part.spentBy(before.count()));
        }
        places = places.plus(position, before.out(number, singleUse));
        faults = faults.minus(position);
        tight = Optional.empty();
        disturbances.byTakingOff(position).forEach(check -> makeVoid(check, number));
    }

    private void makeVoid(String check, long by) {
        CheckState state = checks.get(check);
        if (state != null) {
            checks = checks.plus(check, state.voided(by));
        }
    }

    private boolean ofCheck(Fact fact, long number) {
        if (fact instanceof Fact.CheckPassed passed) {
            set(passed.check(), CheckState.Status.PASSED, number, passed.reading(), passed.remark());
            faults = faults.minus(passed.check());
        } else if (fact instanceof Fact.CheckFailed failed) {
            set(failed.check(), CheckState.Status.FAILED, number, failed.reading(), failed.remark());
        } else if (fact instanceof Fact.CheckWaived waived) {
            set(waived.check(), CheckState.Status.WAIVED, number, "", waived.why());
        } else {
            return false;
        }
        return true;
    }

    private void set(String check, CheckState.Status status, long at, String reading, String remark) {
        List<String> outOfTurn = structure.check(check).map(Check::after).orElse(List.of()).stream()
                .filter(first -> checks.getOrDefault(first, CheckState.OPEN).status() != CheckState.Status.PASSED)
                .toList();
        checks = checks.plus(check, new CheckState(status, at, reading, remark, outOfTurn, OptionalLong.empty()));
    }

    private boolean ofPart(Fact fact, long number) {
        if (fact instanceof Fact.TakenOff off) {
            takenOff(off, number);
        } else if (fact instanceof Fact.PartEntered part) {
            enter(Part.entered(
                    part.part(), part.position(), Optional.of(part.origin()), part.count(), part.remark(), number));
        } else if (fact instanceof Fact.Measured measured) {
            measured(measured, number);
        } else if (fact instanceof Fact.Compared compared) {
            enterUnlessKnown(compared.position(), compared.part(), number);
            replacePart(
                    compared.position(), compared.part(), part -> part.compared(compared.what(), compared.agrees()));
        } else if (fact instanceof Fact.Cleaned cleaned) {
            cleaned(cleaned, number);
        } else if (fact instanceof Fact.Disposed disposed) {
            disposed(disposed);
        } else if (fact instanceof Fact.Fitted fitted) {
            fitted(fitted, number);
        } else {
            return false;
        }
        return true;
    }

    private void takenOff(Fact.TakenOff fact, long number) {
        Place before = place(fact.position());
        if (before.status() != Place.Status.OUT) {
            structure
                    .stepFitting(fact.position())
                    .ifPresentOrElse(
                            step -> partlyUndone(fact.position(), step, number),
                            () -> takeOut(fact.position(), number));
        }
        places = places.plus(fact.position(), place(fact.position()).takenOff(fact));
    }

    /** One part of a step came off: what covers it is off, the step is open, its other parts stay until they come off too. */
    private void partlyUndone(String position, Step step, long number) {
        Cover.of(structure, List.of(position), over -> covers(over) && !over.equals(step))
                .forEach(over -> open(over.id(), number, "It stood over what was taken off."));
        takeOut(position, number);
        steps = steps.plus(step.id(), StepState.OPEN);
        disturbances.byTakingOff(step.id()).forEach(check -> makeVoid(check, number));
    }

    private void measured(Fact.Measured fact, long number) {
        if (fact.part().isEmpty()) {
            Map<String, String> all = new LinkedHashMap<>(sizes.getOrDefault(fact.position(), Map.of()));
            all.putAll(fact.sizes());
            sizes = sizes.plus(fact.position(), Map.copyOf(all));
        } else {
            enterUnlessKnown(fact.position(), fact.part(), number);
            replacePart(fact.position(), fact.part(), part -> part.measured(fact.sizes()));
        }
        mention(fact.part(), number);
    }

    private void enter(Part part) {
        parts = parts.plus(
                part.position(),
                parts.getOrDefault(part.position(), TreePVector.empty()).plus(part));
    }

    /** A part that turns up without having been entered is in hand all the same, only nobody said where it comes from. */
    private void enterUnlessKnown(String position, String name, long number) {
        boolean known = name.isEmpty()
                || parts.getOrDefault(position, TreePVector.empty()).stream()
                        .anyMatch(part -> part.name().equals(name));
        if (!known) {
            enter(Part.entered(name, position, Optional.empty(), 1, "", number));
        }
    }

    private void replacePart(String position, String name, UnaryOperator<Part> change) {
        PVector<Part> of = parts.getOrDefault(position, TreePVector.empty());
        for (int i = 0; i < of.size(); i++) {
            if (of.get(i).name().equals(name)) {
                of = of.with(i, change.apply(of.get(i)));
            }
        }
        parts = parts.plus(position, of);
    }

    private void cleaned(Fact.Cleaned fact, long number) {
        if (fact.how().leavesGrit()) {
            places = places.plus(fact.position(), place(fact.position()).blasted(number));
            disturbances.byBlasting(fact.position()).forEach(check -> makeVoid(check, number));
        }
    }

    private void disposed(Fact.Disposed fact) {
        if (fact.part().isEmpty()) {
            places = places.plus(fact.position(), place(fact.position()).disposed(fact.disposition()));
        } else {
            replacePart(fact.position(), fact.part(), part -> part.asSpent(fact.disposition() == Disposition.REPLACE));
        }
    }

    private void fitted(Fact.Fitted fact, long number) {
        Place before = place(fact.position());
        String part = nameOf(fact, before, number);
        enterUnlessKnown(fact.position(), part, number);
        boolean another =
                before.isFilled() && !(before.fitted() > 0 && before.part().equals(part));
        if (another) {
            takeOut(fact.position(), number);
        }
        if (before.status() == Place.Status.OUT) {
            // what was wrong with the part on the bench was put right, or another part goes in
            faults = faults.minus(fact.position());
        }
        int wanted = structure.position(fact.position()).map(Position::quantity).orElse(1);
        Place now = place(fact.position()).filled(part, fact.count(), wanted, fact.way(), number);
        places = places.plus(fact.position(), now);
        disturbances.byDoing(fact.position()).forEach(check -> makeVoid(check, number));
    }

    /** A part that can be used only once and came by order is not the one that came off, even if nobody named it. */
    private String nameOf(Fact.Fitted fact, Place place, long number) {
        boolean asArrived = fact.part().isEmpty()
                && place.arrived() > 0
                && structure
                        .position(fact.position())
                        .filter(Position::singleUse)
                        .isPresent();
        if (!asArrived) {
            return fact.part();
        }
        return place.status() == Place.Status.PARTLY_IN ? place.part() : "as arrived, entry " + number;
    }

    private void ofBuild(Fact fact, long number) {
        if (fact instanceof Started begun) {
            started = Optional.of(begun);
        } else if (fact instanceof Fact.FaultFound fault) {
            faults = faults.plus(fault.at(), number);
        } else if (fact instanceof Fact.WentTight) {
            tight = Optional.of(number);
        } else if (fact instanceof Fact.Ordered ordered) {
            places = places.plus(ordered.position(), place(ordered.position()).listed(number, ordered.count()));
        } else if (fact instanceof Fact.Arrived came) {
            places = places.plus(came.position(), place(came.position()).arrived(came.count()));
        } else if (fact instanceof Fact.ChanceTaken taken) {
            chances = chances.plus(taken.origin(), taken.chance());
        } else if (fact instanceof Fact.TimeSpent time) {
            minutes += time.minutes();
        }
    }
}
