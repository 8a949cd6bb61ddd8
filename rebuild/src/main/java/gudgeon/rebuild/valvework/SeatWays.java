package gudgeon.rebuild.valvework;

import gudgeon.mechanics.seat.SeatCuts;
import gudgeon.mechanics.seat.ValveFace;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What can be done with a seat, also when the valve's head is too small for a machine shop to cut it again. Each is to be drawn as an
 * option and compared; none is ranked.
 */
public final class SeatWays {
    private static final String HEAD = "head";

    private final Build build;
    private final ValveSeat seat;

    private SeatWays(Build build, ValveSeat seat) {
        this.build = build;
        this.seat = seat;
    }

    /** The ways for one valve's seat. */
    public static List<SeatWay> of(Build build, ValveSeat seat) {
        return new SeatWays(build, seat).all();
    }

    private List<SeatWay> all() {
        List<SeatWay> all = new ArrayList<>();
        if (!seat.isTooSmall()
                && seat.mayRiseMm()
                        .filter(left -> left < SeatSaving.LEAST_CUT_MM)
                        .isEmpty()) {
            all.add(recut());
        }
        all.add(otherValve());
        all.add(seatRing());
        if (build.structure().position(HEAD).isPresent()) {
            all.add(usedHead());
        }
        if (!seat.needsWork()) {
            all.add(leave());
        }
        return all;
    }

    private SeatWay recut() {
        SeatCuts before = new SeatCuts(20, 21, ValveSeat.TOP_DEG, ValveSeat.SEAT_DEG, ValveSeat.THROAT_DEG);
        double wider = before.cut(0, SeatSaving.LEAST_CUT_MM, 0).widthMm() - before.widthMm();
        String left = seat.mayRiseMm()
                .map(more -> String.format(Locale.ROOT, " The book lets it sink %.2f mm more.", more))
                .orElse(" The book says not how far it may sink.");
        return way(
                "recut",
                "Recut and narrow the seat",
                String.format(
                        Locale.ROOT,
                        "Each %.1f mm of cutting sinks the valve as much and widens a 45 degree seat by %.2f mm, to be taken off again with the outer and inner cuts.%s Under a small head stop early, with a true pilot in a sound guide; not every shop has one so small.",
                        SeatSaving.LEAST_CUT_MM,
                        wider,
                        left),
                line(
                        seat.width().of(),
                        "cut the seat of the " + seat.valve().name() + ", guides first; swarf is sharp"));
    }

    private SeatWay otherValve() {
        Optional<Double> head = seat.headMm()
                .flatMap(now -> seat.sunkMm()
                        .filter(sunk -> sunk.value() > 0)
                        .map(sunk -> now.value() + ValveFace.widerMm(sunk.value(), ValveSeat.SEAT_DEG)));
        String of = seat.valve().id().replaceFirst("-valve$", "");
        Map<String, String> sizes = head.map(mm -> Map.of(of + "-head", String.format(Locale.ROOT, "%.2f mm", mm)))
                .orElse(Map.of());
        String wide = head.map(mm ->
                        String.format(Locale.ROOT, " A head of about %.2f mm would stand as high as when new.", mm))
                .orElse("");
        return way(
                "other-valve",
                "Wider valve in place",
                "On the same seat a wider head stands higher." + wide
                        + " Compare stem, length, collet groove, margin and seat angle, and try its gaps: to the piston's pocket, to the other valve, to the wall.",
                part(seat.valve().id(), "with a wider head", Origin.PATTERN, sizes));
    }

    private SeatWay seatRing() {
        return way(
                "seat-ring",
                "Have a new seat ring fitted",
                "It brings the valve back to its height. The shop must say whether there is metal enough around the seat, and the spring's room at full lift is to be measured anew. A head warmed for a ring burns: dry gloves, and nothing flammable near.",
                line(seat.width().of(), "new seat ring for the " + seat.valve().name() + ", fitted and cut"));
    }

    private SeatWay usedHead() {
        return way(
                "used-head",
                "Used head in place of the seat",
                "Nothing is cut, but another head brings its own guides, recess, chamber and joint face: measure them all before this one is given up.",
                part(HEAD, "with sound seats", Origin.USED, Map.of()));
    }

    private SeatWay leave() {
        return way(
                "leave",
                "Leave the seat as it is",
                "What was measured is within the book's limits. Lap it lightly, if the valve is not coated, and see that it holds petrol or paraffin without a weep; no flame near.",
                line(seat.width().of(), "lapped and tried for leaks"));
    }

    private SeatWay way(String what, String name, String why, OptionLine line) {
        String option = what + " " + seat.valve().name();
        return new SeatWay(
                new OptionDrawn(option, name + " of the " + seat.valve().name(), why), List.of(named(option, line)));
    }

    private static OptionLine line(String position, String what) {
        return new OptionLine("", position, what, Optional.empty(), "", "", Optional.empty(), Map.of());
    }

    private static OptionLine part(String position, String what, Origin origin, Map<String, String> sizes) {
        return new OptionLine("", position, what, Optional.of(origin), "", "", Optional.empty(), sizes);
    }

    private static OptionLine named(String option, OptionLine line) {
        return new OptionLine(
                option,
                line.position(),
                line.what(),
                line.origin(),
                line.family(),
                line.price(),
                line.days(),
                line.sizes());
    }
}
