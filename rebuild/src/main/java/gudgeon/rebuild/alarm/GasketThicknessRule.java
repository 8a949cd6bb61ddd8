package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Gasket;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Remeasured;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A gasket that sets a height is of another thickness than the book's. */
final class GasketThicknessRule implements Rule {
    /** Less than this is what gaskets of one kind differ by: common practice, no source. */
    private static final double MAY_DIFFER_MM = 0.05;

    private final Fits fits;

    /** The thickness that the figures were taken with, and the one at hand. */
    private record Thickness(Size booked, Size now) {
        boolean differs() {
            double difference = Math.abs(now.value() - booked.value());
            double doubt =
                    Finding.COVERAGE * now.quantity().minus(booked.quantity()).standardUncertainty();
            return difference > MAY_DIFFER_MM && difference > doubt;
        }
    }

    GasketThicknessRule(Fits fits) {
        this.fits = fits;
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        Optional<AsMeasured> parts =
                AsMeasured.of(build).filter(found -> !found.laid().isEmpty());
        return parts.stream()
                .flatMap(found -> build.structure().positions().stream()
                        .flatMap(position -> thickness(build, found, position).stream()
                                .filter(Thickness::differs)
                                .map(thickness -> alarm(build, found, position, thickness))));
    }

    private static Optional<Thickness> thickness(Build build, AsMeasured parts, Position position) {
        if (position.sizes().equals("gaskets")) {
            Geometry booked = build.book().geometry().orElseThrow();
            return parts.choice()
                    .gasketId()
                    .flatMap(parts.geometry()::gasket)
                    .map(Gasket::pressed)
                    .map(now -> new Thickness(booked.gaskets().get(0).pressed(), now));
        }
        return position.pressed()
                .flatMap(booked -> build.partFor(position.id())
                        .flatMap(part -> Optional.ofNullable(part.sizes().get("pressed")))
                        .flatMap(text ->
                                Remeasured.of(booked, text, parts.geometry().instruments())
                                                instanceof Remeasured.Read read
                                        ? Optional.of(new Thickness(booked, read.size()))
                                        : Optional.empty()));
    }

    private Alarm alarm(Build build, AsMeasured parts, Position position, Thickness thickness) {
        Optional<TrialFit> before =
                AsMeasured.of(build, other -> !other.equals(position.id())).flatMap(fits::of);
        Optional<TrialFit> after = fits.of(parts);
        boolean touches = after.filter(Fits::touches).isPresent();
        return new Alarm(
                AlarmKind.GASKET_THICKNESS,
                touches ? Severity.STOP : Severity.LOOK,
                position.id(),
                "The " + position.name() + " is " + mm(thickness.now().value())
                        + " thick, where the book's figures are for "
                        + mm(thickness.booked().value()) + ".",
                touches
                        ? "It moves the crown in the bore so far that something touches."
                        : "It moves the crown in the bore: deck gap, compression and the room above the valves change.",
                touches
                        ? "Don't fit it. Take one of the book's thickness, or make up the difference."
                        : "Take one of the book's thickness, or see in the trial fit that the change does no harm.",
                Laying.evidence(build, position),
                before.flatMap(was -> after.map(is -> figures(was, is))).orElse(List.of()));
    }

    private static List<String> figures(TrialFit before, TrialFit after) {
        List<String> figures = new ArrayList<>();
        for (Finding finding : after.findings()) {
            if (finding.kind() == GapKind.DECK || finding.kind() == GapKind.BORE) {
                Fits.same(finding, before)
                        .ifPresent(was -> figures.add(named(finding) + ": "
                                + mm(was.gap().leastMm()) + " before, "
                                + mm(finding.gap().leastMm()) + " with it."));
            }
        }
        if (Fits.compressionRatio(before).isPresent()
                && Fits.compressionRatio(after).isPresent()) {
            figures.add(String.format(
                    Locale.ROOT,
                    "Compression ratio: %.2f : 1 before, %.2f : 1 with it.",
                    Fits.compressionRatio(before).getAsDouble(),
                    Fits.compressionRatio(after).getAsDouble()));
        }
        return figures;
    }

    private static String named(Finding finding) {
        return finding.valves().isEmpty()
                ? "Deck gap"
                : "Bore gap of the " + finding.valves().get(0) + " valve";
    }

    private static String mm(double mm) {
        return LengthUnit.MM.format(mm);
    }
}
