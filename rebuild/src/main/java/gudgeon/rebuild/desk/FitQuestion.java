package gudgeon.rebuild.desk;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A question about a fit. What is left out is not answered.
 *
 * @param designation by ISO 286: "20 H7/k6", "47 N7"
 * @param part what the part is made of, such as "steel"
 * @param into what it sits in is made of; without it, only the limits are told
 * @param outsideMm least outside diameter of what it sits in, mm: for pressure and stress
 * @param boreOfPartMm hole through the part, mm; 0 for a solid one
 * @param lengthMm length over which they touch, mm: for the force of pressing in
 * @param friction coefficient of friction, for the same
 * @param atCelsius how warm or cold the part is as it goes in
 * @param warmGapMm clearance wanted while it goes in, mm of diameter
 * @param warmestCelsius temperature that what it sits in must not pass
 * @param runningCelsius how warm both become in work
 */
public record FitQuestion(
        String designation,
        Optional<String> part,
        Optional<String> into,
        OptionalDouble outsideMm,
        double boreOfPartMm,
        OptionalDouble lengthMm,
        OptionalDouble friction,
        double atCelsius,
        double warmGapMm,
        OptionalDouble warmestCelsius,
        OptionalDouble runningCelsius) {

    /** Clearance in which a part goes in by hand: common practice, no source. */
    public static final double USUAL_WARM_GAP_MM = 0.03;

    /** Asks for the limits alone. */
    public static FitQuestion of(String designation) {
        return new FitQuestion(
                designation,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                20,
                USUAL_WARM_GAP_MM,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
