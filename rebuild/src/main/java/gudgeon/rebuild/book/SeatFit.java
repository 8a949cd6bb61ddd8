package gudgeon.rebuild.book;

import gudgeon.mechanics.limits.Material;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How tight a part sits in another.
 *
 * @param size nominal size in mm and tolerance classes of hole and part, as ISO 286 writes them: "42 N7/h6"
 * @param part what the part is made of
 * @param into what it sits in is made of
 * @param warmestC the temperature in degrees Celsius that what it sits in must not pass; the maker's figure wins
 */
public record SeatFit(String size, String part, String into, OptionalDouble warmestC) {
    /** What the part is made of; empty where the book's word for it is not known. */
    public Optional<Material> partMaterial() {
        return material(part);
    }

    /** What it sits in is made of; empty where the book's word for it is not known. */
    public Optional<Material> intoMaterial() {
        return material(into);
    }

    /** The words that a book has for materials. */
    static List<String> materials() {
        return Arrays.stream(Material.values()).map(SeatFit::word).toList();
    }

    private static Optional<Material> material(String said) {
        return Arrays.stream(Material.values())
                .filter(material -> word(material).equalsIgnoreCase(said.strip()))
                .findFirst();
    }

    private static String word(Material material) {
        return material.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
