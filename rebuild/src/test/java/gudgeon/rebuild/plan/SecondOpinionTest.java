package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Precedence;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.junit.jupiter.api.Test;

/** What follows from a book's second part, beside a general graph library. */
class SecondOpinionTest {
    private static Graph<String, DefaultEdge> graph(Precedence precedence) {
        Graph<String, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
        precedence.nodes().forEach(graph::addVertex);
        precedence.nodes().forEach(node -> precedence.after(node).forEach(next -> graph.addEdge(node, next)));
        return graph;
    }

    /** All that a graph library reaches from a node over at least one edge. */
    private static Set<String> reached(Graph<String, DefaultEdge> graph, String from) {
        Set<String> reached = new HashSet<>();
        for (DefaultEdge edge : graph.outgoingEdgesOf(from)) {
            new BreadthFirstIterator<>(graph, graph.getEdgeTarget(edge)).forEachRemaining(reached::add);
        }
        return reached;
    }

    /** Length of the shortest cycle in edges, 0 if there is none. */
    private static int shortestCycle(Graph<String, DefaultEdge> graph) {
        BFSShortestPath<String, DefaultEdge> paths = new BFSShortestPath<>(graph);
        return graph.edgeSet().stream()
                .map(edge -> paths.getPath(graph.getEdgeTarget(edge), graph.getEdgeSource(edge)))
                .filter(path -> path != null)
                .mapToInt(path -> path.getLength() + 1)
                .min()
                .orElse(0);
    }

    @Property(tries = 300)
    void whatComesBeforeAndAfterIsTheClosure(@ForAll long seed) {
        Precedence precedence = AnyStructure.maybeInCircles(seed, 10, 8).precedence();
        Graph<String, DefaultEdge> graph = graph(precedence);
        for (String node : precedence.nodes()) {
            assertThat(precedence.allAfter(node)).isEqualTo(reached(graph, node));
            assertThat(precedence.nodes().stream()
                            .filter(other -> precedence.allAfter(other).contains(node)))
                    .containsExactlyInAnyOrderElementsOf(precedence.allBefore(node));
        }
    }

    @Property(tries = 300)
    void theShortestCycleIsAsLongAsTheLibrarySays(@ForAll long seed) {
        Precedence precedence = AnyStructure.maybeInCircles(seed, 10, 8).precedence();
        int length = shortestCycle(graph(precedence));
        List<String> cycle = precedence.shortestCycle().orElse(List.of(""));
        assertThat(cycle.size() - 1).isEqualTo(length);
        for (int i = 1; i < cycle.size(); i++) {
            assertThat(precedence.after(cycle.get(i - 1))).contains(cycle.get(i));
        }
    }

    @Property(tries = 300)
    void theOrderIsCompleteWithoutCyclesAndNothingComesTooEarly(@ForAll long seed) {
        Precedence precedence = AnyStructure.maybeInCircles(seed, 10, 8).precedence();
        boolean circles = new CycleDetector<>(graph(precedence)).detectCycles();
        List<String> order = precedence.order();
        assertThat(order.size() == precedence.nodes().size()).isEqualTo(!circles);
        assertThat(order).doesNotHaveDuplicates();
        for (String node : order) {
            assertThat(order.subList(0, order.indexOf(node))).containsAll(precedence.before(node));
        }
    }

    @Property(tries = 300)
    void whatCoversIsWhatTheCoverGraphReaches(@ForAll long seed) {
        Structure structure = AnyStructure.of(seed, 12, 0);
        Graph<String, DefaultEdge> covers = new DefaultDirectedGraph<>(DefaultEdge.class);
        structure.positions().forEach(position -> covers.addVertex(position.id()));
        structure.steps().forEach(step -> covers.addVertex(step.id()));
        for (Step step : structure.steps()) {
            step.covers().forEach(position -> covers.addEdge(position, step.id()));
            step.fits().forEach(position -> covers.addEdge(step.id(), position));
        }
        structure
                .positions()
                .forEach(position -> assertThat(structure.allCovering(position.id()))
                        .extracting(Step::id)
                        .containsExactlyInAnyOrderElementsOf(reached(covers, position.id()).stream()
                                .filter(id -> structure.step(id).isPresent())
                                .toList()));
    }

    @Test
    void someCasesHaveCyclesAndSomeHaveNone() {
        int circles = 0;
        for (long seed = 0; seed < 200; seed++) {
            circles +=
                    shortestCycle(graph(AnyStructure.maybeInCircles(seed, 10, 8).precedence())) > 0 ? 1 : 0;
        }
        assertThat(circles).isBetween(20, 180);
    }
}
