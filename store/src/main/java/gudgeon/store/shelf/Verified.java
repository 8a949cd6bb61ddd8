package gudgeon.store.shelf;

import java.util.List;

/** What came of walking a journal's chain of hashes. */
public sealed interface Verified {
    /**
     * Nothing was changed, lost or put in.
     *
     * @param entries how many entries there are
     * @param hash the hash at the chain's end; written down elsewhere, it proves the whole journal later
     */
    record Sound(long entries, String hash) implements Verified {}

    /**
     * The journal is not as it was written.
     *
     * @param sentences which entry was changed, is missing or was put in; at least one
     */
    record Broken(List<String> sentences) implements Verified {
        public Broken {
            sentences = List.copyOf(sentences);
        }
    }
}
