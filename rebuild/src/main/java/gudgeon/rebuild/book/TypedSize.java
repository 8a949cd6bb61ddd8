package gudgeon.rebuild.book;

import gudgeon.mechanics.metrology.Quantity;
import java.util.Optional;

/** What a person typed in place of a size of the book. */
public sealed interface TypedSize {
    /**
     * It can be used.
     *
     * @param value in the size's unit
     */
    record Read(double value) implements TypedSize {}

    /**
     * It can't be used.
     *
     * @param sentence why, and what to type
     */
    record Refused(String sentence) implements TypedSize {}

    /**
     * Reads what was typed.
     *
     * @param unit the unit of the size in whose place it stands
     * @param text as typed: a number, with or without a unit
     * @param bareLengthMm the length in mm that a bare number of a length counts: 1 for millimetres, 25.4 for inches
     */
    static TypedSize of(Unit unit, String text, double bareLengthMm) {
        SizeText typed;
        try {
            typed = SizeText.of(text);
        } catch (SizeText.NotASize fault) {
            return new Refused(fault.sentence() + " Type a number" + example(unit) + ".");
        }
        if (typed.unit().isEmpty()) {
            return new Read(unit == Unit.MM ? typed.value() * bareLengthMm : typed.value());
        }
        if (typed.unit().get() != unit) {
            return new Refused("This is a size in "
                    + typed.unit().get().symbol() + ", where " + wanted(unit) + " is wanted. Type a number"
                    + example(unit)
                    + ".");
        }
        return new Read(typed.value());
    }

    /**
     * Reads what was typed with the doubt that stands after ±.
     *
     * @param unit the unit wanted, and the one of a bare number
     * @return empty where the text is no such size
     */
    static Optional<Quantity> quantity(Unit unit, String text) {
        try {
            SizeText typed = SizeText.of(text);
            return typed.unit().orElse(unit) != unit
                    ? Optional.empty()
                    : Optional.of(typed.halfWidth()
                            .map(half -> Quantity.stated(typed.value(), half))
                            .orElseGet(() -> Quantity.exact(typed.value())));
        } catch (SizeText.NotASize fault) {
            return Optional.empty();
        }
    }

    private static String wanted(Unit unit) {
        return unit == Unit.NONE ? "a plain number" : "one in " + unit.symbol();
    }

    private static String example(Unit unit) {
        return switch (unit) {
            case MM -> ", such as 3.2 or 0.126 in";
            case DEGREES -> " of degrees, such as 25";
            case CM3 -> " of cubic centimetres, such as 9.8";
            case KPA -> " of kilopascals, such as 900";
            case NEWTON -> " of newtons, such as 180";
            case NEWTON_METRE -> " of newton metres, such as 9 or 80 lbf.in";
            case CELSIUS -> " of degrees Celsius, such as 100";
            case PERCENT -> " of per cent, such as 10";
            case NONE -> ", such as 1.1";
        };
    }
}
