package gudgeon.rebuild.book;

import gudgeon.mechanics.metrology.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * One size of the book.
 *
 * @param path its path, such as {@code pistons.pattern.pockets.exhaust.depth}; unique in the book
 * @param label what a fitter calls it, such as "exhaust pocket depth"
 * @param unit the unit of the quantity and the readings
 * @param quantity value and doubts; no doubts where none was stated
 * @param written as it stands in the file
 * @param instrument id of the instrument it was measured with, if stated
 * @param readings the repeat readings, if any
 * @param note the writer's note, may be empty
 * @param source where the figure comes from, such as a page of the workshop manual, may be empty
 * @param where where it stands in the file
 */
public record Size(
        String path,
        String label,
        Unit unit,
        Quantity quantity,
        String written,
        Optional<String> instrument,
        List<Double> readings,
        String note,
        String source,
        Where where) {
    public Size {
        readings = List.copyOf(readings);
    }

    /** The best estimate, in the size's unit. */
    public double value() {
        return quantity.value();
    }

    /** The size as a person would type it: as it stands in the file, or the mean where several readings stand there. */
    public String typed() {
        return readings.isEmpty()
                ? written
                : Words.number(value()) + instrument.map(id -> " with " + id).orElse("");
    }

    /** Whether anything was said of its doubt; a size without doubt is taken as exact. */
    public boolean hasDoubt() {
        return !quantity.doubts().isEmpty();
    }

    /** The same size with another value and the same doubts. */
    public Size at(double value) {
        return as(new Quantity(value, quantity.doubts()));
    }

    /** The same size with another value and other doubts. */
    public Size as(Quantity other) {
        return new Size(path, label, unit, other, written, instrument, readings, note, source, where);
    }

    /** The same size at another path. */
    public Size renamed(String otherPath) {
        return new Size(otherPath, label, unit, quantity, written, instrument, readings, note, source, where);
    }

    /** False for the stand-in of a size that could not be read. */
    boolean isKnown() {
        return where.line() > 0;
    }

    /** How it was measured and with what, or that no doubt was stated; a sentence. */
    public String howMeasured() {
        StringBuilder how = new StringBuilder(how());
        if (!source.isEmpty()) {
            how.append(" Source: ").append(source).append('.');
        }
        if (!note.isEmpty()) {
            how.append(" Note: ").append(note);
        }
        return how.toString();
    }

    private String how() {
        if (!isKnown()) {
            return "Not in the book: taken as " + Words.number(value()) + ".";
        }
        if (!readings.isEmpty()) {
            return "The mean of " + readings.size() + " readings"
                    + instrument.map(id -> " taken with the " + id).orElse("") + ".";
        }
        if (instrument.isPresent()) {
            return "Measured with the " + instrument.get() + ".";
        }
        if (hasDoubt()) {
            return "Written in the book as " + written + ".";
        }
        return "Written in the book as " + written + " with no doubt stated: taken as exact.";
    }
}
