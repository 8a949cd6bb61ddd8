package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which fastener of the heap goes into which hole, so that as few as may be are bought, then as few lengths as may be stay doubtful,
 * then as many as may be have the maker's length.
 *
 * @param choices one for each hole, in the order of the holes
 * @param purchases the smallest purchase that makes it work, of the fewest lengths
 * @param leftOver how many of each kind stay in the heap, by its name; those that are used up are not in it
 * @param dangers what must not be done
 */
public record Allocation(
        List<HoleChoice> choices, List<Purchase> purchases, Map<String, Integer> leftOver, List<Danger> dangers) {
    /** More than all doubts of a thousand holes together. */
    private static final int EMPTY_COST = 10_000_000;

    private static final int DOUBTFUL_COST = 1_000;
    private static final int OTHER_LENGTH_COST = 1;

    public Allocation {
        choices = List.copyOf(choices);
        purchases = List.copyOf(purchases);
        leftOver = Collections.unmodifiableMap(new LinkedHashMap<>(leftOver));
        dangers = List.copyOf(dangers);
    }

    /** The allocation of a build's heap to the holes of all its joints. */
    public static Allocation of(Build build) {
        return of(JointNow.all(build), PileKind.of(build));
    }

    /** The allocation of a heap to the holes of some joints. */
    public static Allocation of(List<JointNow> joints, List<PileKind> pile) {
        List<Slot> slots = joints.stream()
                .flatMap(joint -> joint.holes().stream().map(hole -> Slot.of(joint.id(), hole, pile)))
                .toList();
        List<Slot> open = slots.stream().filter(slot -> !slot.isServed()).toList();
        Allotment allotment = Allotment.of(
                open.stream().map(slot -> slot.costs(pile)).toArray(int[][]::new),
                pile.stream().mapToInt(PileKind::count).toArray(),
                open.stream().mapToInt(Slot::emptyCost).toArray());
        List<HoleChoice> choices = new ArrayList<>();
        List<HoleNow> wanting = new ArrayList<>();
        Map<String, Integer> left = new LinkedHashMap<>();
        pile.forEach(kind -> left.put(kind.name(), kind.count()));
        int place = 0;
        for (Slot slot : slots) {
            HoleChoice choice;
            if (slot.isServed()) {
                choice = slot.served();
            } else {
                choice = slot.choice(
                        pile,
                        allotment.kinds().get(place),
                        allotment.alternatives().get(place));
                place++;
            }
            choices.add(choice);
            choice.kind().ifPresent(kind -> left.merge(kind, -1, Integer::sum));
            if (choice.isToBuy()) {
                wanting.add(slot.hole());
            }
        }
        left.values().removeIf(count -> count == 0);
        return new Allocation(choices, Purchases.of(wanting), left, dangers(slots, pile));
    }

    /** The choice for a hole. */
    public Optional<HoleChoice> choice(String joint, String hole) {
        return choices.stream()
                .filter(one -> one.joint().equals(joint) && one.hole().equals(hole))
                .findFirst();
    }

    private static List<Danger> dangers(List<Slot> slots, List<PileKind> pile) {
        List<Danger> dangers = new ArrayList<>();
        for (int kind = 0; kind < pile.size(); kind++) {
            Map<LengthVerdict, List<String>> harm = new LinkedHashMap<>();
            for (Slot slot : slots) {
                slot.verdicts()
                        .get(kind)
                        .filter(LengthVerdict::isDangerous)
                        .ifPresent(verdict -> harm.computeIfAbsent(verdict, any -> new ArrayList<>())
                                .add(slot.hole().id()));
            }
            String name = pile.get(kind).name();
            harm.forEach((verdict, holes) -> dangers.add(new Danger(name, verdict, holes)));
        }
        return dangers;
    }

    /**
     * A hole to be served.
     *
     * @param verdicts how each kind of the heap would be in it, empty for one that can't be turned in
     * @param recorded the fastener that a person said belongs there, unless it does harm
     * @param recordedVerdict how that one is; without one, how one of unknown length is
     * @param inHeap whether that one lies in the heap
     */
    private record Slot(
            String joint,
            HoleNow hole,
            List<Optional<LengthVerdict>> verdicts,
            Optional<ForHole> recorded,
            LengthVerdict recordedVerdict,
            boolean inHeap) {
        static Slot of(String joint, HoleNow hole, List<PileKind> pile) {
            Optional<ScrewThread> thread = HoleSizes.thread(hole.thread());
            Optional<LengthSpan> span = HoleSizes.of(hole).map(LengthSpan::of);
            List<Optional<LengthVerdict>> verdicts = pile.stream()
                    .map(kind -> thread.filter(wanted -> kind.goesInto(hole, wanted))
                            .map(wanted -> verdict(hole, span, kind.length())))
                    .toList();
            LengthVerdict own = verdict(hole, span, hole.fastener().flatMap(ForHole::length));
            Optional<ForHole> recorded = hole.fastener().filter(fastener -> !own.isDangerous());
            boolean inHeap = recorded.filter(
                            fastener -> pile.stream().anyMatch(kind -> kind.count() > 0 && kind.is(fastener)))
                    .isPresent();
            return new Slot(joint, hole, verdicts, recorded, own, inHeap);
        }

        private static LengthVerdict verdict(HoleNow hole, Optional<LengthSpan> span, Optional<Quantity> length) {
            if (span.isEmpty()) {
                return LengthVerdict.RIGHT;
            }
            if (length.isEmpty()) {
                return LengthVerdict.DOUBTFUL;
            }
            return hole.stack().isEmpty() && isMakers(hole, length)
                    ? LengthVerdict.RIGHT
                    : span.get().verdict(length.get());
        }

        private static boolean isMakers(HoleNow hole, Optional<Quantity> length) {
            return hole.makersLength()
                    .filter(makers -> length.isPresent() && PileKind.isSameLength(makers, length.get()))
                    .isPresent();
        }

        /** Whether its own fastener lies apart from the heap. */
        boolean isServed() {
            return recorded.isPresent() && !inHeap;
        }

        HoleChoice served() {
            return new HoleChoice(joint, hole.id(), Optional.empty(), recordedVerdict, true, List.of(), false);
        }

        int[] costs(List<PileKind> pile) {
            return IntStream.range(0, pile.size())
                    .map(kind -> cost(pile.get(kind), verdicts.get(kind)))
                    .toArray();
        }

        /** A fastener of which it is known that it belongs here is not given to another hole to save a purchase. */
        int emptyCost() {
            return recorded.isPresent() ? 2 * EMPTY_COST : EMPTY_COST;
        }

        private int cost(PileKind kind, Optional<LengthVerdict> verdict) {
            if (recorded.isPresent()) {
                return kind.is(recorded.get()) ? 0 : Allotment.UNFIT;
            }
            if (verdict.isEmpty() || verdict.get().isDangerous()) {
                return Allotment.UNFIT;
            }
            int doubt = verdict.get() == LengthVerdict.RIGHT ? 0 : DOUBTFUL_COST;
            return doubt + (hole.makersLength().isEmpty() || isMakers(hole, kind.length()) ? 0 : OTHER_LENGTH_COST);
        }

        HoleChoice choice(List<PileKind> pile, int kind, BitSet others) {
            boolean none = kind == Allotment.EMPTY;
            return new HoleChoice(
                    joint,
                    hole.id(),
                    none ? Optional.empty() : Optional.of(pile.get(kind).name()),
                    none ? LengthVerdict.RIGHT : verdicts.get(kind).orElse(recordedVerdict),
                    !none && recorded.isPresent(),
                    others.stream()
                            .filter(other -> other < pile.size())
                            .mapToObj(other -> pile.get(other).name())
                            .toList(),
                    none || others.get(pile.size()));
        }
    }
}
