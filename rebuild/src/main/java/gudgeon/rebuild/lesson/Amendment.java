package gudgeon.rebuild.lesson;

import java.util.List;

/** A change of one place in the text of an engine book. */
public sealed interface Amendment {
    /** Where: the keys from the top of the book; in a list of blocks, the id of the block. */
    List<String> path();

    /** What stands there afterwards, as it is written in the file on one line; see {@link Written}. */
    String value();

    /** A value takes the place of what stands there, or is written there for the first time. */
    record Put(List<String> path, String value) implements Amendment {
        public Put {
            path = List.copyOf(path);
        }
    }

    /** One more entry stands at the end of a list. */
    record Add(List<String> path, String value) implements Amendment {
        public Add {
            path = List.copyOf(path);
        }
    }
}
