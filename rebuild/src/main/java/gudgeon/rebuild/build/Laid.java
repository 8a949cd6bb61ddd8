package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Position;
import java.util.Set;

/**
 * A part whose sizes are laid over the book's.
 *
 * @param position what it is for
 * @param part its name in the build; empty for the one that came off
 * @param measured paths of the sizes that were measured on it
 * @param booked paths of its sizes that were not, and are taken from the book
 */
public record Laid(Position position, String part, Set<String> measured, Set<String> booked) {
    public Laid {
        measured = Set.copyOf(measured);
        booked = Set.copyOf(booked);
    }
}
