package gudgeon.rebuild.build;

/**
 * What was bought for a position.
 *
 * @param listed number of the entry that last put it on the list to buy or ordered it, 0 if none did
 * @param ordered how many are on order and have not come
 * @param arrived how many came and are not fitted yet
 */
public record Supply(long listed, int ordered, int arrived) {
    static final Supply NONE = new Supply(0, 0, 0);

    Supply listed(long by, int onOrder) {
        return new Supply(by, ordered + onOrder, arrived);
    }

    Supply came(int count) {
        return new Supply(listed, Math.max(0, ordered - count), arrived + count);
    }

    /** What goes back is neither here nor on its way: it has to be bought again. */
    Supply wentBack(int count) {
        return new Supply(listed, ordered, Math.max(0, arrived - count));
    }

    Supply fitted(int count) {
        return new Supply(listed, ordered, Math.max(0, arrived - count));
    }
}
