package gudgeon.rebuild.book;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was measured on a part in place of a size of the book. */
public sealed interface Remeasured {
    /**
     * It can be used.
     *
     * @param size the book's size with the value measured; with the book's doubts where none was written
     */
    record Read(Size size) implements Remeasured {}

    /**
     * It can't be used.
     *
     * @param sentence why, and what to do
     */
    record Refused(String sentence) implements Remeasured {}

    /**
     * Reads what was measured, such as {@code 0.2}, {@code 0.20 mm ± 0.02} or {@code 0.2 with depth-micrometer}.
     *
     * @param booked the size in whose place it stands; a bare number is in its unit
     * @param text as written
     * @param instruments the book's instruments
     */
    static Remeasured of(Size booked, String text, List<Instrument> instruments) {
        SizeText read;
        try {
            read = SizeText.of(text);
        } catch (SizeText.NotASize fault) {
            return new Refused(fault.sentence());
        }
        if (read.unit().filter(unit -> unit != booked.unit()).isPresent()) {
            return new Refused("'" + Words.shortened(text) + "' is no size in "
                    + booked.unit().symbol() + ".");
        }
        if (read.unit().isEmpty() && Inches.likely(booked, read.value())) {
            return new Refused("'" + Words.shortened(text) + "' where the book has " + Words.number(booked.value())
                    + " mm looks like inches: write it with its unit.");
        }
        Optional<Instrument> with = read.instrument()
                .flatMap(id -> instruments.stream()
                        .filter(instrument -> instrument.id().equals(id))
                        .findFirst());
        if (read.instrument().isPresent()
                && with.filter(instrument -> instrument.unit() == booked.unit()).isEmpty()) {
            return new Refused(
                    "The book has no instrument '" + read.instrument().get() + "' that measures in "
                            + booked.unit().symbol() + ".");
        }
        return new Read(size(booked, text, read, with));
    }

    private static Size size(Size booked, String text, SizeText read, Optional<Instrument> with) {
        List<Doubt> doubts = new ArrayList<>();
        read.halfWidth().ifPresent(half -> doubts.add(Doubt.stated(half)));
        with.ifPresent(instrument -> {
            doubts.add(Doubt.resolution(instrument.resolution()));
            doubts.add(Doubt.permissibleError(instrument.error()));
        });
        return new Size(
                booked.path(),
                booked.label(),
                booked.unit(),
                new Quantity(read.value(), doubts.isEmpty() ? booked.quantity().doubts() : doubts),
                text.strip(),
                with.map(Instrument::id),
                List.of(),
                "Measured on the part.",
                "",
                booked.where());
    }
}
