package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Precedence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Every order that the precedence of a small structure allows. */
final class AllOrders {
    private final Precedence precedence;
    private final Consumer<List<String>> seen;
    private final List<String> order = new ArrayList<>();
    private final Set<String> done = new HashSet<>();

    private AllOrders(Precedence precedence, Consumer<List<String>> seen) {
        this.precedence = precedence;
        this.seen = seen;
    }

    static void of(Precedence precedence, Consumer<List<String>> seen) {
        new AllOrders(precedence, seen).next();
    }

    private void next() {
        if (order.size() == precedence.nodes().size()) {
            seen.accept(order);
        }
        for (String node : precedence.nodes()) {
            if (!done.contains(node) && done.containsAll(precedence.before(node))) {
                done.add(node);
                order.add(node);
                next();
                order.remove(order.size() - 1);
                done.remove(node);
            }
        }
    }
}
