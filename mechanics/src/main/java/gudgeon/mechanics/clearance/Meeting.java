package gudgeon.mechanics.clearance;

/** Two bodies of a top end that may meet as the crank turns; valves by their place in {@link TopEnd#valves()}. */
public sealed interface Meeting {
    /** A valve and the piston's crown; their gap is the bore gap. */
    record ValveAndCrown(int valve) implements Meeting {}

    /** The heads of two valves. */
    record TwoValves(int first, int second) implements Meeting {}

    /** The crown's flat and the head's. */
    record CrownAndHead() implements Meeting {}
}
