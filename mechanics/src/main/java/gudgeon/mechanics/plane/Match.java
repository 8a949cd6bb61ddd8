package gudgeon.mechanics.plane;

/**
 * A point whose place on the face is known, as it was marked in a picture.
 *
 * @param seen where it was marked
 * @param known where it is
 */
public record Match(Pixel seen, FacePoint known) {
    Match moved(double across, double down) {
        return new Match(seen.moved(across, down), known);
    }
}
