package gudgeon.rebuild.lesson;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Where the entries of a YAML text begin and end in it. The parser counts code points, a text has UTF-16 letters. */
final class Marks {
    private final String text;
    private final boolean plain;

    Marks(String text) {
        this.text = text;
        this.plain = text.codePointCount(0, text.length()) == text.length();
    }

    private int index(Optional<Mark> mark) {
        int points = mark.orElseThrow().getIndex();
        return plain ? points : text.offsetByCodePoints(0, points);
    }

    int from(Node node) {
        return index(node.getStartMark());
    }

    int column(Node node) {
        return node.getStartMark().orElseThrow().getColumn();
    }

    /** Where the last thing written of it ends; the parser's own mark of a block lies behind the blank lines that follow. */
    int to(Node node) {
        if (node instanceof CollectionNode<?> many && many.getFlowStyle() == FlowStyle.BLOCK) {
            return to(last(many));
        }
        int end = index(node.getEndMark());
        while (isBlockText(node) && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    /** Whether it is written over lines of its own, below its key. */
    static boolean isBlock(Node node) {
        return isBlockText(node) || (node instanceof CollectionNode<?> many && many.getFlowStyle() == FlowStyle.BLOCK);
    }

    private static boolean isBlockText(Node node) {
        return node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
    }

    private static Node last(CollectionNode<?> many) {
        List<?> all = many.getValue();
        Object last = all.get(all.size() - 1);
        return last instanceof NodeTuple pair ? pair.getValueNode() : (Node) last;
    }

    /** End of the line, the remark behind included, before its line break. */
    int lineEnd(int from) {
        int end = text.indexOf('\n', from);
        if (end < 0) {
            return text.length();
        }
        return end > 0 && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    String lineBreak() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** The pair of a key. */
    static Optional<NodeTuple> pair(MappingNode block, String key) {
        return block.getValue().stream()
                .filter(pair -> word(pair.getKeyNode()).equals(key))
                .findFirst();
    }

    /** The block of a list that has this id. */
    static Optional<Node> block(SequenceNode list, String id) {
        return list.getValue().stream()
                .filter(item -> item instanceof MappingNode block
                        && pair(block, "id")
                                .filter(pair -> word(pair.getValueNode()).equals(id))
                                .isPresent())
                .findFirst();
    }

    static String word(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}
