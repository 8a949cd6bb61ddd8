package gudgeon.rebuild.reading;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One reading, as it counts.
 *
 * @param entry number of the journal's entry that tells it
 * @param at the place, empty where the dimension has one only
 * @param piece which of several alike pieces, from 1
 * @param value in the dimension's unit
 * @param written as the person wrote it
 * @param instrument what it was read with, if the person has such an instrument
 * @param with the instrument's name as the person wrote it, may be empty
 * @param celsius temperature of the part in degrees Celsius, if it was taken
 */
public record Reading(
        long entry,
        String at,
        int piece,
        double value,
        String written,
        Optional<OwnInstrument> instrument,
        String with,
        OptionalDouble celsius) {

    /** A reading that can be used, or a sentence that says why it can't. */
    sealed interface Result {
        /** It can be used. */
        record Good(Reading reading) implements Result {}

        /** It can't. */
        record Bad(String sentence) implements Result {}
    }

    /**
     * Reads what was taken down.
     *
     * @param entry number of its entry
     */
    static Result of(long entry, ReadingTaken taken, Dimension dimension, OwnInstruments instruments) {
        Optional<OwnInstrument> instrument = instruments.named(taken.instrument());
        String about = "The reading " + taken.value() + " of the " + dimension.name() + " (entry " + entry + ")";
        if (instrument.filter(one -> one.scale().unit() != dimension.unit()).isPresent()) {
            return new Result.Bad(about + " does not count: the " + taken.instrument() + " does not measure in "
                    + dimension.unit().symbol() + ". Correct the instrument or the entry.");
        }
        TypedSize typed = TypedSize.of(
                dimension.unit(),
                taken.value(),
                instrument.map(OwnInstrument::bareLengthMm).orElse(1.0));
        if (typed instanceof TypedSize.Refused refused) {
            return new Result.Bad(about + " does not count. " + refused.sentence());
        }
        if (!dimension.places().all().contains(taken.at())) {
            return new Result.Bad(about + " does not count: the book has no place '" + taken.at()
                    + "' for it. Correct the entry; known are "
                    + String.join("; ", dimension.places().all()) + ".");
        }
        return new Result.Good(new Reading(
                entry,
                taken.at(),
                taken.piece(),
                ((TypedSize.Read) typed).value(),
                taken.value(),
                instrument,
                taken.instrument(),
                taken.celsius()));
    }
}
