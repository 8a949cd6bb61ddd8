package gudgeon.bench.web.fit;

import gudgeon.rebuild.book.Size;
import java.util.Optional;

/**
 * One size that can be changed in place.
 *
 * @param size the book's size
 * @param unit the unit shown beside it
 * @param booked the book's value as a number of that unit
 * @param text what stands in the field
 * @param fault why that can't be used
 */
public record SizeField(Size size, String unit, String booked, String text, Optional<String> fault) {
    /** The field's name in the form. */
    public String name() {
        return Asked.SIZE + size.path();
    }

    /** The field's id on the page. */
    public String id() {
        return "size-" + size.path().replace('.', '-');
    }

    /** Whether it differs from the book's. */
    public boolean changed() {
        return !text.equals(booked);
    }
}
