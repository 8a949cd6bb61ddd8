package gudgeon.rebuild.reading;

import gudgeon.rebuild.book.Instrument;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a person wrote of an instrument. */
final class InstrumentText {
    private static final Pattern INCHES = Pattern.compile("(?i).*(\\bin|inch|inches|thou|\"|\u2033)\\.?\\s*$");
    private static final Pattern LAST_UNIT = Pattern.compile(".*?[\\d.,/]\\s*([^\\d.,/\\s][^\\d]*)$");
    private static final String BETWEEN = "\\s+to\\s+|\\s*\u2013\\s*|(?<=[\\d\\s])-(?=[\\s\\d])";

    private final InstrumentKept kept;
    private final List<String> faults;
    private final Unit unit;
    private final boolean inches;

    InstrumentText(InstrumentKept kept, List<String> faults) {
        this.kept = kept;
        this.faults = faults;
        this.unit = unit(kept.kind());
        this.inches = INCHES.matcher(kept.resolution()).matches();
    }

    /** What an instrument of a kind measures in. */
    private static Unit unit(InstrumentKind kind) {
        return switch (kind) {
            case SPRING_TESTER -> Unit.NEWTON;
            case PRESSURE_GAUGE -> Unit.KPA;
            case BURETTE -> Unit.CM3;
            case DEGREE_DISC -> Unit.DEGREES;
            case THERMOMETER -> Unit.CELSIUS;
            case METER -> Unit.NONE;
            case CALLIPER,
                    MICROMETER,
                    BORE_GAUGE,
                    SMALL_HOLE_GAUGE,
                    DEPTH_GAUGE,
                    HEIGHT_GAUGE,
                    DIAL_GAUGE,
                    FEELER_GAUGES,
                    STRAIGHT_EDGE,
                    SQUARE,
                    SCALE_RULE -> Unit.MM;
        };
    }

    /** The instrument; empty, with the reasons among the faults, if it can't be used. */
    Optional<OwnInstrument> instrument() {
        OptionalDouble resolution = positive("resolution", kept.resolution());
        OptionalDouble error = positive("permissible error", kept.error());
        double[] range = range();
        if (resolution.isEmpty() || error.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new OwnInstrument(
                new Instrument(kept.instrument(), unit, resolution.getAsDouble(), error.getAsDouble()),
                kept.kind(),
                inches,
                range[0],
                range[1],
                kept.checked()));
    }

    private OptionalDouble positive(String what, String text) {
        if (text.isBlank()) {
            fault("Nobody said the " + what + " of the " + kept.instrument() + ".", "Write it, such as '0.01 mm'.");
            return OptionalDouble.empty();
        }
        OptionalDouble size = size(what, text);
        if (size.isPresent() && size.getAsDouble() < 0) {
            fault(
                    "The " + what + " of the " + kept.instrument() + " is below zero: " + text + ".",
                    "Write how much it is either way.");
            return OptionalDouble.empty();
        }
        return size;
    }

    private OptionalDouble size(String what, String text) {
        TypedSize typed = TypedSize.of(unit, text, inches ? 25.4 : 1);
        if (typed instanceof TypedSize.Refused refused) {
            fault("The " + what + " of the " + kept.instrument() + " can't be read.", refused.sentence());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(((TypedSize.Read) typed).value());
    }

    /** From the least to the most; without bounds where nothing is said or it can't be read. */
    private double[] range() {
        double[] unbounded = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        if (kept.range().isBlank()) {
            return unbounded;
        }
        String[] ends = kept.range().strip().split(BETWEEN, -1);
        if (ends.length > 2) {
            fault(
                    "The range of the " + kept.instrument() + " can't be read: " + kept.range() + ".",
                    "Write it like '25 to 50 mm'.");
            return unbounded;
        }
        OptionalDouble most = size("range", ends[ends.length - 1]);
        Matcher last = LAST_UNIT.matcher(ends[ends.length - 1]);
        String first = ends.length == 1 ? "0" : ends[0];
        boolean bare = first.matches("[-+\\d.,/\\s]*");
        OptionalDouble least = size("range", bare && last.matches() ? first + " " + last.group(1) : first);
        if (least.isEmpty() || most.isEmpty()) {
            return unbounded;
        }
        if (least.getAsDouble() > most.getAsDouble()) {
            fault(
                    "The range of the " + kept.instrument() + " runs backward: " + kept.range() + ".",
                    "Write the least first.");
            return unbounded;
        }
        return new double[] {least.getAsDouble(), most.getAsDouble()};
    }

    private void fault(String what, String todo) {
        faults.add(what + " " + todo);
    }
}
