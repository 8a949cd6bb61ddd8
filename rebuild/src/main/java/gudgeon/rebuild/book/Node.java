package gudgeon.rebuild.book;

import java.util.List;

/** What stands at one place of a book's file, before its meaning is known. */
sealed interface Node {
    Where where();

    /** What it is, as a person would say. */
    String kind();

    /**
     * A word, a number or a sentence.
     *
     * @param text the text without quotes
     */
    record Text(String text, Where where) implements Node {
        @Override
        public String kind() {
            return text.isEmpty() ? "nothing" : "'" + Words.shortened(text) + "'";
        }
    }

    /** Keys with what stands at each, in the file's order, repeated keys included. */
    record Block(List<Pair> pairs, Where where) implements Node {
        public Block {
            pairs = List.copyOf(pairs);
        }

        @Override
        public String kind() {
            return "a block of keys";
        }
    }

    /** A list. */
    record Items(List<Node> items, Where where) implements Node {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A key and what stands at it. */
    record Pair(String key, Where keyWhere, Node entry) {}
}
