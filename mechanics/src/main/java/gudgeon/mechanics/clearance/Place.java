package gudgeon.mechanics.clearance;

/** A point in the cylinder's frame, in mm: the origin is the bore's centre on the deck, z points to the head. */
public record Place(double xMm, double yMm, double zMm) {}
