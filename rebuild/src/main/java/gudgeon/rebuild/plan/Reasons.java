package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Check.How;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.plan.Reason.Kind;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What each step and check waits for. */
final class Reasons {
    private final Build build;
    private final Structure structure;
    private final Set<String> left;
    private final Instant now;
    private final PartsInHand parts;

    /**
     * @param left the steps and checks that are left to do
     */
    Reasons(Build build, Set<String> left, Instant now) {
        this.left = left;
        this.build = build;
        this.structure = build.structure();
        this.now = now;
        this.parts = new PartsInHand(build);
    }

    /** What a step waits for; empty if it can be done. */
    List<Reason> of(Step step) {
        List<Reason> reasons = new ArrayList<>(stepsBefore(step.id()));
        structure.precedence().before(step.id()).stream()
                .flatMap(id -> structure.check(id).stream())
                .flatMap(check -> unproved(check, step).stream())
                .forEach(reasons::add);
        step.fits().stream()
                .flatMap(position -> structure.position(position).stream())
                .flatMap(position -> parts.missing(position).stream())
                .forEach(reasons::add);
        return reasons;
    }

    /** What a check waits for; empty if it can be done. */
    List<Reason> of(Check check) {
        List<Reason> reasons = new ArrayList<>(stepsBefore(check.id()));
        check.after().stream()
                .flatMap(id -> structure.check(id).stream())
                .filter(first -> !build.check(first.id()).lets())
                .forEach(first -> reasons.add(proof(first)));
        heldBack(check).forEach(position -> parts.missing(position).ifPresent(reasons::add));
        reasons.addAll(hidden(check));
        return reasons;
    }

    /** Suspects that a check proves before they are fitted, in the hand. */
    private List<Position> heldBack(Check check) {
        return check.clears().stream()
                .flatMap(suspect -> structure.position(suspect).stream())
                .filter(position -> structure.isProvedInHand(check, position.id()))
                .toList();
    }

    private List<Reason> stepsBefore(String id) {
        List<Reason> reasons = new ArrayList<>();
        for (String before : structure.precedence().before(id)) {
            structure.step(before).flatMap(this::notReady).ifPresent(reasons::add);
        }
        return reasons;
    }

    private Optional<Reason> notReady(Step first) {
        StepState state = build.step(first.id());
        if (!state.stands()) {
            return Optional.of(new Reason(Kind.STEP, first.id(), "'" + first.name() + "' is not done yet."));
        }
        long left = state.doneAt()
                .map(at -> Duration.between(now, at.plus(Duration.ofMinutes(first.setMinutes())))
                        .plusSeconds(59)
                        .toMinutes())
                .orElse(0L);
        return left <= 0
                ? Optional.empty()
                : Optional.of(new Reason(
                        Kind.TIME,
                        first.id(),
                        "'" + first.name() + "' is done and needs another " + Amount.time(left) + " to set."));
    }

    /** A check that a step must wait for, or that it would bury while it can still be done. */
    private Optional<Reason> unproved(Check check, Step step) {
        if (check.holds().contains(step.id())) {
            return build.check(check.id()).lets(step) ? Optional.empty() : Optional.of(proof(check));
        }
        return !left.contains(check.id()) || !hidden(check).isEmpty()
                ? Optional.empty()
                : Optional.of(new Reason(
                        Kind.CHECK,
                        check.id(),
                        "'" + check.name() + "' comes first: this would cover what it proves."));
    }

    private Reason proof(Check check) {
        String state = "'" + check.name() + "' "
                + switch (build.check(check.id()).status()) {
                    case FAILED -> "failed.";
                    case VOID -> "is void again: what it relied on was disturbed.";
                    default -> "is not proved yet.";
                };
        return new Reason(Kind.CHECK, check.id(), state);
    }

    /** What can only be seen or measured in the open can't be once it is covered. */
    private List<Reason> hidden(Check check) {
        boolean inTheOpen = check.late().isEmpty() && (check.how() == How.SEEN || check.how() == How.MEASURED);
        if (!inTheOpen) {
            return List.of();
        }
        Map<Step, Set<String>> over = new LinkedHashMap<>();
        for (String position : structure.cleared(check)) {
            InPlace.over(build, position)
                    .forEach(step -> over.computeIfAbsent(step, s -> new LinkedHashSet<>())
                            .add(structure.name(position)));
        }
        return over.entrySet().stream()
                .map(entry -> new Reason(
                        Kind.STEP,
                        entry.getKey().id(),
                        "'" + entry.getKey().name() + "' covers "
                                + Sentence.list(List.copyOf(entry.getValue()))
                                + " and would have to be undone first."))
                .toList();
    }
}
