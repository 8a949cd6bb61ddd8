package gudgeon.rebuild.book;

/**
 * The least gap wanted.
 *
 * @param mm the gap, 0 or more
 * @param source who wants it: a maker's figure, or common practice
 */
public record WantedGap(double mm, String source) {
    static WantedGap common(double mm) {
        return new WantedGap(mm, "common practice, no source");
    }
}
