package gudgeon.store.photo;

/** What came of giving a photo. */
public sealed interface Kept {
    /**
     * It is on disk.
     *
     * @param hash content hash of the picture as it is kept
     */
    record Photo(String hash) implements Kept {}

    /**
     * It was not taken.
     *
     * @param sentence what is wrong and what to do
     */
    record Refused(String sentence) implements Kept {}
}
