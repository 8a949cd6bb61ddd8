package gudgeon.mechanics.clearance;

/**
 * A span of crank angles in degrees, from where it begins to where it ends when the engine is turned forward. Where it runs
 * through firing top dead centre, {@code toDeg} is smaller than {@code fromDeg}. A span over the whole cycle is 0 to 720.
 */
public record Span(double fromDeg, double toDeg) {}
