package gudgeon.store.drill;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.drill.Expected;
import java.util.List;

/**
 * A mistake as data: a journal in which it is made and one in which it is not.
 *
 * @param name its folder below the folder of all drills, such as {@code 23-oil-pump-dry/tarn-125}
 * @param mistake what was done wrong, a sentence
 * @param book the engine book
 * @param expected the alarm that must come
 * @param vary what may differ from variant to variant
 * @param fault the entries with the mistake
 * @param sound those without
 */
public record Drill(
        String name,
        String mistake,
        EngineBook book,
        Expected expected,
        Vary vary,
        List<Line> fault,
        List<Line> sound) {
    public Drill {
        fault = List.copyOf(fault);
        sound = List.copyOf(sound);
    }

    /** Which fault of the list it is of: the number at the head of its name, or the name of its outermost folder. */
    public String of() {
        String outermost = name.substring(0, name.indexOf('/') < 0 ? name.length() : name.indexOf('/'));
        return outermost.matches("\\d+-.*") ? outermost.substring(0, outermost.indexOf('-')) : outermost;
    }

    /** The two journals as they are written. */
    public Variant asWritten() {
        return Variant.asWritten(this);
    }

    /**
     * One of its variants, the same each time.
     *
     * @param seed which row of variants
     * @param number which of the row, from 1
     */
    public Variant variant(long seed, int number) {
        return new Telling(this, seed, number).variant();
    }

    @Override
    public String toString() {
        return name + ": " + mistake;
    }
}
