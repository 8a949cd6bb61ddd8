package gudgeon.rebuild.alarm;

import gudgeon.mechanics.bore.RingGap;
import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.bore.BoreDimensions;
import gudgeon.rebuild.bore.FoundBore;
import gudgeon.rebuild.bore.Gauged;
import gudgeon.rebuild.bore.RingGaps;
import gudgeon.rebuild.build.Build;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A ring's gap is smaller than its bore asks for. */
final class RingGapRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        OptionalDouble bore = BoreDimensions.of(build.structure())
                .flatMap(dimensions -> FoundBore.of(build, dimensions))
                .map(found -> OptionalDouble.of(found.least().size().value()))
                .orElse(OptionalDouble.empty());
        return RingGaps.of(build.structure()).stream().flatMap(gap -> of(build, gap, bore).stream());
    }

    private static Optional<Alarm> of(Build build, Dimension gap, OptionalDouble bore) {
        Optional<Wanted> wanted = wanted(gap, bore);
        return Gauged.last(build, gap).stream()
                .min(Comparator.comparingDouble(reading -> reading.size().value()))
                .flatMap(least -> wanted.filter(limit -> least.size().value() < limit.mm())
                        .map(limit -> alarm(gap, least, limit)));
    }

    private record Wanted(double mm, String whose) {}

    private static Optional<Wanted> wanted(Dimension gap, OptionalDouble bore) {
        OptionalDouble booked = least(gap.expect()).isPresent() ? least(gap.expect()) : least(gap.standard());
        if (booked.isPresent()) {
            return Optional.of(new Wanted(booked.getAsDouble(), "by the book"));
        }
        return bore.isPresent()
                ? Optional.of(new Wanted(
                        RingGap.usualLeastMm(bore.getAsDouble()),
                        String.format(
                                Locale.ROOT,
                                "by a rule of thumb for this bore of %.2f mm; the maker's figure comes first",
                                bore.getAsDouble())))
                : Optional.empty();
    }

    private static OptionalDouble least(Optional<Expect> limits) {
        return limits.map(Expect::atLeast).orElse(OptionalDouble.empty());
    }

    private static Alarm alarm(Dimension gap, Gauged least, Wanted wanted) {
        return new Alarm(
                AlarmKind.RING_GAP,
                Severity.STOP,
                gap.of(),
                String.format(
                        Locale.ROOT,
                        "The %s is %.2f mm%s; at least %.2f mm is wanted %s.",
                        gap.name(),
                        least.size().value(),
                        least.at().isEmpty() ? "" : " (" + least.at() + ")",
                        wanted.mm(),
                        wanted.whose()),
                "Warm, the ends meet: the ring breaks or seizes in the bore.",
                "File one end across, a little at a time, take off the burr and gap it again. Ring ends are sharp.",
                List.of(least.number()),
                List.of());
    }
}
