package gudgeon.bench.print.record;

/** Is told how far a record is. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress UNSEEN = share -> {};

    /**
     * So much is done.
     *
     * @param share from 0 to 1, never less than the time before
     */
    void done(double share);
}
