package gudgeon.benchmarks.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Where;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.HoleSizes;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.LengthSpan;
import gudgeon.rebuild.fasten.LengthVerdict;
import gudgeon.rebuild.fasten.PileKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/**
 * An invented heap: holes of three threads, and kinds of as many lengths whose measured lengths are uncertain.
 *
 * @param joints the joints with their holes
 * @param kinds the kinds in the heap
 */
record Heap(List<JointNow> joints, List<PileKind> kinds) {
    private static final List<String> THREADS = List.of("M5", "M6", "M8");
    private static final int HOLES_PER_JOINT = 10;
    private static final int SHORTEST = 10;
    private static final int STEP = 5;

    /** A heap of so many holes, fasteners and kinds. */
    static Heap random(long seed, int holes, int fasteners, int kinds) {
        Random random = new Random(seed);
        int lengths = kinds / THREADS.size();
        int[] counts = new int[kinds];
        for (int i = 0; i < fasteners; i++) {
            // more of some than of others, so that some kinds run out
            counts[Math.min(random.nextInt(kinds), random.nextInt(kinds))]++;
        }
        List<PileKind> pile = new ArrayList<>();
        for (int i = 0; i < kinds; i++) {
            String thread = THREADS.get(i % THREADS.size());
            int length = SHORTEST + STEP * (i / THREADS.size());
            pile.add(new PileKind(
                    thread + "x" + length,
                    Optional.of(ScrewThread.of(thread)),
                    Optional.of(Quantity.stated(length, 0.4)),
                    "",
                    "",
                    counts[i]));
        }
        List<HoleNow> all = new ArrayList<>();
        for (int i = 0; i < holes; i++) {
            all.add(hole("h" + i, THREADS.get(random.nextInt(THREADS.size())), random, lengths));
        }
        List<JointNow> joints = new ArrayList<>();
        for (int i = 0; i < holes; i += HOLES_PER_JOINT) {
            joints.add(joint("j" + joints.size(), all.subList(i, Math.min(holes, i + HOLES_PER_JOINT))));
        }
        return new Heap(joints, pile);
    }

    /** How each kind would be in each hole; empty where it can't be turned in. */
    Optional<LengthVerdict> verdict(HoleNow hole, PileKind kind) {
        HoleSizes sizes = HoleSizes.of(hole).orElseThrow();
        return kind.thread().filter(sizes.thread()::equals).isEmpty()
                ? Optional.empty()
                : Optional.of(LengthSpan.of(sizes).verdict(kind.length().orElseThrow()));
    }

    List<HoleNow> holes() {
        return joints.stream().flatMap(joint -> joint.holes().stream()).toList();
    }

    private static HoleNow hole(String id, String thread, Random random, int lengths) {
        return new HoleNow(
                new Hole(
                        id,
                        Optional.empty(),
                        Hole.Kind.SCREW,
                        thread,
                        "",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        false,
                        Optional.empty(),
                        Optional.empty(),
                        "aluminium",
                        false,
                        Optional.empty(),
                        ""),
                Optional.empty(),
                thread,
                Optional.of(Quantity.stated(STEP * random.nextInt(lengths - 4) + random.nextInt(STEP), 0.2)),
                Optional.of(Quantity.stated(16 + random.nextInt(12), 0.5)),
                "aluminium",
                Optional.empty(),
                List.of(),
                false);
    }

    private static JointNow joint(String id, List<HoleNow> holes) {
        Joint book = new Joint(
                id,
                id,
                "",
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                false,
                false,
                "",
                "",
                holes.stream().map(HoleNow::book).toList(),
                new Where(1, 1));
        return new JointNow(
                book, List.of(), holes, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0);
    }
}
