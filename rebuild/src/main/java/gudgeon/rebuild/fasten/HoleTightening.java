package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Bolt;
import gudgeon.mechanics.bolt.Head;
import gudgeon.mechanics.bolt.Seat;
import gudgeon.mechanics.bolt.StrengthClass;
import gudgeon.mechanics.bolt.Tightening;
import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Makes of what is known of a hole what is needed to reckon its torque, and says what had to be assumed. */
final class HoleTightening {
    private static final List<StrengthClass> WEAKEST_FIRST = List.of(
            StrengthClass.C_4_8, StrengthClass.C_5_8, StrengthClass.C_8_8, StrengthClass.C_10_9, StrengthClass.C_12_9);

    private final JointNow joint;
    private final HoleNow hole;
    private final Optional<ScrewThread> thread;
    private final Optional<StrengthClass> stated;

    HoleTightening(JointNow joint, HoleNow hole) {
        this.joint = joint;
        this.hole = hole;
        thread = HoleSizes.thread(hole.thread());
        stated = StrengthClass.find(hole.book().strength());
    }

    /** What is on the thread; oiled where nobody said, for that pulls hardest. */
    Lubrication lubricationNow() {
        return joint.lubricated().or(() -> joint.book().lubricated()).orElse(Lubrication.OILED);
    }

    /** The fastener in its seat, with that on its thread. */
    Optional<Tightening> as(Lubrication lubrication) {
        return thread.map(
                one -> new Tightening(new Bolt(one, strength(one), head()), seat(), Slickness.of(lubrication)));
    }

    /** What had to be assumed, each a sentence. */
    List<String> assumed() {
        if (thread.isEmpty()) {
            return List.of();
        }
        List<String> assumed = new ArrayList<>();
        if (stated.isEmpty()) {
            assumed.add("Its strength class is not known; reckoned as "
                    + strength(thread.get()).designation()
                    + (maker().isPresent()
                            ? ", the weakest that bears the maker's figure as he means it."
                            : ", the weakest in use. Read the mark on its head."));
        }
        if (joint.lubricated().or(() -> joint.book().lubricated()).isEmpty()) {
            assumed.add("Nobody said what is on its thread; reckoned as oiled.");
        }
        if (into().isEmpty() || engagedMm().isEmpty()) {
            assumed.add("Whether its thread strips first is not known: "
                    + (into().isEmpty() ? "what the thread is cut in" : "how far it engages") + " is not in the book.");
        }
        return assumed;
    }

    private Optional<Size> maker() {
        return hole.book().torque().or(() -> joint.book().torque());
    }

    private StrengthClass strength(ScrewThread of) {
        return stated.or(() -> maker().flatMap(size -> bearing(of, size.value())))
                .orElse(StrengthClass.C_4_8);
    }

    /** The weakest class whose bolt bears a torque as the maker means it. */
    private Optional<StrengthClass> bearing(ScrewThread of, double torqueNm) {
        Lubrication meant = joint.book().lubricated().orElse(Lubrication.DRY);
        Seat none = new Seat(Optional.empty(), OptionalDouble.empty(), Optional.empty());
        return WEAKEST_FIRST.stream()
                .filter(one ->
                        new Tightening(new Bolt(of, one, head()), none, Slickness.of(meant)).mostNm() >= torqueNm)
                .findFirst()
                .or(() -> Optional.of(StrengthClass.C_12_9));
    }

    private Head head() {
        String words = hole.fastener()
                .map(ForHole::head)
                .filter(text -> !text.isBlank())
                .orElse(hole.book().head())
                .toLowerCase(Locale.ROOT);
        if (words.contains("flange")) {
            return Head.FLANGE;
        }
        if (words.contains("socket") || words.contains("cap") || words.contains("allen")) {
            return Head.SOCKET;
        }
        if (words.contains("cheese") || words.contains("slot")) {
            return Head.CHEESE;
        }
        return words.contains("pan") || words.contains("cross") ? Head.PAN : Head.HEXAGON;
    }

    private Seat seat() {
        return new Seat(
                into(),
                engagedMm(),
                into().filter(metal -> metal == Material.ALUMINIUM || metal == Material.MAGNESIUM));
    }

    private Optional<Material> into() {
        return Metal.named(hole.into());
    }

    /** How far the thread engages, in mm: what the fastener reaches beyond what it clamps, at most the hole's depth. */
    private OptionalDouble engagedMm() {
        Optional<Double> reach = hole.fastener()
                .flatMap(ForHole::length)
                .or(hole::makersLength)
                .flatMap(length -> hole.stack().map(stack -> Math.max(0, length.value() - stack.value())));
        return Stream.concat(reach.stream(), hole.depth().map(Quantity::value).stream())
                .mapToDouble(Double::doubleValue)
                .min();
    }
}
