package gudgeon.rebuild.book;

/**
 * A measuring instrument.
 *
 * @param id its name in the book
 * @param resolutionMm the least step its scale can show, 0 or more
 * @param errorMm the greatest error allowed either way, 0 or more
 */
public record Instrument(String id, double resolutionMm, double errorMm) {}
