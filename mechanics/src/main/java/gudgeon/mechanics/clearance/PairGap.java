package gudgeon.mechanics.clearance;

/** The gap between the heads of two valves, each named by its index in {@link TopEnd#valves()}. */
public record PairGap(int first, int second, Gap gap) {}
