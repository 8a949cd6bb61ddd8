package gudgeon.bench.print.record;

/** Who is told how far a print has come. */
@FunctionalInterface
public interface Progress {
    /** For one who does not ask. */
    Progress NONE = share -> {};

    /**
     * Tells how far it has come.
     *
     * @param share from 0 to 1
     */
    void at(double share);
}
