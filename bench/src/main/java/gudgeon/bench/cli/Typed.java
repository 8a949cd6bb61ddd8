package gudgeon.bench.cli;

import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;

/** Sizes typed as options. */
final class Typed {
    private Typed() {}

    /** A length in mm, from a bare number of mm or a text with a unit. */
    static double mm(String option, String text) {
        TypedSize size = TypedSize.of(Unit.MM, text, 1);
        if (size instanceof TypedSize.Read read) {
            return read.value();
        }
        throw new Unusable(option + " '" + text + "': " + ((TypedSize.Refused) size).sentence());
    }
}
