package gudgeon.store.shelf;

import java.util.List;

/**
 * A build's journal exactly as it is kept.
 *
 * @param id the build's id
 * @param name what the person calls the build
 * @param lines its lines by number, at least one
 */
public record ShelvedJournal(String id, String name, List<Line> lines) {
    public ShelvedJournal {
        lines = List.copyOf(lines);
    }

    /** The hash at the chain's end. */
    public String head() {
        return lines.get(lines.size() - 1).hash();
    }
}
