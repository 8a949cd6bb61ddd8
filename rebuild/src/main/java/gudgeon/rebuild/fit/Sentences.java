package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Gap;
import gudgeon.mechanics.clearance.Place;
import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Protrusion;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What a fitter reads of a fit, the same on page, print and terminal. */
final class Sentences {
    private final Tried tried;
    private final LengthUnit unit;

    Sentences(Tried tried, LengthUnit unit) {
        this.tried = tried;
        this.unit = unit;
    }

    String length(double mm) {
        return unit.format(mm);
    }

    String piston() {
        return "piston '" + tried.piston().id() + "'" + (tried.choice().turned() ? ", turned by half a turn" : "");
    }

    /** What a gap is called, such as "bore gap of the exhaust valve". */
    static String name(GapKind kind, List<String> valves) {
        return switch (valves.size()) {
            case 0 -> kind.term();
            case 1 -> kind.term() + " of the " + valves.get(0) + " valve";
            default -> "gap between the " + String.join(" and ", valves) + " valves";
        };
    }

    private static String between(GapKind kind, List<String> valves) {
        return switch (kind) {
            case VALVE_TO_VALVE -> "The " + String.join(" and ", valves) + " valves";
            case DECK -> "The crown's flat and the head";
            case WALL -> "The " + valves.get(0) + " valve's edge and the bore wall";
            case SIDE -> "The " + valves.get(0) + " valve's edge and its pocket's wall";
            default -> "The " + valves.get(0) + " valve and the crown";
        };
    }

    String finding(
            GapKind kind,
            List<String> valves,
            Gap gap,
            Optional<Double> lean,
            double u,
            double wanted,
            Verdict verdict) {
        String who = between(kind, valves);
        String doubt = " ± " + length(Finding.COVERAGE * u);
        String where = way(kind) + " at " + LengthUnit.degrees(gap.atDeg()) + place(kind, gap.place());
        String ask = length(wanted) + " is wanted";
        String band = lean.filter(least -> Math.abs(least - gap.leastMm()) > 0.005)
                .map(least ->
                        " The lift's shape is not known: with the leanest profile it would be " + length(least) + ".")
                .orElse("");
        return switch (verdict) {
            case CLEARS -> who + " clear by " + length(gap.leastMm()) + doubt + where + "; " + ask + "." + band;
            case CLOSE -> who + " clear by only " + length(gap.leastMm()) + doubt + where + "; " + ask + "." + band;
            case TOUCHES ->
                who + " touch: " + length(-gap.leastMm()) + doubt + " too deep" + where + spans(gap) + "." + band;
            case UNPROVEN -> unproven(who, gap, doubt, where, ask) + band;
        };
    }

    private static String way(GapKind kind) {
        return switch (kind) {
            case BORE -> " along the bore";
            case VALVE -> " along the stem";
            case NEAREST -> " at the nearest";
            default -> "";
        };
    }

    private String unproven(String who, Gap gap, String doubt, String where, String ask) {
        String figure = gap.leastMm() < 0
                ? "may touch: " + length(-gap.leastMm()) + doubt + " too deep"
                : "can't be told yet: " + length(gap.leastMm()) + doubt;
        return who + " " + figure + where + "; " + ask + ".";
    }

    private static String spans(Gap gap) {
        if (gap.touching().isEmpty()) {
            return "";
        }
        return gap.touching().stream()
                .map(span -> "from " + LengthUnit.degrees(span.fromDeg()) + " to " + LengthUnit.degrees(span.toDeg()))
                .collect(Collectors.joining(" and ", ", ", ""));
    }

    /** Where on the crown, as seen from above. */
    private String place(GapKind kind, Place place) {
        if (kind == GapKind.DECK) {
            return "";
        }
        double out = Math.hypot(place.xMm(), place.yMm());
        double azimuth = Math.toDegrees(Math.atan2(place.yMm(), place.xMm()));
        return ", " + length(out) + " out from the bore axis towards " + toward(azimuth);
    }

    private String toward(double azimuthDeg) {
        return tried.book().valves().stream()
                .filter(valve -> Math.abs(Math.IEEEremainder(valve.azimuth().value() - azimuthDeg, 360)) < 60)
                .findFirst()
                .map(valve -> "the " + valve.id() + " side")
                .orElse(Math.round(azimuthDeg < 0 ? azimuthDeg + 360 : azimuthDeg) + "° round from the thrust side");
    }

    String whole(List<Finding> findings, OptionalDouble forward, OptionalDouble backward) {
        String with = "With " + piston() + " and gasket '" + tried.gasket().id() + "'" + cam() + ": ";
        Optional<Finding> worst = worst(findings);
        if (worst.isEmpty()) {
            return with + "nothing was found to compare.";
        }
        return with
                + switch (worst.get().verdict()) {
                    case CLEARS -> "everything clears.";
                    case CLOSE ->
                        "nothing touches, but there is less room than wanted. "
                                + worst.get().sentence();
                    case UNPROVEN -> "it can't be told yet. " + worst.get().sentence();
                    case TOUCHES -> "it touches. " + worst.get().sentence() + tight(forward, backward);
                };
    }

    private static String tight(OptionalDouble forward, OptionalDouble backward) {
        if (forward.isEmpty() || backward.isEmpty()) {
            return "";
        }
        return " Turned by hand it would go tight at " + LengthUnit.degrees(forward.getAsDouble()) + " forward and at "
                + LengthUnit.degrees(backward.getAsDouble()) + " backward.";
    }

    private String cam() {
        int teeth = tried.choice().teethMoved();
        if (teeth == 0) {
            return "";
        }
        return ", the cam " + teeth(teeth);
    }

    static String teeth(int teeth) {
        int count = Math.abs(teeth);
        return count + (count == 1 ? " tooth " : " teeth ") + (teeth > 0 ? "late" : "early");
    }

    /** The finding that decides: touching before unproven before close, then the one shortest of what is wanted. */
    static Optional<Finding> worst(List<Finding> findings) {
        return findings.stream()
                .min(Comparator.<Finding>comparingInt(finding -> rank(finding.verdict()))
                        .thenComparingDouble(finding -> finding.gap().leastMm() - finding.wantedMm()));
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case TOUCHES -> 0;
            case UNPROVEN -> 1;
            case CLOSE -> 2;
            case CLEARS -> 3;
        };
    }

    String formula(GapKind kind, Protrusion protrusion) {
        String piston =
                "Crown height z(θ) = p + r cos α + √(L² − (e + r sin α)²) − √((L + r)² − e²), α = θ − asin(e/(L + r));"
                        + " p " + protrusion.formula() + ". ";
        return switch (kind) {
            case BORE -> piston + "Least rise of the crown along the bore until it meets the valve's head, over all θ.";
            case VALVE -> piston + "Least travel of the head along its stem until it meets the crown, over all θ.";
            case NEAREST -> piston + "Least distance between head and crown as solids, over all θ.";
            case SIDE ->
                piston + "Pocket radius less the distance of the valve's edge from the pocket's axis, least over the"
                        + " part of the edge that is down in the pocket, over all θ.";
            case WALL ->
                "Bore radius less the valve's edge's distance from the bore axis below the deck; above it, the"
                        + " distance to the bore's upper edge.";
            case VALVE_TO_VALVE -> "Least distance between the two heads as solids, over all θ.";
            case DECK ->
                "Pressed gasket thickness − crown protrusion p at top dead centre; p " + protrusion.formula() + ".";
        };
    }
}
