package gudgeon.rebuild.fit;

/**
 * A gap's doubt by Monte Carlo (JCGM 101:2008).
 *
 * @param kind which gap
 * @param valve the valve's id
 * @param draws how many draws were made
 * @param stable whether two significant digits of the standard uncertainty were stable when it stopped
 * @param meanMm mean of the least gap
 * @param standardUncertaintyMm its standard uncertainty
 * @param lowMm lower end of the 95 % interval
 * @param highMm upper end of the 95 % interval
 * @param chanceTouches chance that the least gap is below 0
 * @param chanceShort chance that it is below what is wanted
 * @param sentence the outcome as a person reads it
 */
public record Simulation(
        GapKind kind,
        String valve,
        int draws,
        boolean stable,
        double meanMm,
        double standardUncertaintyMm,
        double lowMm,
        double highMm,
        double chanceTouches,
        double chanceShort,
        String sentence) {}
