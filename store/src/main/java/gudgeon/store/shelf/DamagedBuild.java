package gudgeon.store.shelf;

import java.util.List;

/** One build can't be shown as it was written down; the others can. */
final class DamagedBuild {
    /** Most sentences on what is wrong; where more is, it is all of one kind. */
    private static final int MOST = 5;

    private DamagedBuild() {}

    /** What is said of a build whose journal is not as it was written. */
    static ShelfFault journal(String id, List<String> sentences) {
        String more = sentences.size() > MOST
                ? " And " + (sentences.size() - MOST) + " more; gudgeon verify-journal " + id + " tells all."
                : "";
        return new ShelfFault("The journal of build " + id + " is damaged. "
                + String.join(" ", sentences.subList(0, Math.min(MOST, sentences.size()))) + more
                + " Nothing can be added to it until it is mended; the other builds are not touched by it. Stop Gudgeon and run gudgeon"
                + " mend: it saves all that can be read and fills in the rest from the backups.");
    }

    /** What is said of a build whose engine book is not there. */
    static ShelfFault book(String id) {
        return new ShelfFault(
                "The engine book of build " + id + " is not on the shelf any more, or is damaged. The other builds"
                        + " are not touched by it. Stop Gudgeon and run gudgeon mend, which brings it back from a backup.");
    }
}
