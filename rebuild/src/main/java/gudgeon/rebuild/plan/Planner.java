package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Sorts what is left of a build into what can be done and what waits. */
final class Planner {
    /** What is better done first; the earlier constant comes first. */
    private enum Rank {
        BEGUN,
        /** A check without which a step that could begin must wait, or would bury its suspects. */
        PROVE_FIRST,
        OTHER
    }

    private record Ranked(Rank rank, int behind, Doable doable) {}

    private final Build build;
    private final Structure structure;
    private final Set<String> left;
    private final Map<String, List<Reason>> reasons = new HashMap<>();
    private final WorkBehind behind;

    Planner(Build build, Instant now) {
        this.build = build;
        this.structure = build.structure();
        this.left = new Left(build).ids();
        Reasons asked = new Reasons(build, left, now);
        for (String id : left) {
            structure.step(id).ifPresent(step -> reasons.put(id, asked.of(step)));
            structure.check(id).ifPresent(check -> reasons.put(id, asked.of(check)));
        }
        behind = new WorkBehind(structure, structure.precedence().order(), left);
    }

    Plan plan() {
        List<Ranked> now = new ArrayList<>();
        List<Waiting> waiting = new ArrayList<>();
        for (String id : left) {
            List<Reason> why = reasonsOf(id);
            if (why.isEmpty() || build.step(id).status() == StepState.Status.BEGUN) {
                now.add(ranked(id));
            } else {
                boolean isCheck = structure.check(id).isPresent();
                waiting.add(new Waiting(id, isCheck, structure.name(id), why));
            }
        }
        now.sort(Comparator.comparing(Ranked::rank)
                .thenComparing(Comparator.comparingInt(Ranked::behind).reversed()));
        return new Plan(
                now.stream().map(Ranked::doable).toList(),
                waiting,
                left.stream()
                        .flatMap(id -> structure.check(id).stream())
                        .filter(Check::isHoldPoint)
                        .findFirst(),
                progress());
    }

    private List<Reason> reasonsOf(String id) {
        return reasons.getOrDefault(id, List.of());
    }

    private Ranked ranked(String id) {
        List<String> why = new ArrayList<>();
        List<String> proved = structure.check(id).map(this::urgent).orElse(List.of());
        Rank rank = build.step(id).status() == StepState.Status.BEGUN
                ? Rank.BEGUN
                : proved.isEmpty() ? Rank.OTHER : Rank.PROVE_FIRST;
        why.addAll(history(id));
        why.addAll(proved);
        if (rank != Rank.BEGUN && proved.isEmpty()) {
            why.add(frees(id));
        }
        Doable doable = new Doable(
                id,
                structure.check(id).isPresent(),
                structure.name(id),
                WorkBehind.minutesOf(structure, id),
                String.join(" ", why));
        return new Ranked(rank, behind.minutes(id), doable);
    }

    /** What happened to it before. */
    private List<String> history(String id) {
        StepState step = build.step(id);
        CheckState check = build.check(id);
        if (step.status() == StepState.Status.BEGUN) {
            List<String> said = new ArrayList<>(List.of("It was begun and is not done yet."));
            reasonsOf(id).forEach(reason -> said.add(reason.sentence()));
            return said;
        }
        if (step.status() == StepState.Status.STOPPED) {
            return List.of(step.why().isEmpty() ? "It was stopped." : "It was stopped: " + Sentence.ended(step.why()));
        }
        return switch (check.status()) {
            case FAILED ->
                List.of(check.remark().isEmpty() ? "It failed." : "It failed: " + Sentence.ended(check.remark()));
            case VOID -> List.of("It passed once, and what it relied on was disturbed since.");
            default -> List.of();
        };
    }

    /** The steps that could begin but for this check, or that could begin and would bury what it clears. */
    private List<String> urgent(Check check) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String id : structure.precedence().after(check.id())) {
            boolean couldBegin = left.contains(id)
                    && structure.step(id).isPresent()
                    && reasonsOf(id).stream().allMatch(reason -> reason.id().equals(check.id()));
            if (couldBegin) {
                said.put(
                        id,
                        check.holds().contains(id)
                                ? "'" + structure.name(id) + "' waits for it."
                                : "'" + structure.name(id) + "' would cover what it proves.");
            }
        }
        return List.copyOf(said.values());
    }

    private String frees(String id) {
        List<String> then = behind.of(id);
        if (then.isEmpty()) {
            return "Nothing waits for it.";
        }
        int checks = (int)
                then.stream().filter(node -> structure.check(node).isPresent()).count();
        List<String> both = Stream.of(
                        then.size() > checks ? Amount.of(then.size() - checks, "step") : "",
                        checks > 0 ? Amount.of(checks, "check") : "")
                .filter(text -> !text.isEmpty())
                .toList();
        return Sentence.list(both) + " behind it, " + Amount.time(behind.minutes(id)) + " of work.";
    }

    private Progress progress() {
        List<StepState.Status> states = structure.steps().stream()
                .map(step -> build.step(step.id()).status())
                .filter(status -> status != StepState.Status.AS_FOUND)
                .toList();
        int done = (int) states.stream()
                .filter(status -> status == StepState.Status.DONE)
                .count();
        int minutes = left.stream()
                .mapToInt(id -> WorkBehind.minutesOf(structure, id))
                .sum();
        return new Progress(done, states.size(), minutes, said(done, states.size(), minutes));
    }

    private String said(int done, int all, int minutes) {
        if (structure.steps().isEmpty()) {
            return "The engine book has no steps yet.";
        }
        if (all == 0) {
            return "The engine is together as it was found.";
        }
        String steps = done + " of " + Amount.of(all, "step") + " done";
        return left.isEmpty()
                ? steps + ", and all is proved."
                : steps + ", about " + Amount.time(minutes) + " of work left.";
    }
}
