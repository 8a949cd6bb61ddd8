package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Contradiction;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.pcollections.PMap;
import org.pcollections.PSet;
import org.pcollections.PVector;
import org.pcollections.TreePVector;

/** Takes entries one by one; each changes only what its fact is of. */
final class Fold {
    /** Entries looked back on for a contradiction: more than two devices can lie apart. */
    private static final int LOOK_BACK = 500;

    private final Structure structure;
    private final Map<String, Optional<Fact>> corrections;

    private final PartsInFold parts;
    private final Assembly assembly;

    private PVector<Entry> entries;
    private PSet<String> keys;
    private PMap<String, Optional<Fact>> corrected;
    private PVector<Long> unknown;
    private PVector<Clash> clashes;
    private Optional<Started> started;
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
        this.parts = new PartsInFold(from);
        this.assembly = new Assembly(structure, disturbances, parts, from);
        this.corrections = corrections;
        entries = from.entries();
        keys = from.keys();
        corrected = from.corrected();
        unknown = from.unknown();
        clashes = from.clashes();
        started = from.started();
        chances = from.chances();
        minutes = from.minutes();
        about = from.about();
    }

    State state() {
        return new State(
                entries,
                keys,
                corrected,
                unknown,
                clashes,
                started,
                assembly.standing(),
                parts.parts(),
                parts.sizes(),
                assembly.faults(),
                assembly.tight(),
                chances,
                minutes,
                about);
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

    private boolean ofStep(Fact fact, long number, Instant at) {
        if (fact instanceof Fact.StepBegun begun) {
            assembly.begin(begun.step(), number);
        } else if (fact instanceof Fact.StepDone done) {
            assembly.done(done, number, at);
        } else if (fact instanceof Fact.StepStopped stopped) {
            assembly.stopped(stopped);
        } else if (fact instanceof Fact.Undone undone) {
            assembly.undo(undone.step(), number, undone.why());
            undone.toBuy().stream()
                    .filter(position -> structure.position(position).isPresent())
                    .forEach(position -> assembly.supply(position, supply -> supply.listed(number, 0)));
        } else {
            return false;
        }
        return true;
    }

    private boolean ofCheck(Fact fact, long number) {
        if (fact instanceof Fact.CheckPassed passed) {
            assembly.passed(passed, number);
        } else if (fact instanceof Fact.CheckFailed failed) {
            assembly.set(failed.check(), CheckState.Status.FAILED, number, failed.reading(), failed.remark());
        } else if (fact instanceof Fact.CheckWaived waived) {
            assembly.set(waived.check(), CheckState.Status.WAIVED, number, "", waived.why());
        } else {
            return false;
        }
        return true;
    }

    private boolean ofPart(Fact fact, long number) {
        if (fact instanceof Fact.TakenOff off) {
            assembly.takenOff(off, number);
        } else if (fact instanceof Fact.PartEntered part) {
            parts.enter(Part.entered(
                    part.part(), part.position(), Optional.of(part.origin()), part.count(), part.remark(), number));
        } else if (fact instanceof Fact.Measured measured) {
            parts.measured(measured.position(), measured.part(), measured.sizes(), number);
            mention(measured.part(), number);
        } else if (fact instanceof Measuring.ReadingTaken reading) {
            read(reading, number);
        } else if (fact instanceof Fact.Compared compared) {
            parts.enterUnlessKnown(compared.position(), compared.part(), number);
            parts.replace(
                    compared.position(), compared.part(), part -> part.compared(compared.what(), compared.agrees()));
        } else if (fact instanceof Fact.Cleaned cleaned) {
            assembly.cleaned(cleaned, number);
        } else if (fact instanceof Fact.Disposed disposed) {
            disposed(disposed);
        } else if (fact instanceof Fact.Fitted fitted) {
            assembly.fitted(fitted, number);
        } else {
            return false;
        }
        return true;
    }

    /** The reading itself is found again by its dimension; here it only makes its part known. */
    private void read(Measuring.ReadingTaken reading, long number) {
        String position =
                structure.dimension(reading.dimension()).map(Dimension::of).orElse("");
        parts.enterUnlessKnown(position, reading.part(), number);
        mention(position, number);
        mention(reading.part(), number);
    }

    private void disposed(Fact.Disposed fact) {
        if (fact.part().isEmpty()) {
            assembly.put(fact.position(), assembly.place(fact.position()).disposed(fact.disposition()));
        } else {
            parts.replace(
                    fact.position(), fact.part(), part -> part.asSpent(fact.disposition() == Disposition.REPLACE));
        }
    }

    private void ofBuild(Fact fact, long number) {
        if (fact instanceof Started begun) {
            started = Optional.of(begun);
            assembly.found(begun.found() == Found.TOGETHER);
        } else if (fact instanceof Fact.FaultFound fault) {
            assembly.faultFound(fault.at(), number);
        } else if (fact instanceof Fact.WentTight) {
            assembly.wentTight(number);
        } else if (fact instanceof Sourcing.Ordered ordered) {
            assembly.supply(ordered.position(), supply -> supply.listed(number, ordered.count()));
        } else if (fact instanceof Sourcing.Arrived came) {
            assembly.supply(came.position(), supply -> supply.came(came.count()));
        } else if (fact instanceof Sourcing.Returned back) {
            assembly.supply(back.position(), supply -> supply.wentBack(back.count()));
            parts.replace(back.position(), back.part(), part -> part.spentBy(back.count()));
        } else if (fact instanceof Deciding.OptionLine line) {
            mention(line.position(), number);
        } else if (fact instanceof Fact.ChanceTaken taken) {
            chances = chances.plus(taken.origin(), taken.chance());
        } else if (fact instanceof Fact.TimeSpent time) {
            minutes += time.minutes();
        }
    }
}
