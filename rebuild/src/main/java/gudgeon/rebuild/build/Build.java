package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongPredicate;
import java.util.function.Predicate;
import org.pcollections.TreePVector;

/**
 * A rebuild as its journal tells it: the fold of the entries over the engine book. Immutable, and pure: two devices that hold the
 * same entries hold the same build. Entries count from 1.
 */
public final class Build {
    private final EngineBook book;
    private final Disturbances disturbances;
    private final State state;

    private Build(EngineBook book, Disturbances disturbances, State state) {
        this.book = book;
        this.disturbances = disturbances;
        this.state = state;
    }

    /** A rebuild in which nothing has happened yet. */
    public static Build of(EngineBook book) {
        return new Build(book, new Disturbances(book.structure()), State.NOTHING_YET);
    }

    /** The rebuild one entry later. */
    public Build after(Entry entry) {
        return after(List.of(entry));
    }

    /**
     * The rebuild some entries later. An entry that names what the book does not have changes nothing and is told by
     * {@link #unknown}.
     */
    public Build after(Collection<Entry> entries) {
        boolean corrects = entries.stream().anyMatch(entry -> entry.fact() instanceof Fact.Corrected);
        return corrects ? refolded(state.entries().plusAll(entries)) : folded(state, entries, Map.of());
    }

    /** What was corrected after it had its effect must be told again from the beginning. */
    private Build refolded(List<Entry> all) {
        return folded(State.NOTHING_YET, all, Corrections.of(all));
    }

    /** The rebuild as it would be after facts that nobody told; it is only to be asked, its entries belong in no journal. */
    public Build asIf(List<? extends Fact> facts) {
        Instant at = size() == 0 ? Instant.EPOCH : entry(size()).at();
        List<Entry> entries = new ArrayList<>();
        facts.forEach(fact -> entries.add(new Entry("as-if-" + (size() + entries.size()), at, "", size(), fact)));
        return after(entries);
    }

    private Build folded(State from, Collection<Entry> entries, Map<String, Optional<Fact>> corrections) {
        Fold fold = new Fold(book.structure(), disturbances, from, corrections);
        entries.forEach(fold::take);
        return new Build(book, disturbances, fold.state());
    }

    /** The engine book it is folded over. */
    public EngineBook book() {
        return book;
    }

    /** The engine book's second part. */
    public Structure structure() {
        return book.structure();
    }

    /** The entries, the first at 0; the number of an entry is its index and one. */
    public List<Entry> entries() {
        return state.entries();
    }

    /** How many entries there are, which is the number of the last. */
    public long size() {
        return state.entries().size();
    }

    /** The entry of that number, from 1 to {@link #size}. */
    public Entry entry(long number) {
        return state.entries().get(Math.toIntExact(number - 1));
    }

    /** Whether that entry was corrected, so that it no longer counts. */
    public boolean isCorrected(long number) {
        return state.corrected().containsKey(entry(number).key());
    }

    /** What that entry comes to: its fact, or what is true in its place if it was corrected; empty if nothing is. */
    public Optional<Fact> fact(long number) {
        Entry entry = entry(number);
        return state.corrected().getOrDefault(entry.key(), Optional.of(entry.fact()));
    }

    /** Every fact of a kind that counts, in the order of the entries. */
    public <F extends Fact> List<Told<F>> told(Class<F> kind) {
        List<Told<F>> all = new ArrayList<>();
        for (long number = 1; number <= size(); number++) {
            tell(kind, number, all);
        }
        return all;
    }

    /** Every fact of a kind that counts and is about one thing, in the order of the entries. */
    public <F extends Fact> List<Told<F>> told(Class<F> kind, String about) {
        List<Told<F>> all = new ArrayList<>();
        about(about).forEach(number -> tell(kind, number, all));
        return all;
    }

    private <F extends Fact> void tell(Class<F> kind, long number, List<Told<F>> to) {
        fact(number)
                .filter(kind::isInstance)
                .ifPresent(fact -> to.add(new Told<>(number, entry(number).at(), kind.cast(fact))));
    }

    /**
     * The readings of a dimension on one part, in the order of the entries.
     *
     * @param part the part entered for the dimension's position; empty for the one that came off
     */
    public List<Told<ReadingTaken>> readings(String dimension, String part) {
        return told(ReadingTaken.class, dimension).stream()
                .filter(told -> told.fact().dimension().equals(dimension))
                .filter(told -> told.fact().part().equals(part))
                .toList();
    }

    /** The person's instruments, each as it was said to be last, in the order in which they came. */
    public List<InstrumentKept> instruments() {
        Map<String, InstrumentKept> kept = new LinkedHashMap<>();
        told(InstrumentKept.class, Measuring.INSTRUMENTS)
                .forEach(told -> kept.put(told.fact().instrument(), told.fact()));
        return List.copyOf(kept.values());
    }

    /** Numbers of entries that name what neither the book nor the journal before them has, so that they change nothing. */
    public List<Long> unknown() {
        return state.unknown();
    }

    /** Entries that two devices made without knowing each other and that can't both stand. */
    public List<Clash> clashes() {
        return state.clashes();
    }

    /** How the rebuild was begun, once it was. */
    public Optional<Started> started() {
        return state.started();
    }

    /** How a step stands; one that the book does not have stands as the engine was found. */
    public StepState step(String id) {
        return state.standing().step(id);
    }

    /** How a check stands; one that the book does not have stands as the engine was found. */
    public CheckState check(String id) {
        return state.standing().check(id);
    }

    /** How a position stands; one that the book does not have stands as the engine was found. */
    public Place place(String position) {
        return state.standing().place(position);
    }

    /** The parts entered for a position, the newest last. */
    public List<Part> parts(String position) {
        return state.parts().getOrDefault(position, TreePVector.empty());
    }

    /** A part of a position by its name; with an empty name the one that came off. */
    public Optional<Part> part(String position, String name) {
        return name.isEmpty()
                ? Optional.of(thatCameOff(position))
                : parts(position).stream()
                        .filter(part -> part.name().equals(name))
                        .findFirst();
    }

    private Part thatCameOff(String position) {
        return Part.thatCameOff(position).measured(state.sizes().getOrDefault(position, Map.of()));
    }

    /**
     * The part that counts for a position: the one fitted; else the one entered last that can still be used; else the one that came
     * off. Empty for a position of which nothing is known.
     */
    public Optional<Part> partFor(String position) {
        Place place = place(position);
        if (place.fitted() > 0 && !place.isOut()) {
            return part(position, place.part());
        }
        List<Part> usable =
                parts(position).stream().filter(part -> !part.spent()).toList();
        if (!usable.isEmpty()) {
            return Optional.of(usable.get(usable.size() - 1));
        }
        boolean known = place.status() == Place.Status.AS_FOUND
                || place.off().isPresent()
                || place.removed() > 0
                || state.sizes().containsKey(position)
                || isRead(position);
        return known ? Optional.of(thatCameOff(position)) : Optional.empty();
    }

    /** Whether a reading was taken on the part that came off. */
    private boolean isRead(String position) {
        return told(ReadingTaken.class, position).stream()
                .anyMatch(told -> told.fact().part().isEmpty());
    }

    /**
     * Whether what a step fits stands in the way of what it covers: the step is done, or the first of its positions is in, as a head
     * that sits on its barrel though its nuts are off.
     */
    public boolean covers(Step step) {
        return state.standing().covers(step);
    }

    /** The checks that hold a step and that have neither passed nor been waived. */
    public List<Check> unproven(String step) {
        return state.standing().unproven(structure(), step);
    }

    /** Whether a step's parts are all in, so that nothing of it was forgotten. */
    public boolean isFilled(Step step) {
        return step.fits().stream().allMatch(position -> place(position).isFilled());
    }

    /** Positions of a step that are not filled. */
    public List<Position> unfilled(Step step) {
        return step.fits().stream()
                .filter(position -> !place(position).isFilled())
                .flatMap(position -> structure().position(position).stream())
                .toList();
    }

    /** Faults found and not undone yet, each the number of its entry. */
    public List<Long> openFaults() {
        return state.faults().values().stream().sorted().toList();
    }

    /** The entry that says where the crank went tight last, if it did since the top end last came apart. */
    public Optional<Long> tight() {
        return state.tight();
    }

    /** What chance the person gives parts of an origin to be wrong. */
    public Map<Origin, Double> chances() {
        return Collections.unmodifiableMap(state.chances());
    }

    /** Time spent in all, in minutes. */
    public long minutesSpent() {
        return state.minutes();
    }

    /** Numbers of the entries that are about a position, step, check or part, in order. */
    public List<Long> about(String id) {
        return state.about().getOrDefault(id, TreePVector.empty());
    }

    /** Number of the last entry that is about a position, step, check or part; 0 if none is. */
    public long lastAbout(String id) {
        return lastAbout(id, number -> true);
    }

    /** Number of the last entry about a position, step, check or part that comes to such a fact; 0 if none does. */
    public long lastTold(String id, Predicate<Fact> what) {
        return lastAbout(id, number -> fact(number).filter(what).isPresent());
    }

    private long lastAbout(String id, LongPredicate which) {
        List<Long> about = about(id);
        for (int i = about.size() - 1; i >= 0; i--) {
            if (which.test(about.get(i))) {
                return about.get(i);
            }
        }
        return 0;
    }
}
