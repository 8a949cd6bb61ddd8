package gudgeon.rebuild.fasten;

import gudgeon.mechanics.joint.StandardLengths;
import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which lengths under the head are right for a hole, in mm. The doubts of the sizes are kept clear of on both sides.
 *
 * @param sizes what it was worked out from
 * @param leastMm shortest that surely holds; empty where the stack is not known
 * @param mostMm longest that surely neither bottoms nor stands too far through; empty where nothing limits it or that is not known
 * @param reasons why, and what is not known; sentences
 */
public record LengthSpan(HoleSizes sizes, OptionalDouble leastMm, OptionalDouble mostMm, List<String> reasons) {
    /** How far from the bottom of a blind hole a screw ends, at least, in mm: common practice, no source. */
    private static final double SHORT_OF_BOTTOM_MM = 1;

    /** Half a micrometre, so that sums of decimals do not decide. */
    private static final double ROUNDING_MM = 0.0005;

    public LengthSpan {
        reasons = List.copyOf(reasons);
    }

    /** Works it out. */
    public static LengthSpan of(HoleSizes sizes) {
        List<String> reasons = new ArrayList<>();
        OptionalDouble least = least(sizes, reasons);
        OptionalDouble most = most(sizes, reasons);
        if (least.isPresent() && most.isPresent() && least.getAsDouble() > most.getAsDouble()) {
            reasons.add(
                    "No length does both: the hole is too shallow, or its sizes are too doubtful. Measure stack and depth"
                            + " again; a thread insert or a stud may be the way.");
        }
        return new LengthSpan(sizes, least, most, reasons);
    }

    /** The standard lengths that are right, shortest first; none where the stack is not known. */
    public List<Double> standard() {
        if (leastMm.isEmpty() || (mostMm.isEmpty() && sizes.inside())) {
            return List.of();
        }
        // where nothing limits it, nobody wants it longer than needed by half as much again
        double most = mostMm.orElse(1.5 * leastMm.getAsDouble());
        return StandardLengths.between(leastMm.getAsDouble(), most);
    }

    /** Which standard lengths to take, a sentence. */
    public String sentence() {
        List<Double> standard = standard();
        if (standard.isEmpty()) {
            return sizes.stack().isEmpty() || mostMm.isEmpty()
                    ? "Which length to take can't be said before that is measured."
                    : "None of the standard lengths is right: cut a longer one down, or change the stack with a washer.";
        }
        return "Take "
                + String.join(" or ", standard.stream().map(LengthSpan::mm).toList()) + ", under the head.";
    }

    /** How a length is, a sentence. */
    public String sentence(Quantity length) {
        boolean reaches =
                sizes.stack().map(stack -> length.value() > stack.value()).orElse(true);
        return Sentence.ended(mm(length.value()) + " is "
                + (reaches
                        ? verdict(length).words()
                        : "too short: it does not reach through the "
                                + mm(sizes.stack().orElseThrow().value()) + " it clamps"));
    }

    /** Whether a length is right. */
    public LengthVerdict verdict(Quantity length) {
        if (sizes.stack().isEmpty()) {
            return LengthVerdict.DOUBTFUL;
        }
        Quantity reach = length.minus(sizes.stack().get());
        double doubt = HoleSizes.half(reach);
        double spare = reach.value() - neededMm(sizes);
        if (spare + doubt < 0) {
            return LengthVerdict.TOO_SHORT;
        }
        boolean holds = spare - doubt >= -ROUNDING_MM;
        if (end().isEmpty()) {
            return holds && isFree() ? LengthVerdict.RIGHT : LengthVerdict.DOUBTFUL;
        }
        Quantity over = reach.minus(end().get());
        double overDoubt = HoleSizes.half(over);
        if (over.value() - overDoubt > ROUNDING_MM) {
            return sizes.through() ? LengthVerdict.STANDS_IN : LengthVerdict.BOTTOMS;
        }
        return holds && over.value() + overDoubt <= ROUNDING_MM - marginMm()
                ? LengthVerdict.RIGHT
                : LengthVerdict.DOUBTFUL;
    }

    /**
     * How far a screw of that length stands proud when it is dropped in before turning, in mm: it rests on the first thread. Empty
     * where the stack is not known.
     */
    public Optional<Quantity> proud(Quantity length) {
        return sizes.stack().map(length::minus);
    }

    /** How far into the thread a screw may go at all. */
    private Optional<Quantity> end() {
        return sizes.through() ? sizes.depth().flatMap(depth -> sizes.room().map(depth::plus)) : sizes.depth();
    }

    /** Whether a screw may stand through as far as it likes. */
    private boolean isFree() {
        return sizes.through() && !sizes.inside() && sizes.room().isEmpty();
    }

    private double marginMm() {
        return sizes.through() ? 0 : SHORT_OF_BOTTOM_MM;
    }

    /** How much thread must be in, with the first turn, which is chamfered and bears nothing. */
    private static double neededMm(HoleSizes sizes) {
        return Metal.engagementInDiameters(Metal.named(sizes.into()).orElse(Material.ALUMINIUM))
                        * sizes.thread().majorMm()
                + sizes.thread().pitchMm();
    }

    private static OptionalDouble least(HoleSizes sizes, List<String> reasons) {
        double needed = neededMm(sizes);
        String into = Metal.named(sizes.into()).map(Metal::words).orElse("what may be light alloy");
        if (sizes.stack().isEmpty()) {
            reasons.add(mm(needed) + " of " + sizes.thread().designation() + " must go into " + into
                    + "; what the screw clamps has not been measured, so no length is proved.");
            return OptionalDouble.empty();
        }
        Quantity stack = sizes.stack().get();
        double doubt = HoleSizes.half(stack);
        double least = stack.value() + needed + doubt;
        reasons.add("At least " + mm(least) + ": it clamps " + mm(stack.value()) + ", and " + mm(needed) + " of "
                + sizes.thread().designation() + " must go into " + into + doubted(doubt) + ".");
        return OptionalDouble.of(least);
    }

    private static OptionalDouble most(HoleSizes sizes, List<String> reasons) {
        LengthSpan span = new LengthSpan(sizes, OptionalDouble.empty(), OptionalDouble.empty(), List.of());
        if (span.isFree()) {
            reasons.add("It may stand through: nothing is known to be in its way.");
            return OptionalDouble.empty();
        }
        if (span.end().isEmpty()) {
            reasons.add(
                    sizes.through()
                            ? "How far it may stand through has not been measured: measure thickness and room behind."
                            : "The depth of the thread has not been measured: a screw that is too long bottoms unseen.");
            return OptionalDouble.empty();
        }
        if (sizes.stack().isEmpty()) {
            return OptionalDouble.empty();
        }
        Quantity end = sizes.stack().get().plus(span.end().get());
        double doubt = HoleSizes.half(end);
        double most = end.value() - span.marginMm() - doubt;
        reasons.add("At most " + mm(most) + ": "
                + (sizes.through()
                        ? "longer, it stands into what is behind"
                        : "it must end " + mm(SHORT_OF_BOTTOM_MM) + " short of the bottom")
                + doubted(doubt) + ".");
        return OptionalDouble.of(most);
    }

    private static String doubted(double doubt) {
        return doubt > 0 ? ", with ±" + mm(doubt) + " of doubt kept clear" : "";
    }

    static String mm(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
        return text + " mm";
    }
}
