package gudgeon.rebuild.book;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What must come before what: a directed graph whose nodes are the ids of steps and checks. It follows from what steps need, fit,
 * build into and cover, and from what checks are done with, clear and hold. Immutable.
 */
public final class Precedence {
    private final List<String> nodes;
    private final Map<String, Set<String>> before = new HashMap<>();
    private final Map<String, Set<String>> after = new HashMap<>();
    private final Map<String, List<String>> buried = new LinkedHashMap<>();
    private final List<String> order;

    Precedence(Structure structure) {
        List<String> steps = structure.steps().stream().map(Step::id).toList();
        List<String> checks = structure.checks().stream().map(Check::id).toList();
        nodes = both(steps, checks);
        for (String node : nodes) {
            before.put(node, new LinkedHashSet<>());
            after.put(node, new LinkedHashSet<>());
        }
        structure.steps().forEach(step -> ofStep(structure, step));
        structure.checks().forEach(check -> ofCheck(structure, check));
        structure.checks().stream()
                .filter(check -> check.late().isEmpty())
                .forEach(check -> uncovered(structure, check));
        order = List.copyOf(InTurn.of(both(checks, steps), before));
    }

    /** In a book with faults a step and a check may have one id; the first counts. */
    private static List<String> both(List<String> some, List<String> others) {
        return Stream.concat(some.stream(), others.stream()).distinct().toList();
    }

    private void ofStep(Structure structure, Step step) {
        step.needs().forEach(first -> edge(first, step.id()));
        step.into().forEach(position -> fitFirst(structure, position, step.id()));
        step.covers().forEach(position -> fitFirst(structure, position, step.id()));
    }

    private void ofCheck(Structure structure, Check check) {
        check.needs().forEach(first -> edge(first, check.id()));
        check.after().forEach(first -> edge(first, check.id()));
        check.with().forEach(position -> fitFirst(structure, position, check.id()));
        check.holds().forEach(step -> edge(check.id(), step));
        for (String suspect : check.clears()) {
            if (structure.step(suspect).isPresent()) {
                edge(suspect, check.id());
            } else if (structure.position(suspect).isPresent() && !structure.isProvedInHand(check, suspect)) {
                fitFirst(structure, suspect, check.id());
            }
        }
    }

    private void fitFirst(Structure structure, String position, String then) {
        structure
                .stepFitting(position)
                .filter(step -> !step.id().equals(then))
                .ifPresent(step -> edge(step.id(), then));
    }

    /** A check comes before every step that covers one of its suspects, unless such a step must come before the check itself. */
    private void uncovered(Structure structure, Check check) {
        for (String position : structure.cleared(check)) {
            for (Step cover : structure.stepsBurying(position)) {
                Optional<List<String>> path = path(cover.id(), check.id());
                if (path.isPresent()) {
                    buried.putIfAbsent(check.id(), path.get());
                } else {
                    edge(check.id(), cover.id());
                }
            }
        }
    }

    private void edge(String first, String then) {
        Set<String> out = after.get(first);
        Set<String> in = before.get(then);
        if (out != null && in != null) {
            out.add(then);
            in.add(first);
        }
    }

    /** The ids of all steps, then of all checks, in the book's order. */
    public List<String> nodes() {
        return nodes;
    }

    /** What comes right before a step or check. */
    public Set<String> before(String node) {
        return Collections.unmodifiableSet(before.getOrDefault(node, Set.of()));
    }

    /** What comes right after a step or check. */
    public Set<String> after(String node) {
        return Collections.unmodifiableSet(after.getOrDefault(node, Set.of()));
    }

    /** All that must come before a step or check, however far. */
    public Set<String> allBefore(String node) {
        return reached(node, before);
    }

    /** All that must come after a step or check, however far. */
    public Set<String> allAfter(String node) {
        return reached(node, after);
    }

    private static Set<String> reached(String node, Map<String, Set<String>> edges) {
        Set<String> reached = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(edges.getOrDefault(node, Set.of()));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (reached.add(next)) {
                open.addAll(edges.getOrDefault(next, Set.of()));
            }
        }
        return reached;
    }

    /** Checks that can't be done before their suspects are covered, each with the path from the covering step to the check. */
    public Map<String, List<String>> buried() {
        return Collections.unmodifiableMap(buried);
    }

    /**
     * The order that follows: whatever is free and stands first in the book comes next, and a check as soon as it is free. What
     * stands in a cycle is left out.
     */
    public List<String> order() {
        return order;
    }

    /** The shortest chain of what must come before what from one node to another, both included. */
    public Optional<List<String>> path(String from, String to) {
        Map<String, String> cameFrom = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(from));
        Set<String> seen = new HashSet<>(Set.of(from));
        while (!open.isEmpty()) {
            String node = open.remove();
            for (String next : after(node)) {
                if (next.equals(to)) {
                    return Optional.of(traced(cameFrom, from, node, to));
                }
                if (seen.add(next)) {
                    cameFrom.put(next, node);
                    open.add(next);
                }
            }
        }
        return Optional.empty();
    }

    private static List<String> traced(Map<String, String> cameFrom, String from, String last, String to) {
        List<String> path = new ArrayList<>(List.of(to));
        String node = last;
        path.add(node);
        while (!node.equals(from)) {
            node = cameFrom.getOrDefault(node, from);
            path.add(node);
        }
        Collections.reverse(path);
        return path;
    }

    /** The shortest cycle, its first node again at its end; empty if there is none. */
    public Optional<List<String>> shortestCycle() {
        List<String> ordered = order();
        if (ordered.size() == nodes.size()) {
            return Optional.empty();
        }
        Set<String> free = new HashSet<>(ordered);
        return nodes.stream()
                .filter(node -> !free.contains(node))
                .map(node -> path(node, node))
                .flatMap(Optional::stream)
                .min((a, b) -> a.size() - b.size());
    }
}
