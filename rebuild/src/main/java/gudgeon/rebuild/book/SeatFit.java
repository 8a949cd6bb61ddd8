package gudgeon.rebuild.book;

import java.util.OptionalDouble;

/**
 * How tight a part sits in another.
 *
 * @param size nominal size in mm and tolerance classes of hole and part, as ISO 286 writes them: "42 N7/h6"
 * @param part what the part is made of
 * @param into what it sits in is made of
 * @param warmestC the temperature in degrees Celsius that what it sits in must not pass; the maker's figure wins
 */
public record SeatFit(String size, String part, String into, OptionalDouble warmestC) {}
