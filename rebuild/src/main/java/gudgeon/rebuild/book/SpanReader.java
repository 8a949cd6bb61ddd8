package gudgeon.rebuild.book;

import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a span from the keys at-least and at-most. */
final class SpanReader {
    private final Faults faults;

    SpanReader(Faults faults) {
        this.faults = faults;
    }

    /** The span of the block at a key, if it is there. */
    Optional<Expect> at(Fields fields, String key) {
        return fields.has(key) ? wanted(fields.block(key, ""), key) : Optional.empty();
    }

    /** The span of a block that is there to state one. */
    private Optional<Expect> wanted(Fields fields, String key) {
        if (!fields.has("at-least") && !fields.has("at-most")) {
            faults.fault(
                    fields.where(),
                    fields.at("at-least"),
                    "The span states neither 'at-least' nor 'at-most'.",
                    "Write one of them or both, or leave '" + key + "' out where only the maker knows.");
        }
        return of(fields);
    }

    /** The span that the keys at-least and at-most of a block state, if either is there. */
    Optional<Expect> of(Fields fields) {
        Optional<SizeText> least = limit(fields, "at-least");
        Optional<SizeText> most = limit(fields, "at-most");
        if (least.isEmpty() && most.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = least.or(() -> most).flatMap(SizeText::unit).orElse(Unit.MM);
        boolean alike = most.map(size -> size.unit().orElse(Unit.MM) == unit).orElse(true);
        boolean turned = least.isPresent()
                && most.isPresent()
                && least.get().value() > most.get().value();
        if (!alike || turned) {
            faults.fault(
                    fields.where("at-most"),
                    fields.at("at-most"),
                    alike ? "'at-least' is more than 'at-most'." : "'at-least' and 'at-most' are in different units.",
                    "Check both figures and their units.");
        }
        return Optional.of(new Expect(value(least), value(most), unit));
    }

    private static OptionalDouble value(Optional<SizeText> size) {
        return size.map(text -> OptionalDouble.of(text.value())).orElse(OptionalDouble.empty());
    }

    private Optional<SizeText> limit(Fields fields, String key) {
        String text = fields.text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(SizeText.of(text));
        } catch (SizeText.NotASize fault) {
            faults.fault(
                    fields.where(key),
                    fields.at(key),
                    fault.sentence(),
                    "Write a number with its unit, such as '0.05'.");
            return Optional.empty();
        }
    }
}
