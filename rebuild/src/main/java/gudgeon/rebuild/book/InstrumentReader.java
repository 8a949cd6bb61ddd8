package gudgeon.rebuild.book;

import gudgeon.rebuild.book.SizeText.NotASize;
import java.util.Optional;

/** Reads an instrument; what it measures in follows from the units of its resolution and error. */
final class InstrumentReader {
    private InstrumentReader() {}

    static Optional<Instrument> read(String id, Fields fields, Faults faults) {
        fields.text("note");
        Optional<SizeText> resolution = size(fields, "resolution", faults);
        Optional<SizeText> error = size(fields, "error", faults);
        if (resolution.isEmpty() || error.isEmpty()) {
            // known all the same, so that the sizes taken with it are not told as faults too
            return Optional.of(new Instrument(id, unit(resolution.or(() -> error)), 0, 0));
        }
        Unit unit = resolution.get().unit().or(() -> error.get().unit()).orElse(Unit.MM);
        if (error.get().unit().orElse(unit) != unit) {
            faults.fault(
                    fields.where("error"),
                    fields.at("error"),
                    "Resolution and error of the " + id + " are in units of different kinds.",
                    "Write both in the unit that it measures.");
        }
        return Optional.of(
                new Instrument(id, unit, resolution.get().value(), error.get().value()));
    }

    private static Unit unit(Optional<SizeText> size) {
        return size.flatMap(SizeText::unit).orElse(Unit.MM);
    }

    private static Optional<SizeText> size(Fields fields, String key, Faults faults) {
        if (!fields.has(key)) {
            return Optional.empty();
        }
        String sentence;
        if (fields.entry(key) instanceof Node.Text text) {
            try {
                SizeText size = SizeText.of(text.text());
                if (size.value() >= 0
                        && size.halfWidth().isEmpty()
                        && size.instrument().isEmpty()) {
                    return Optional.of(size);
                }
                sentence = "'" + Words.shortened(text.text()) + "' can't be the " + key + " of an instrument.";
            } catch (NotASize e) {
                sentence = e.sentence();
            }
        } else {
            sentence = "Here stands " + fields.entry(key).kind() + ", where a number is wanted.";
        }
        faults.fault(
                fields.where(key),
                fields.at(key),
                sentence,
                "Write a number of 0 or more, such as '0.02' or '0.5 deg'.");
        return Optional.empty();
    }
}
