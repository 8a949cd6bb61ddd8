package gudgeon.rebuild.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was measured, with what, and how a part that sits tight was put in. */
public sealed interface Measuring extends Fact {
    /** What every entry about instruments is about. */
    String INSTRUMENTS = "instruments";

    /**
     * One reading. Several at one place are several facts.
     *
     * @param dimension the dimension's id
     * @param part the part entered for its position; empty for the one that came off
     * @param piece which of several alike pieces, from 1
     * @param at which of the dimension's places, such as "middle, along the pin"; empty where it has one only
     * @param value as written, with its unit: "39.012 mm", "1.5363 in"
     * @param instrument name of the person's instrument; may be empty
     * @param celsius temperature of the part in degrees Celsius, if it was taken
     * @param remark what was seen
     */
    record ReadingTaken(
            String dimension,
            String part,
            int piece,
            String at,
            String value,
            String instrument,
            OptionalDouble celsius,
            String remark)
            implements Measuring {
        @Override
        public String about() {
            return dimension;
        }
    }

    /**
     * An instrument of the person's, as it is from now on.
     *
     * @param instrument its name, the person's own
     * @param range what it spans, as written: "25 to 50 mm"
     * @param resolution the least step of its scale, as written; one in inches makes it an inch instrument
     * @param error the greatest error allowed either way, as written
     * @param checked when it was last held against a standard, if known
     */
    record InstrumentKept(
            String instrument,
            InstrumentKind kind,
            String range,
            String resolution,
            String error,
            Optional<LocalDate> checked,
            String remark)
            implements Measuring {
        @Override
        public String about() {
            return INSTRUMENTS;
        }
    }

    /**
     * How a part that sits tight was put in.
     *
     * @param celsius temperature to which what it sits in was warmed, or it was cooled, in degrees Celsius, if it was taken
     */
    record FittingSaid(String position, Method method, OptionalDouble celsius, String remark)
            implements Measuring, Fact.OfPosition {}

    /**
     * The shims in stock for a position, in place of what was in stock before.
     *
     * @param sizes the thickness of each, as written, one for each piece
     */
    record Stocked(String position, List<String> sizes) implements Measuring, Fact.OfPosition {
        public Stocked {
            sizes = List.copyOf(sizes);
        }
    }
}
