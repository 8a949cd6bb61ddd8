package gudgeon.rebuild.plan;

import gudgeon.rebuild.journal.Found;
import java.util.List;
import java.util.Random;

/**
 * In which of many sound ways a rebuild goes.
 *
 * @param found how the engine was found
 * @param oneByOne whether each part is ordered when the work comes to it, and not all are there before
 * @param anyOrder whether it is taken down, cleaned, bought and put together in any order that the plan allows, and not in the best
 * @param undoes whether a fault is found on the way, undone and done again
 * @param devices the devices that write, in turn
 * @param seed what chance decides by
 */
record Manner(Found found, boolean oneByOne, boolean anyOrder, boolean undoes, List<String> devices, long seed) {
    /** As the book and the plan put it first, on one device. */
    static final Manner PLAIN = new Manner(Found.IN_PIECES, false, false, false, List.of("tablet"), 0);

    /** The one of a seed; seeds that differ by less than 32 differ in more than chance. */
    static Manner of(int seed) {
        Random chance = new Random(seed);
        return new Manner(
                (seed & 1) == 0 ? Found.TOGETHER : Found.IN_PIECES,
                (seed & 2) != 0,
                (seed & 4) != 0,
                (seed & 8) != 0,
                (seed & 16) == 0 ? List.of("tablet", "phone") : List.of("tablet"),
                chance.nextLong());
    }
}
