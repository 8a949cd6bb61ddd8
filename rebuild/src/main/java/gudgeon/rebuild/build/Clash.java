package gudgeon.rebuild.build;

/**
 * Two entries that can't both stand, made on two devices.
 *
 * @param earlier number of the one that was there
 * @param later number of the one that came without knowing it
 */
public record Clash(long earlier, long later) {}
