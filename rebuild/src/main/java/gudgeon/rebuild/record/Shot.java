package gudgeon.rebuild.record;

/**
 * A photo of the record.
 *
 * @param entry number of the entry that it came with
 * @param photo content hash of the picture
 * @param caption what it shows, a sentence
 */
public record Shot(long entry, String photo, String caption) {}
