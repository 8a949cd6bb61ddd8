package gudgeon.rebuild.alarm;

import gudgeon.mechanics.limits.Fit;
import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.limits.UnknownDesignation;
import gudgeon.mechanics.limits.WarmSeat;
import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.SeatFit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Method;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A part that sits tight was put in cold, or what it sits in was warmed too far or not far enough. */
final class HeatRule implements Rule {
    private static final double MICROMETRES_A_MM = 1000;

    /** A seat that may be tight: the most by which the part may be larger, and the two in their warmth. */
    private record Tight(double interferenceMm, WarmSeat seat) {}

    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().positions().stream()
                .filter(position -> position.seatFit().isPresent())
                .flatMap(position -> build.told(FittingSaid.class, position.id()).stream()
                        .reduce((before, later) -> later)
                        .filter(told ->
                                told.number() > build.place(position.id()).removed())
                        .flatMap(told -> alarm(position, position.seatFit().orElseThrow(), told))
                        .stream());
    }

    private static Optional<Alarm> alarm(Position position, SeatFit fit, Told<FittingSaid> told) {
        FittingSaid said = told.fact();
        boolean warmed = said.method() != Method.COOLED;
        if (warmed
                && said.celsius().isPresent()
                && fit.warmestC().isPresent()
                && said.celsius().getAsDouble() > fit.warmestC().getAsDouble()) {
            return Optional.of(tooWarm(position, fit, told));
        }
        return tight(fit).flatMap(tight -> notEnough(position, fit, told, tight));
    }

    private static Optional<Tight> tight(SeatFit fit) {
        Optional<Material> part = fit.partMaterial();
        Optional<Material> into = fit.intoMaterial();
        if (part.isEmpty() || into.isEmpty()) {
            return Optional.empty();
        }
        try {
            Fit limits = Fit.of(fit.size());
            double interference = -limits.leastClearanceMicrometres() / MICROMETRES_A_MM;
            return interference > 0
                    ? Optional.of(
                            new Tight(interference, new WarmSeat(limits.hole().sizeMm(), part.get(), into.get())))
                    : Optional.empty();
        } catch (UnknownDesignation toldByTheBook) {
            return Optional.empty();
        }
    }

    private static Optional<Alarm> notEnough(Position position, SeatFit fit, Told<FittingSaid> told, Tight tight) {
        FittingSaid said = told.fact();
        double wanted = said.method() == Method.COOLED
                ? tight.seat().partCelsius(tight.interferenceMm(), 0, WarmSeat.REFERENCE_CELSIUS)
                : tight.seat().aroundCelsius(tight.interferenceMm(), 0, WarmSeat.REFERENCE_CELSIUS);
        boolean isKnown = said.celsius().isPresent();
        double was = said.celsius().orElse(WarmSeat.REFERENCE_CELSIUS);
        boolean enough = said.method() == Method.COOLED ? was <= wanted : was >= wanted;
        if (enough || (said.method().byHeat() && !isKnown)) {
            return Optional.empty();
        }
        boolean forced = said.method() == Method.PRESSED_COLD || said.method() == Method.DRIVEN_COLD;
        return Optional.of(new Alarm(
                AlarmKind.HEAT,
                forced ? Severity.STOP : Severity.LOOK,
                position.id(),
                "The " + position.name() + " was " + said.method().words()
                        + (isKnown ? " at " + celsius(was) : "") + ", and by its fit it may be "
                        + String.format(Locale.ROOT, "%.3f mm", tight.interferenceMm()) + " too large for that.",
                "Forced in, it scrapes its seat wide, and what goes in through its balls or rollers is marked.",
                "Look whether seat and part are unhurt and it sits home; a seat scraped wide no longer holds.",
                List.of(told.number()),
                List.of(fit.size() + ": " + (said.method() == Method.COOLED ? "cold enough at " : "warm enough at ")
                        + celsius(wanted) + " for the tightest that the fit allows.")));
    }

    private static Alarm tooWarm(Position position, SeatFit fit, Told<FittingSaid> told) {
        return new Alarm(
                AlarmKind.HEAT,
                Severity.STOP,
                position.id(),
                "What the " + position.name() + " sits in was warmed to "
                        + celsius(told.fact().celsius().orElseThrow()) + ", more than the "
                        + celsius(fit.warmestC().orElseThrow()) + " that it bears.",
                "Too warm, a casting warps and loses its hardness, and a bearing its temper.",
                "Let it cool slowly, and prove the seat and the joint face before more goes in; the maker's figure wins.",
                List.of(told.number()),
                List.of());
    }

    private static String celsius(double value) {
        return String.format(Locale.ROOT, "%.0f °C", value);
    }
}
