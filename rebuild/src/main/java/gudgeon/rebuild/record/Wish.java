package gudgeon.rebuild.record;

/**
 * What a record is to hold.
 *
 * @param prices whether prices are in it
 * @param people whether names of people, sellers and devices are in it
 */
public record Wish(boolean prices, boolean people) {
    /** Prices, and nobody's name. */
    public static final Wish USUAL = new Wish(true, false);
}
