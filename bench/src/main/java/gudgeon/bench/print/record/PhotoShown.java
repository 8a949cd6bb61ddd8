package gudgeon.bench.print.record;

import gudgeon.rebuild.record.Shot;
import gudgeon.store.photo.Photos;
import java.util.Base64;

/**
 * A photo as the page asks for it: read only when it is written, so that there is never more than one in memory.
 *
 * @param shot which photo
 * @param photos where it is kept
 */
public record PhotoShown(Shot shot, Photos photos) {
    /** Longest side of a photo in a record, in points: 180 mm at some 225 to the inch. */
    static final int LONGEST = 1600;

    /** The picture as part of the page's own text; empty if it is not there. */
    public String data() {
        return photos.noLongerThan(shot.photo(), LONGEST)
                .map(jpeg -> "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg))
                .orElse("");
    }
}
