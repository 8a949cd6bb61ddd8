package gudgeon.rebuild.fasten;

import gudgeon.mechanics.joint.Passes;
import gudgeon.rebuild.book.Joint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far a joint is tightened, and what comes next.
 *
 * @param joint the joint
 * @param order in what order
 * @param passes its rounds, the first first; all fasteners go in by hand before them
 */
public record Tightness(JointNow joint, Order order, List<Pass> passes) {
    /** Passes where the book does not say: common practice, three for what must come down evenly. */
    private static final int EVENLY = 3;

    public Tightness {
        passes = List.copyOf(passes);
    }

    /**
     * The next fastener to tighten.
     *
     * @param pass in which round
     * @param hole which hole
     */
    public record Next(Pass pass, String hole) {}

    /** How far it is. */
    public static Tightness of(JointNow joint) {
        Order order = Order.of(joint);
        List<Double> shares = Passes.shares(count(joint));
        List<Pass> passes = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            passes.add(pass(joint, order, i + 1, shares.get(i), false));
        }
        if (joint.holes().size() > 2) {
            passes.add(pass(joint, order, shares.size() + 1, 1, true));
        }
        return new Tightness(joint, order, passes);
    }

    /** In how many passes it comes up to full torque: the book's number, else by its shape. */
    private static int count(JointNow joint) {
        boolean even = joint.book().gasket()
                || joint.book().shape().filter(shape -> shape != Shape.COVER).isPresent();
        int usual = joint.holes().size() < 2 ? 1 : even ? EVENLY : 2;
        return Math.min(Math.max(1, joint.book().passes().orElse(usual)), Passes.MOST);
    }

    private static Pass pass(JointNow joint, Order order, int number, double share, boolean again) {
        List<String> had = new ArrayList<>();
        List<String> left = new ArrayList<>();
        order.holes().forEach(id -> (joint.hole(id).orElseThrow().pass() >= number ? had : left).add(id));
        return new Pass(number, share, again, had, left);
    }

    /** Which fastener is next; empty when all passes are done, or where there are no holes. */
    public Optional<Next> next() {
        return passes.stream()
                .filter(pass -> !pass.isDone())
                .findFirst()
                .map(pass -> new Next(pass, pass.left().get(0)));
    }

    /** Whether every hole is at full torque. */
    public boolean isTight() {
        return !joint.holes().isEmpty()
                && passes.stream()
                        .filter(pass -> pass.share() == 1)
                        .findFirst()
                        .orElseThrow()
                        .isDone();
    }

    /** Whether tightening was begun and is not at an end. */
    public boolean isHalfDone() {
        return joint.holes().stream().anyMatch(hole -> hole.pass() > 0) && next().isPresent();
    }

    /** Where it stands, a sentence. */
    public String sentence() {
        if (joint.holes().isEmpty()) {
            return "The book has no holes for this joint, so its passes can't be followed.";
        }
        return next().map(next -> next.pass().had().isEmpty() && next.pass().number() == 1
                        ? "Not tightened yet: all in by hand first, then "
                                + next.pass().name() + "."
                        : next.pass().sentence() + " Next is " + next.hole() + ".")
                .orElse("All passes are done.");
    }
}
