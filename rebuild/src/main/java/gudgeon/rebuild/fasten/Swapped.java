package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Two holes that each were given the length that belongs in the other, so that the count comes out and both are wrong.
 *
 * @param first the hole that got its fastener first
 * @param second the other
 */
public record Swapped(Given first, Given second) {
    /**
     * A fastener given to a hole that is not of the length that belongs there.
     *
     * @param joint the joint's id
     * @param hole the hole's id
     * @param entry number of the entry that gives it
     * @param length of what was given, mm
     * @param wanted of what belongs there, mm: what came out of it, else the maker's
     */
    public record Given(String joint, String hole, long entry, Quantity length, Quantity wanted) {
        private boolean belongsIn(Given other) {
            return PileKind.isSameLength(length, other.wanted);
        }
    }

    /** All pairs of a build, each hole in one at most. */
    public static List<Swapped> of(Build build) {
        List<Given> wrong = JointNow.all(build).stream()
                .flatMap(joint -> joint.holes().stream().flatMap(hole -> wrong(build, joint, hole)))
                .sorted(Comparator.comparingLong(Given::entry))
                .toList();
        List<Given> left = new ArrayList<>(wrong);
        List<Swapped> swapped = new ArrayList<>();
        while (!left.isEmpty()) {
            Given one = left.remove(0);
            left.stream()
                    .filter(other -> one.belongsIn(other) && other.belongsIn(one))
                    .findFirst()
                    .ifPresent(other -> {
                        left.remove(other);
                        swapped.add(new Swapped(one, other));
                    });
        }
        return swapped;
    }

    private static Stream<Given> wrong(Build build, JointNow joint, HoleNow hole) {
        Optional<ForHole> given = hole.fastener().filter(fastener -> !fastener.cameOut());
        Optional<Quantity> length = given.flatMap(ForHole::length);
        Optional<Quantity> wanted = cameOut(build, joint, hole).or(hole::makersLength);
        return length.isPresent() && wanted.isPresent() && !PileKind.isSameLength(length.get(), wanted.get())
                ? Stream.of(new Given(joint.id(), hole.id(), given.orElseThrow().entry(), length.get(), wanted.get()))
                : Stream.empty();
    }

    private static Optional<Quantity> cameOut(Build build, JointNow joint, HoleNow hole) {
        return build.told(FastenerOut.class, joint.id()).stream()
                .filter(told -> told.fact().hole().equals(hole.id()))
                .reduce((Told<FastenerOut> earlier, Told<FastenerOut> later) -> later)
                .flatMap(told -> ForHole.of(told).length());
    }
}
