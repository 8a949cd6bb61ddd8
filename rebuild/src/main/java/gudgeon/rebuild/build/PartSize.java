package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A size of a position's part that the engine book's figures have, so that it is worth measuring on a new one.
 *
 * @param key the key that the book's figures have for it, such as {@code pockets.exhaust.depth}
 * @param label what a fitter calls it
 * @param booked what stands in the book, with its unit, as a person would type it
 * @param measured what was measured on the part that counts, as written; empty if nothing was
 */
public record PartSize(String key, String label, String booked, String measured) {
    /** The sizes of a position's part, in the book's order; none where the book has no figures of it. */
    public static List<PartSize> of(Build build, Position position) {
        Map<String, String> measured =
                build.partFor(position.id()).map(Part::sizes).orElse(Map.of());
        if (position.pressed().isPresent()) {
            return List.of(size("pressed", position.pressed().get(), measured));
        }
        List<PartSize> sizes = new ArrayList<>();
        Optional<Geometry> geometry =
                build.book().geometry().filter(figures -> !position.sizes().isEmpty());
        geometry.ifPresent(figures -> {
            String prefix = prefix(figures, position.sizes());
            figures.sizes().forEach((path, size) -> {
                // lift readings are a table of the cam's, not a size of the part
                if (path.startsWith(prefix) && !path.contains(".lift.")) {
                    sizes.add(size(path.substring(prefix.length()), size, measured));
                }
            });
        });
        return sizes;
    }

    /** The size that the book's figures have of a dimension, if they know it. */
    public static Optional<Size> booked(EngineBook book, Dimension dimension) {
        return book.structure()
                .position(dimension.of())
                .filter(position -> !dimension.key().isEmpty())
                .flatMap(position -> booked(book, position, dimension.key()));
    }

    private static Optional<Size> booked(EngineBook book, Position position, String key) {
        if (position.pressed().isPresent()) {
            return position.pressed().filter(size -> key.equals("pressed"));
        }
        return book.geometry()
                .filter(figures -> !position.sizes().isEmpty())
                .flatMap(figures -> Optional.ofNullable(figures.sizes().get(prefix(figures, position.sizes()) + key)));
    }

    private static String prefix(Geometry figures, String of) {
        return switch (of) {
            case "pistons" -> "pistons." + figures.pistons().get(0).id() + ".";
            case "gaskets" -> "gaskets." + figures.gaskets().get(0).id() + ".";
            default -> of + ".";
        };
    }

    private static PartSize size(String key, Size size, Map<String, String> measured) {
        String unit = size.unit().symbol();
        String typed = size.typed();
        String written = typed.matches(".*[a-zµ°³\"]$") ? typed : typed + " " + unit;
        return new PartSize(key, size.label(), written.strip(), measured.getOrDefault(key, ""));
    }
}
