package gudgeon.rebuild.schedule;

import java.time.LocalDate;

/**
 * A day that is not certain.
 *
 * @param early the day by which it has come in one case of ten
 * @param half the day by which it has come as often as not
 * @param late the day by which it has come in nine cases of ten
 */
public record DateRange(LocalDate early, LocalDate half, LocalDate late) {
    /** The days in whose course some work ends; ends in days from the morning of a day. */
    static DateRange of(LocalDate today, double[] ends) {
        return new DateRange(
                ending(today, Samples.at(0.1, ends)),
                ending(today, Samples.at(0.5, ends)),
                ending(today, Samples.at(0.9, ends)));
    }

    /** The days on which something comes. */
    static DateRange ofArrivals(LocalDate today, double[] days) {
        return new DateRange(
                today.plusDays((long) Samples.at(0.1, days)),
                today.plusDays((long) Samples.at(0.5, days)),
                today.plusDays((long) Samples.at(0.9, days)));
    }

    /** What ends at the morning of a day has ended the evening before. */
    private static LocalDate ending(LocalDate today, double days) {
        return today.plusDays(Math.max(0, (long) Math.ceil(days - 1e-9) - 1));
    }

    /** As a person reads it. */
    public String words() {
        return early.equals(late) ? half.toString() : half + ", from " + early + " to " + late;
    }
}
