package gudgeon.rebuild.record;

/**
 * What of a build its record tells.
 *
 * @param prices whether money is told: of parts, work, postage and options
 * @param people whether names of sellers, machinists, signers and devices are told
 */
public record Wanted(boolean prices, boolean people) {}
