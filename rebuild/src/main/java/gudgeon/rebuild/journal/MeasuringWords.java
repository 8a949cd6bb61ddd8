package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;
import static gudgeon.rebuild.journal.Naming.with;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Measuring.Stocked;
import gudgeon.rebuild.sentence.Sentence;
import java.util.Locale;
import java.util.OptionalDouble;

/** What an entry about measuring says. */
record MeasuringWords(Naming naming) {
    String sentence(Measuring fact) {
        if (fact instanceof ReadingTaken reading) {
            return reading(reading);
        }
        if (fact instanceof InstrumentKept kept) {
            return "Instrument '" + kept.instrument() + "': " + kept.kind().words() + with(", ", kept.range())
                    + with(", reads to ", kept.resolution()) + with(", errs by at most ", kept.error())
                    + kept.checked().map(day -> ", checked on " + day).orElse("") + "." + and(kept.remark());
        }
        if (fact instanceof FittingSaid fitting) {
            return Sentence.capital(naming.name(fitting.position())) + " "
                    + fitting.method().words() + degrees(fitting.celsius()) + "." + and(fitting.remark());
        }
        Stocked stocked = (Stocked) fact;
        return "In stock for " + naming.name(stocked.position()) + ": "
                + (stocked.sizes().isEmpty() ? "nothing" : String.join(", ", stocked.sizes())) + ".";
    }

    private String reading(ReadingTaken reading) {
        String of = naming.structure()
                .dimension(reading.dimension())
                .map(Dimension::of)
                .orElse("");
        return Sentence.capital(naming.name(reading.dimension()))
                + (reading.part().isEmpty() ? "" : " of " + naming.part(of, reading.part()))
                + (reading.piece() > 1 ? ", piece " + reading.piece() : "") + with(", ", reading.at()) + ": "
                + reading.value() + with(", read with the ", reading.instrument()) + degrees(reading.celsius()) + "."
                + and(reading.remark());
    }

    private static String degrees(OptionalDouble celsius) {
        return celsius.isPresent() ? String.format(Locale.ROOT, " at %.1f °C", celsius.getAsDouble()) : "";
    }
}
