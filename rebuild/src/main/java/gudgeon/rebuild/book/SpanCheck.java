package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;

/** Whether a size is one that a small engine can have, and what it looks like if not. */
final class SpanCheck {
    private static final double MM_PER_INCH = 25.4;
    private static final double MM_PER_THOU = 0.0254;
    /** Only sizes as small as gaps and clearances are written in thousandths of an inch. */
    private static final double LARGEST_IN_THOU = 10;

    private SpanCheck() {}

    /** Whether a size lies in its span; tells why if not. */
    static boolean passes(Size size, Value.OfSize span, Faults faults) {
        double value = size.value();
        if (!inside(value, span)) {
            String what = value < 0 && span.low() >= 0 ? " is below zero." : " can't be right.";
            faults.fault(
                    size.where(),
                    size.path(),
                    "The " + size.label() + " of " + withUnit(Words.number(value), size.unit()) + what,
                    looksLike(size, span));
            return false;
        }
        double half = size.quantity().standardUncertainty() * Math.sqrt(3);
        if (span.low() > 0 && half > value) {
            faults.doubt(
                    size.where(),
                    size.path(),
                    "The doubt of the " + size.label() + " is larger than the size itself.",
                    "Check both, or measure it better.");
        }
        return true;
    }

    private static String looksLike(Size size, Value.OfSize span) {
        double value = size.value();
        if (size.unit() == Unit.MM && Math.abs(value) < span.low() && inside(value * MM_PER_INCH, span)) {
            return "It looks like inches: write '" + Words.number(value) + " in' if it is.";
        }
        if (size.unit() == Unit.MM
                && span.high() <= LARGEST_IN_THOU
                && value > span.high()
                && inside(value * MM_PER_THOU, span)) {
            return "It looks like thousandths of an inch: write '" + Words.number(value) + " thou' if it is.";
        }
        return withUnit("Between " + Words.number(span.low()) + " and " + Words.number(span.high()), size.unit())
                + " is expected.";
    }

    private static boolean inside(double value, Value.OfSize span) {
        return value >= span.low() && value <= span.high();
    }

    private static String withUnit(String number, Unit unit) {
        return unit == Unit.NONE ? number : number + " " + unit.symbol();
    }
}
