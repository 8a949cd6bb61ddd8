package gudgeon.rebuild.book;

/**
 * A measuring instrument.
 *
 * @param id its name in the book
 * @param unit what it measures in
 * @param resolution the least step its scale can show, 0 or more
 * @param error the greatest error allowed either way, 0 or more
 */
public record Instrument(String id, Unit unit, double resolution, double error) {}
