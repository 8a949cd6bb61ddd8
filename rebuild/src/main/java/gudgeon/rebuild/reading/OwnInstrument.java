package gudgeon.rebuild.reading;

import gudgeon.rebuild.book.Instrument;
import gudgeon.rebuild.journal.InstrumentKind;
import java.time.LocalDate;
import java.util.Optional;

/**
 * An instrument of the person's own.
 *
 * @param scale its name, the unit that it measures in, its step and its permissible error
 * @param kind what kind it is
 * @param inches whether a bare number read on it is in inches
 * @param least the least that it can measure, in the scale's unit
 * @param most the most that it can measure, infinite where nobody said
 * @param checked when it was last held against a standard, if known
 */
public record OwnInstrument(
        Instrument scale, InstrumentKind kind, boolean inches, double least, double most, Optional<LocalDate> checked) {
    private static final double MM_PER_INCH = 25.4;
    /** Most scales go on a little past the range that stands on the box; common practice, no source. */
    private static final double PAST_RANGE = 0.02;

    /** Its name, the person's own. */
    public String name() {
        return scale.id();
    }

    /** Whether it can measure a value, in its unit. */
    public boolean spans(double value) {
        return value >= least && value <= most;
    }

    /** Whether it can have been read on it at all, its scale running on a little past its range. */
    public boolean reaches(double value) {
        double past = Double.isInfinite(most) ? 0 : PAST_RANGE * (most - least);
        return value >= least - past && value <= most + past;
    }

    /** What a bare number of a length read on it counts, in mm. */
    public double bareLengthMm() {
        return inches ? MM_PER_INCH : 1;
    }

    /** Whether what it reads is only as good as the micrometer that it is set with or held between. */
    public boolean isSetWithMicrometer() {
        return kind == InstrumentKind.BORE_GAUGE || kind == InstrumentKind.SMALL_HOLE_GAUGE;
    }

    /** That it was not checked for more than a year, or never, told and not refused; a sentence. */
    public Optional<String> unchecked(LocalDate today) {
        if (checked.isEmpty()) {
            return Optional.of("Nobody said when the " + name()
                    + " was last checked; hold it against a standard, or its permissible error is a hope.");
        }
        return checked.filter(day -> day.isBefore(today.minusYears(1)))
                .map(day -> "The " + name() + " was last checked on " + day
                        + ", more than a year ago; hold it against a standard before you trust it near a limit.");
    }
}
