package gudgeon.rebuild.valvework;

import gudgeon.mechanics.spring.CoilSpring;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What wire, coils and heights say of a valve spring, when it can't be put on a tester.
 *
 * @param spring the spring
 * @param freeMm free length, if it is known
 * @param fittedMm fitted height, if it is known
 * @param liftMm full lift of the valve, if it is known
 */
public record SpringAnswer(CoilSpring spring, OptionalDouble freeMm, OptionalDouble fittedMm, OptionalDouble liftMm) {
    /** Rate in N/mm of a spring of steel. */
    public double rateNPerMm() {
        return spring.rateNPerMm(CoilSpring.STEEL_MPA);
    }

    /** Force in N with the valve shut; empty where free length or fitted height is not known. */
    public OptionalDouble shutN() {
        return freeMm.isPresent() && fittedMm.isPresent()
                ? OptionalDouble.of(rateNPerMm() * (freeMm.getAsDouble() - fittedMm.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** What is left in mm between the coils at full lift; empty where fitted height or lift is not known. */
    public OptionalDouble marginMm() {
        return fittedMm.isPresent() && liftMm.isPresent()
                ? OptionalDouble.of(fittedMm.getAsDouble() - liftMm.getAsDouble() - spring.solidMm())
                : OptionalDouble.empty();
    }

    /** All that follows, sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        all.add(String.format(
                Locale.ROOT,
                "Solid at %.2f mm; a rate of about %.1f N/mm if it is steel with %.2f coils that work.",
                spring.solidMm(),
                rateNPerMm(),
                spring.activeCoils()));
        shutN().ifPresent(force ->
                all.add(String.format(Locale.ROOT, "Valve shut it presses with about %.0f N.", force)));
        if (shutN().isPresent() && liftMm.isPresent()) {
            double open = shutN().getAsDouble() + rateNPerMm() * liftMm.getAsDouble();
            all.add(String.format(Locale.ROOT, "At full lift it presses with about %.0f N.", open));
        }
        marginMm()
                .ifPresent(margin -> all.add(
                        margin > 0
                                ? String.format(
                                        Locale.ROOT,
                                        "At full lift %.2f mm are left between the coils; about %.1f mm is wanted (common practice, no source).",
                                        margin,
                                        SpringRoom.USUAL_ROOM_MM)
                                : String.format(
                                        Locale.ROOT,
                                        "The coils meet %.2f mm before full lift. Do not turn the engine so.",
                                        -margin)));
        all.add("Coils that differ in pitch make the rate rise as they close: a tester says more.");
        return all;
    }
}
