package gudgeon.rebuild.alarm;

import gudgeon.mechanics.bore.CleansUp;
import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.bore.BoreDimensions;
import gudgeon.rebuild.bore.FoundBore;
import gudgeon.rebuild.bore.Oversize;
import gudgeon.rebuild.bore.PistonsToHave;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.Returned;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A piston was ordered for which the worn bore can't be bored clean. */
final class OversizeRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return BoreDimensions.of(build.structure())
                .flatMap(dimensions -> FoundBore.of(build, dimensions)
                        .filter(found -> !found.reworked())
                        .filter(found -> !isForAnotherBarrel(build, dimensions))
                        .map(found -> alarms(build, dimensions, found)))
                .orElse(Stream.empty());
    }

    private static Stream<Alarm> alarms(Build build, BoreDimensions dimensions, FoundBore found) {
        String piston = dimensions.piston().id();
        return build.told(Ordered.class, piston).stream()
                .filter(told -> !wentBack(build, piston, told))
                .flatMap(told -> alarm(dimensions, found, told).stream());
    }

    /** Whether a barrel is on order, so that the worn one may not be bored at all. */
    private static boolean isForAnotherBarrel(Build build, BoreDimensions dimensions) {
        String barrel = dimensions.bore().of();
        return build.told(Ordered.class, barrel).stream().anyMatch(told -> !wentBack(build, barrel, told));
    }

    private static boolean wentBack(Build build, String piston, Told<Ordered> ordered) {
        return build.told(Returned.class, piston).stream()
                .anyMatch(back -> back.number() > ordered.number()
                        && back.fact().order().equals(ordered.fact().order()));
    }

    private static Optional<Alarm> alarm(BoreDimensions dimensions, FoundBore found, Told<Ordered> ordered) {
        OptionalDouble skirt = PistonsToHave.stated(dimensions, ordered.fact().sizes());
        Optional<Expect> wanted = dimensions.wanted();
        if (skirt.isEmpty() || wanted.isEmpty() || suitsAsItIs(dimensions, found, skirt.getAsDouble())) {
            return Optional.empty();
        }
        Oversize oversize =
                Oversize.of("", skirt.getAsDouble() + wanted.get().atLeast().orElseThrow(), found.leastBore());
        return oversize.isProved() ? Optional.empty() : Optional.of(alarm(dimensions, found, ordered, oversize));
    }

    /**
     * Whether it may go in with no boring at all: nowhere is the bore worn past its limit, nor its clearance out of the service limits.
     */
    private static boolean suitsAsItIs(BoreDimensions dimensions, FoundBore found, double skirtMm) {
        return dimensions
                .clearance()
                .expect()
                .or(dimensions::wanted)
                .filter(limits -> limits.holds(found.least().size().value() - skirtMm)
                        && limits.holds(found.worst().size().value() - skirtMm))
                .filter(holds -> dimensions
                        .bore()
                        .expect()
                        .map(limits -> limits.holds(found.worst().size().value()))
                        .orElse(true))
                .isPresent();
    }

    private static Alarm alarm(BoreDimensions dimensions, FoundBore found, Told<Ordered> ordered, Oversize oversize) {
        boolean no = oversize.cleansUp() == CleansUp.NO;
        return new Alarm(
                AlarmKind.OVERSIZE,
                no ? Severity.STOP : Severity.LOOK,
                dimensions.piston().id(),
                "The bore for the " + dimensions.piston().name() + " ordered "
                        + (no ? "does not clean up." : "is not proved to clean up."),
                "What is left of the old wall, worn or scored, leaks past the rings and wears them out.",
                no
                        ? "Change the order for the next oversize that cleans up, as the bore plan says."
                        : "Measure the bore with a better gauge, or ask for the next oversize.",
                List.of(ordered.number(), found.worst().number()),
                List.of(oversize.sentence()));
    }
}
