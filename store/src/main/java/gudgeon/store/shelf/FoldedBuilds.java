package gudgeon.store.shelf;

import gudgeon.rebuild.build.Build;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Builds that were folded, so that a page need not read a journal again. Those not asked for longest are let go once all together
 * have more than {@value #MOST_ENTRIES} entries, an engine book counted as {@value #A_BOOK}, so that memory does not grow with the shelf.
 * For any number of threads.
 */
final class FoldedBuilds {
    static final long MOST_ENTRIES = 100_000;
    /** Measured: the book of an archetype takes about 500 kB with its build, an entry about 1 kB. */
    static final long A_BOOK = 500;

    private final Map<String, Build> builds = new LinkedHashMap<>(16, 0.75f, true);
    private long entries;

    synchronized Optional<Build> of(String id) {
        return Optional.ofNullable(builds.get(id));
    }

    synchronized void put(String id, Build build) {
        remove(id);
        builds.put(id, build);
        entries += build.size() + A_BOOK;
        while (entries > MOST_ENTRIES && builds.size() > 1) {
            remove(builds.keySet().iterator().next());
        }
    }

    synchronized void remove(String id) {
        Build gone = builds.remove(id);
        entries -= gone == null ? 0 : gone.size() + A_BOOK;
    }
}
