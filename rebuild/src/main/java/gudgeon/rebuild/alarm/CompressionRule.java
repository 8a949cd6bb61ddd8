package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.TrialFit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The parts as measured lose compression. */
final class CompressionRule implements Rule {
    /** Share of the book's ratio that may be lost before it is said: common practice, no source. */
    private static final double MAY_LOSE = 0.10;

    private final Fits fits;

    CompressionRule(Fits fits) {
        this.fits = fits;
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        Optional<AsMeasured> parts =
                AsMeasured.of(build).filter(found -> !found.laid().isEmpty());
        OptionalDouble now = ratio(parts.flatMap(fits::of));
        OptionalDouble booked = ratio(build.book().geometry().flatMap(fits::booked));
        if (parts.isEmpty() || now.isEmpty() || booked.isEmpty()) {
            return Stream.empty();
        }
        double least = (1 - MAY_LOSE) * booked.getAsDouble();
        if (now.getAsDouble() >= least) {
            return Stream.empty();
        }
        return new Laying(build, parts.get(), fits)
                        .toBlame(fit -> Fits.compressionRatio(fit).orElse(0) >= least)
                        .map(position -> alarm(build, position, booked.getAsDouble(), now.getAsDouble()))
                        .stream();
    }

    private static OptionalDouble ratio(Optional<TrialFit> fit) {
        return fit.map(Fits::compressionRatio).orElse(OptionalDouble.empty());
    }

    private static Alarm alarm(Build build, Position at, double booked, double now) {
        return new Alarm(
                AlarmKind.COMPRESSION,
                Severity.LOOK,
                at.id(),
                String.format(
                        Locale.ROOT,
                        "With the %s as measured the compression ratio falls to %.2f : 1; the book's parts give %.2f : 1.",
                        at.name(),
                        now,
                        booked),
                "The engine would start badly and lack power, and good rings would read as worn ones.",
                "Compare the height of the crown and the gasket with the old parts before it goes in.",
                Laying.evidence(build, at),
                List.of(String.format(Locale.ROOT, "%.0f %% of the ratio is lost.", 100 * (1 - now / booked))));
    }
}
