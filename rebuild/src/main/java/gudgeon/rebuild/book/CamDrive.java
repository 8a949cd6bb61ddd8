package gudgeon.rebuild.book;

/**
 * The cam's chain or belt.
 *
 * @param sprocketTeeth teeth of the sprocket on the camshaft
 */
public record CamDrive(int sprocketTeeth) {}
