package gudgeon.mechanics.clearance;

import java.util.List;

/**
 * A gap over one cycle.
 *
 * @param leastMm the least value; negative where metal would have to go through metal
 * @param atDeg the crank angle at which it stands, in [0, 720)
 * @param place where it stands then
 * @param touching the spans in which the gap is negative, in order of their beginnings
 */
public record Gap(double leastMm, double atDeg, Place place, List<Span> touching) {
    public Gap {
        touching = List.copyOf(touching);
    }
}
