package gudgeon.bench.web.fasten;

import gudgeon.bench.web.page.Frame;
import gudgeon.bench.web.page.Mark;
import gudgeon.bench.web.page.Tab;
import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fasten.ForHole;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.HoleSizes;
import gudgeon.rebuild.fasten.HoleTorque;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.LengthSpan;
import gudgeon.rebuild.fasten.OwnWrenches;
import gudgeon.rebuild.fasten.Pass;
import gudgeon.rebuild.fasten.Tightness;
import gudgeon.rebuild.fasten.WrenchPlan;
import gudgeon.rebuild.fasten.WrenchSetting;
import gudgeon.rebuild.fasten.WrittenTorque;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A joint as its page shows it.
 *
 * @param joint the joint as the build has it
 * @param tightness how far it is tightened
 * @param map its drawing
 * @param wrenches the person's torque wrenches
 * @param jobs which wrench is for which of its torques
 */
public record JointView(
        JointNow joint, Tightness tightness, HoleMap map, OwnWrenches wrenches, List<WrenchPlan.Job> jobs) {
    public JointView {
        jobs = List.copyOf(jobs);
    }

    /** The view of a joint. */
    public static JointView of(Build build, JointNow joint) {
        WrenchPlan plan = WrenchPlan.of(build);
        Tightness tightness = Tightness.of(joint);
        return new JointView(
                joint,
                tightness,
                HoleMap.of(joint, tightness.order().holes()),
                plan.wrenches(),
                plan.jobs().stream()
                        .filter(job -> job.joint().id().equals(joint.id()))
                        .toList());
    }

    /** The views of the joints that a step tightens. */
    public static List<JointView> of(Build build, Step step) {
        return step.tightens().stream()
                .flatMap(id -> JointNow.of(build, id).stream())
                .map(joint -> of(build, joint))
                .toList();
    }

    /** The view of every joint. */
    public static List<JointView> all(Build build) {
        return JointNow.all(build).stream().map(joint -> of(build, joint)).toList();
    }

    /** The address of its page. */
    public String address(Frame frame) {
        return address(frame, joint);
    }

    /** The address of a joint's page. */
    public static String address(Frame frame, JointNow joint) {
        return frame.address(Tab.FASTENERS) + "/joint/" + written(joint.id());
    }

    /** The hole that is shown: the one asked for, else the next one. */
    public String shown(String asked) {
        return joint.hole(asked)
                .map(HoleNow::id)
                .or(this::nextHole)
                .or(() -> joint.holes().stream().map(HoleNow::id).findFirst())
                .orElse("");
    }

    /** The address of its page with a hole chosen. */
    public String address(Frame frame, String hole) {
        return address(frame) + "?hole=" + written(hole);
    }

    /** A text as it stands in an address. */
    public static String written(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** The hole that is tightened next. */
    public Optional<String> nextHole() {
        return tightness.next().map(Tightness.Next::hole);
    }

    /** Whether a hole is the next one. */
    public boolean isNext(HoleNow hole) {
        return nextHole().filter(hole.id()::equals).isPresent();
    }

    /** The number of a hole in the order of tightening, from 1. */
    public int turn(HoleNow hole) {
        return tightness.order().holes().indexOf(hole.id()) + 1;
    }

    /** How a hole stands, as a shape. */
    public Mark mark(HoleNow hole) {
        return hole.pass() == 0 ? Mark.OPEN : hole.pass() >= tightness.passes().size() ? Mark.DONE : Mark.BEGUN;
    }

    /** How a hole stands, in words. */
    public String state(HoleNow hole) {
        return hole.pass() == 0
                ? "not tightened"
                : "has had pass " + hole.pass() + (hole.marked() ? ", marked across" : "");
    }

    /** The last pass that a hole has had, for the drawing; a dash for none. */
    public String had(HoleNow hole) {
        return hole.pass() == 0 ? "–" : hole.pass() >= tightness.passes().size() ? "✓" + hole.pass() : "" + hole.pass();
    }

    /** A number as a field shows it. */
    public static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** How the joint stands, as a shape. */
    public Mark mark() {
        return tightness.isHalfDone()
                ? Mark.BEGUN
                : tightness.next().isEmpty() && !joint.holes().isEmpty() ? Mark.DONE : Mark.OPEN;
    }

    /** What is to be said of a hole to whoever can't see the drawing. */
    public String spoken(HoleNow hole) {
        List<String> said = new ArrayList<>();
        said.add("Hole " + hole.id() + ", number " + turn(hole));
        if (!hole.thread().isEmpty()) {
            said.add(hole.thread() + length(hole).map(length -> " × " + length).orElse(""));
        }
        said.add(state(hole));
        if (isNext(hole)) {
            said.add("this one next");
        }
        return String.join(", ", said);
    }

    /** The length of what goes there: what was recorded or given, else the maker's. */
    public Optional<String> length(HoleNow hole) {
        return hole.fastener()
                .map(ForHole::written)
                .filter(written -> !written.isEmpty())
                .or(() -> hole.book().length().map(size -> size.typed()));
    }

    /** What lengths are right for a hole, each a sentence; none where its sizes are not known. */
    public List<String> lengths(HoleNow hole) {
        return HoleSizes.of(hole).map(LengthSpan::of).map(LengthSpan::reasons).orElse(List.of());
    }

    /** How tight a hole's fastener is to be, each a sentence. */
    public List<String> torque(HoleNow hole) {
        return HoleTorque.of(joint, hole).sentences();
    }

    /** The torque that is due in the next pass, as it is written into the journal; empty where no torque is known. */
    public String due(Tightness.Next next) {
        OptionalDouble full = joint.hole(next.hole())
                .map(hole -> HoleTorque.of(joint, hole).wantedNm())
                .orElse(OptionalDouble.empty());
        return full.isEmpty()
                ? ""
                : new WrittenTorque(full.getAsDouble() * next.pass().share(), TorqueUnit.NEWTON_METRE).words();
    }

    /** The wrench that was taken for it last; empty if none was. */
    public String wrench() {
        return joint.wrench().map(told -> told.fact().wrench()).orElse("");
    }

    /** What to set the wrench to that was taken for it, for each of its torques, a sentence each. */
    public List<String> settings() {
        return joint.wrench().map(Told::fact).stream()
                .flatMap(chosen -> wrenches.named(chosen.wrench()).stream()
                        .flatMap(wrench -> jobs.stream()
                                .flatMap(job -> new WrenchSetting(wrench, job.wantedNm(), WrenchSetting.adapter(chosen))
                                        .sentences().stream())))
                .distinct()
                .toList();
    }

    /** The passes that are begun or due, for the list beside the map. */
    public List<Pass> passes() {
        return tightness.passes();
    }
}
