package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How an engine is put together and proved: its positions, joints, steps, checks and dimensions, each by its id, and what follows
 * from them. Immutable.
 */
public final class Structure {
    private final Map<String, Position> positions = new LinkedHashMap<>();
    private final Map<String, Joint> joints = new LinkedHashMap<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, Check> checks = new LinkedHashMap<>();
    private final Map<String, Dimension> dimensions = new LinkedHashMap<>();
    private final Map<String, FamilyMember> family = new LinkedHashMap<>();
    private final Map<String, Step> fitting = new HashMap<>();
    private final Map<String, List<Step>> covering = new HashMap<>();
    private final Map<String, List<Check>> holding = new HashMap<>();
    private final Map<String, List<Step>> doneOn = new HashMap<>();
    private final Precedence precedence;

    /** A structure of these; of two with one id the first counts. */
    public Structure(
            List<Position> positions,
            List<Joint> joints,
            List<Step> steps,
            List<Check> checks,
            List<Dimension> dimensions,
            List<FamilyMember> family) {
        positions.forEach(position -> this.positions.putIfAbsent(position.id(), position));
        joints.forEach(joint -> this.joints.putIfAbsent(joint.id(), joint));
        steps.forEach(step -> this.steps.putIfAbsent(step.id(), step));
        checks.forEach(check -> this.checks.putIfAbsent(check.id(), check));
        dimensions.forEach(dimension -> this.dimensions.putIfAbsent(dimension.id(), dimension));
        family.forEach(member -> this.family.putIfAbsent(member.id(), member));
        for (Step step : this.steps.values()) {
            step.fits().forEach(position -> fitting.putIfAbsent(position, step));
            step.covers().forEach(position -> also(covering, position, step));
            if (step.fits().isEmpty()) {
                step.into().forEach(position -> also(doneOn, position, step));
            }
        }
        this.checks.values().forEach(check -> check.holds().forEach(step -> also(holding, step, check)));
        this.precedence = new Precedence(this);
    }

    /** The structure of a book that has none. */
    public static Structure none() {
        return new Structure(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static <T> void also(Map<String, List<T>> map, String key, T value) {
        map.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
    }

    /** The positions in the book's order. */
    public List<Position> positions() {
        return List.copyOf(positions.values());
    }

    /** The joints in the book's order. */
    public List<Joint> joints() {
        return List.copyOf(joints.values());
    }

    /** The steps in the book's order. */
    public List<Step> steps() {
        return List.copyOf(steps.values());
    }

    /** The checks in the book's order. */
    public List<Check> checks() {
        return List.copyOf(checks.values());
    }

    /** The dimensions in the book's order. */
    public List<Dimension> dimensions() {
        return List.copyOf(dimensions.values());
    }

    /** Other engines whose parts look like this one's, in the book's order. */
    public List<FamilyMember> family() {
        return List.copyOf(family.values());
    }

    /** The dimension of that id. */
    public Optional<Dimension> dimension(String id) {
        return Optional.ofNullable(dimensions.get(id));
    }

    /** The dimensions of a position's part, in the book's order. */
    public List<Dimension> dimensionsOf(String position) {
        return dimensions.values().stream()
                .filter(dimension -> dimension.of().equals(position))
                .toList();
    }

    /** The family's engine of that id. */
    public Optional<FamilyMember> member(String id) {
        return Optional.ofNullable(family.get(id));
    }

    /** The position of that id. */
    public Optional<Position> position(String id) {
        return Optional.ofNullable(positions.get(id));
    }

    /** The joint of that id. */
    public Optional<Joint> joint(String id) {
        return Optional.ofNullable(joints.get(id));
    }

    /** The step of that id. */
    public Optional<Step> step(String id) {
        return Optional.ofNullable(steps.get(id));
    }

    /** The check of that id. */
    public Optional<Check> check(String id) {
        return Optional.ofNullable(checks.get(id));
    }

    /** Whether a position, step or check has that id. */
    public boolean has(String id) {
        return positions.containsKey(id) || steps.containsKey(id) || checks.containsKey(id);
    }

    /** Whether the book has no positions, steps or checks. */
    public boolean isEmpty() {
        return positions.isEmpty() && steps.isEmpty() && checks.isEmpty();
    }

    /** What a fitter calls the position, joint, step, check, dimension or engine of that id; the id itself if there is none. */
    public String name(String id) {
        return position(id)
                .map(Position::name)
                .or(() -> step(id).map(Step::name))
                .or(() -> check(id).map(Check::name))
                .or(() -> joint(id).map(Joint::name))
                .or(() -> dimension(id).map(Dimension::name))
                .or(() -> member(id).map(FamilyMember::name))
                .orElse(id);
    }

    /** The step that fits a position. */
    public Optional<Step> stepFitting(String position) {
        return Optional.ofNullable(fitting.get(position));
    }

    /** The steps that cover a position themselves. */
    public List<Step> stepsCovering(String position) {
        return Collections.unmodifiableList(covering.getOrDefault(position, List.of()));
    }

    /** The steps that cover a position themselves, without the one that fits it: done, they bury what is in it. */
    public List<Step> stepsBurying(String position) {
        return stepsCovering(position).stream()
                .filter(step -> !step.fits().contains(position))
                .toList();
    }

    /** The steps that fit nothing and are done on the part of a position, as a setting: lost when it comes off. */
    public List<Step> stepsDoneOn(String position) {
        return Collections.unmodifiableList(doneOn.getOrDefault(position, List.of()));
    }

    /** The checks that hold a step. */
    public List<Check> checksHolding(String step) {
        return Collections.unmodifiableList(holding.getOrDefault(step, List.of()));
    }

    /**
     * All steps that stand between the hand and a position once all is together: those that cover it, those that cover what these
     * fit, and so on. In the book's order.
     */
    public List<Step> allCovering(String position) {
        return Cover.of(this, List.of(position), step -> true);
    }

    /** The positions that a suspect stands for: itself, or what a step fits. */
    public List<String> positionsOf(String suspect) {
        return step(suspect).map(Step::fits).orElse(List.of(suspect));
    }

    /** The positions that a check clears, itself or through the steps that fit them. */
    public Set<String> cleared(Check check) {
        Set<String> positions = new LinkedHashSet<>();
        check.clears().forEach(suspect -> positions.addAll(positionsOf(suspect)));
        return positions;
    }

    /** Whether a check proves the part of a position before it is fitted, in the hand: it holds the very step that fits it. */
    public boolean isProvedInHand(Check check, String position) {
        return stepFitting(position)
                .filter(step -> check.holds().contains(step.id()))
                .isPresent();
    }

    /** What must come before what. */
    public Precedence precedence() {
        return precedence;
    }
}
