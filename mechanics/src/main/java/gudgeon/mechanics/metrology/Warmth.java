package gudgeon.mechanics.metrology;

/**
 * The warmth in which a length was read. Lengths are stated at 20 &deg;C (ISO 1:2022); what is warmer is longer, the scale of the
 * instrument too.
 *
 * @param celsius temperature of part and instrument, in degrees Celsius
 * @param apart how far the temperatures of the two may be from one another, in kelvin, 0 or more
 * @param part the part's expansion with its doubt, per kelvin
 * @param instrument the expansion of the instrument's scale with its doubt, per kelvin
 */
public record Warmth(double celsius, double apart, Quantity part, Quantity instrument) {
    /** The temperature at which lengths are stated, in degrees Celsius (ISO 1:2022). */
    public static final double REFERENCE_CELSIUS = 20;

    /**
     * The length at 20 &deg;C: l (1 + (&alpha;<sub>i</sub> - &alpha;<sub>p</sub>) (t - 20)), to first order as in JCGM 100:2008,
     * H.1, with the doubts that it adds, as one of {@link Origin#TEMPERATURE}.
     *
     * @param read the length as read, with its doubts
     */
    public Quantity at20(Quantity read) {
        double warmer = celsius - REFERENCE_CELSIUS;
        double length = read.value();
        double correction = length * (instrument.value() - part.value()) * warmer;
        double u = length
                * Math.hypot(
                        warmer * Math.hypot(part.standardUncertainty(), instrument.standardUncertainty()),
                        part.value() * apart / Math.sqrt(3));
        return read.plus(correction).with(new Doubt(Origin.TEMPERATURE, Distribution.NORMAL, Math.abs(u)));
    }
}
