package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How far the screws of a joint stand proud when they are dropped in before turning: each rests on its first thread.
 *
 * @param joint the joint
 * @param proudMm how far the right one stands proud, in mm, by the hole, as far as it can be told
 */
public record StandProud(JointNow joint, Map<String, Quantity> proudMm) {
    /** What the eye takes for alike, in mm: common practice, no source. */
    private static final double ALIKE_MM = 2;

    public StandProud {
        proudMm = Collections.unmodifiableMap(new LinkedHashMap<>(proudMm));
    }

    /** What is to be seen with the fasteners said to belong there, else with the maker's lengths. */
    public static StandProud of(JointNow joint) {
        Map<String, Quantity> proud = new LinkedHashMap<>();
        for (HoleNow hole : joint.holes()) {
            Optional<Quantity> length = hole.fastener().flatMap(ForHole::length).or(hole::makersLength);
            HoleSizes.of(hole)
                    .flatMap(sizes -> length.flatMap(LengthSpan.of(sizes)::proud))
                    .ifPresent(one -> proud.put(hole.id(), one));
        }
        return new StandProud(joint, proud);
    }

    /** Whether all stand proud alike; true where fewer than two can be told. */
    public boolean isAlike() {
        return proudMm.values().stream().mapToDouble(Quantity::value).max().orElse(0)
                        - proudMm.values().stream()
                                .mapToDouble(Quantity::value)
                                .min()
                                .orElse(0)
                <= ALIKE_MM;
    }

    /** What is to be seen, a sentence. */
    public String sentence() {
        if (proudMm.size() < joint.holes().size()) {
            return "Dropped in before turning, all should stand proud alike; how far is not known for every hole.";
        }
        if (isAlike()) {
            return "Dropped in before turning, all stand proud alike, by about "
                    + LengthSpan.mm(proudMm.values().stream()
                            .mapToDouble(Quantity::value)
                            .average()
                            .orElse(0))
                    + ".";
        }
        List<String> holes = proudMm.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.comparingDouble(Quantity::value)))
                .map(one -> one.getKey() + " " + LengthSpan.mm(one.getValue().value()))
                .toList();
        return "Dropped in before turning, they do not stand proud alike: "
                + holes.stream().collect(Collectors.joining(", ")) + ".";
    }
}
