package gudgeon.bench.print.fasten;

import gudgeon.bench.print.fasten.Drawing.Circle;
import gudgeon.bench.print.fasten.Drawing.Place;

/**
 * The text beside a hole: its turn, and under it its fastener.
 *
 * @param circle the hole
 * @param box where the text stands on the sheet, y downwards from its upper side, mm
 */
public record Label(Circle circle, Window box) {
    /** Its upper left corner. */
    public Place corner() {
        return new Place(box.left(), box.bottom());
    }

    /** Across, as written. */
    public String width() {
        return Drawing.mm(box.width());
    }
}
