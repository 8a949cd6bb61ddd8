package gudgeon.rebuild.record;

import java.util.List;

/**
 * A chapter of a record.
 *
 * @param id fit for an address
 * @param title its title
 * @param blocks what it holds; never none
 */
public record Chapter(String id, String title, List<Block> blocks) {
    public Chapter {
        blocks = List.copyOf(blocks);
    }
}
