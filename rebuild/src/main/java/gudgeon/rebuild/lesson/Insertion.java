package gudgeon.rebuild.lesson;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Finds where in a text an amendment goes, and what is written there. */
final class Insertion {
    private final String text;
    private final Marks marks;

    Insertion(String text) {
        this.text = text;
        this.marks = new Marks(text);
    }

    /** What is to be written where; empty if a block of the path is not there. */
    Optional<Splice> of(Amendment amendment, Node top) {
        return of(amendment, top, amendment.path());
    }

    private Optional<Splice> of(Amendment amendment, Node at, List<String> path) {
        String first = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (at instanceof SequenceNode list) {
            return rest.isEmpty()
                    ? Optional.empty()
                    : Marks.block(list, first).flatMap(block -> of(amendment, block, rest));
        }
        if (!(at instanceof MappingNode block)) {
            return Optional.empty();
        }
        Optional<NodeTuple> pair = Marks.pair(block, first);
        if (pair.isEmpty()) {
            return Optional.of(newKey(block, first, value(amendment, rest)));
        }
        return rest.isEmpty()
                ? Optional.of(changed(amendment, pair.get()))
                : of(amendment, pair.get().getValueNode(), rest);
    }

    /** What stands at a new key, with the keys below it that are new too. */
    private static String value(Amendment amendment, List<String> below) {
        if (!below.isEmpty()) {
            return "{" + below.get(0) + ": " + value(amendment, below.subList(1, below.size())) + "}";
        }
        return amendment instanceof Amendment.Add ? Written.list(List.of(amendment.value())) : amendment.value();
    }

    private Splice newKey(MappingNode block, String key, String value) {
        List<NodeTuple> pairs = block.getValue();
        if (pairs.isEmpty()) {
            return new Splice(marks.from(block), marks.to(block), "{" + key + ": " + value + "}");
        }
        int behind = marks.to(pairs.get(pairs.size() - 1).getValueNode());
        if (block.getFlowStyle() == FlowStyle.FLOW) {
            return new Splice(behind, behind, ", " + key + ": " + value);
        }
        return newLine(behind, marks.column(pairs.get(0).getKeyNode()), key + ": " + value);
    }

    private Splice newLine(int behind, int column, String line) {
        int end = marks.lineEnd(behind);
        return new Splice(end, end, marks.lineBreak() + " ".repeat(column) + line);
    }

    private Splice changed(Amendment amendment, NodeTuple pair) {
        Node node = pair.getValueNode();
        return amendment instanceof Amendment.Add ? added(pair, amendment.value()) : put(pair, node, amendment.value());
    }

    private Splice put(NodeTuple pair, Node node, String value) {
        boolean below = Marks.isBlock(node) || marks.from(node) == marks.to(node);
        return below
                ? new Splice(marks.to(pair.getKeyNode()), marks.to(node), ": " + value)
                : new Splice(marks.from(node), marks.to(node), value);
    }

    private Splice added(NodeTuple pair, String item) {
        Node node = pair.getValueNode();
        if (!(node instanceof SequenceNode list)) {
            boolean nothing = !(node instanceof ScalarNode) || Marks.word(node).isEmpty();
            return put(pair, node, Written.list(nothing ? List.of(item) : List.of(one(node), item)));
        }
        if (list.getValue().isEmpty()) {
            return put(pair, node, Written.list(List.of(item)));
        }
        int behind = marks.to(list.getValue().get(list.getValue().size() - 1));
        return list.getFlowStyle() == FlowStyle.FLOW
                ? new Splice(behind, behind, ", " + item)
                : newLine(behind, marks.column(list), "- " + item);
    }

    /** A single word as the first entry of a list: as it stands if it is in quotes, else so that a comma in it does no harm. */
    private String one(Node node) {
        String asWritten = text.substring(marks.from(node), marks.to(node));
        return asWritten.startsWith("\"") || asWritten.startsWith("'") ? asWritten : Written.text(Marks.word(node));
    }
}
