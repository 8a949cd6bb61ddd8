package gudgeon.rebuild.book;

import gudgeon.mechanics.valvetrain.LiftReadings;
import gudgeon.rebuild.book.SizeText.NotASize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what a book knows of a valve's lift. */
final class LiftReader {
    static final int FEWEST_POINTS = 7;
    /** Readings of a dial gauge may fall back by this much on a rising flank, in mm. */
    private static final double BACKLASH = 0.03;
    /** Lift in mm at the table's ends above which its ends are missing. */
    private static final double SHUT = 0.15;

    private final Fields fields;
    private final ValveEntry.Kind kind;
    private final Faults faults;

    LiftReader(Fields fields, ValveEntry.Kind kind, Faults faults) {
        this.fields = fields;
        this.kind = kind;
        this.faults = faults;
    }

    LiftEntry read() {
        if (fields.has("opens")) {
            return new LiftEntry.Events(
                    fields.event("opens", kind, true),
                    fields.event("closes", kind, false),
                    fields.size("at"),
                    fields.size("greatest"));
        }
        Optional<Size> ratio = fields.optionalSize("rocker-ratio");
        LiftEntry.At at = at(ratio.isPresent());
        if (fields.has("law")) {
            return new LiftEntry.Law(
                    law(), fields.size("duration"), fields.size("greatest"), fields.size("centre"), at, ratio);
        }
        Optional<Size> centre = fields.optionalSize("centre");
        return new LiftEntry.Table(
                fields.has("table") ? points(centre.isPresent()) : List.of(),
                centre,
                fields.optionalSize("zero"),
                at,
                ratio);
    }

    private LiftEntry.At at(boolean hasRatio) {
        Optional<String> word = fields.word("measured-at");
        if (hasRatio && word.filter("valve"::equals).isPresent()) {
            faults.fault(
                    fields.where("rocker-ratio"),
                    fields.at("rocker-ratio"),
                    "A lift measured at the valve has the rocker ratio in it already.",
                    "Take out 'rocker-ratio', or write 'measured-at: lobe'.");
        }
        return word.map("lobe"::equals).orElse(hasRatio) ? LiftEntry.At.LOBE : LiftEntry.At.VALVE;
    }

    private LiftEntry.LawName law() {
        String written = fields.word("law").orElse("");
        for (LiftEntry.LawName law : LiftEntry.LawName.values()) {
            if (law.written().equals(written)) {
                return law;
            }
        }
        return LiftEntry.LawName.POLYNOMIAL_345;
    }

    private List<LiftEntry.Point> points(boolean fromCentre) {
        String path = fields.at("table");
        Node entry = fields.entry("table");
        if (!(entry instanceof Node.Items items)) {
            faults.fault(
                    entry.where(),
                    path,
                    "Here stands " + entry.kind() + ", where a list of pairs is wanted.",
                    "Write the table as [[-120, 0], [-110, 0.05], ...]: crank degrees, then lift in mm.");
            return List.of();
        }
        List<LiftEntry.Point> points = new ArrayList<>();
        List<Where> wheres = new ArrayList<>();
        boolean whole = true;
        for (Node item : items.items()) {
            Optional<LiftEntry.Point> point = point(item, path);
            point.ifPresent(read -> {
                points.add(read);
                wheres.add(item.where());
            });
            whole &= point.isPresent();
        }
        if (whole && points.size() < FEWEST_POINTS) {
            faults.fault(
                    entry.where(),
                    path,
                    "The table has " + points.size() + " points, too few to tell the lift between them.",
                    "Take a reading every 5 to 10 degrees, from shut to shut.");
        } else if (whole) {
            checkAngles(points, wheres, fromCentre, path);
            checkLifts(points, wheres, path);
        }
        return points;
    }

    private Optional<LiftEntry.Point> point(Node item, String path) {
        if (!(item instanceof Node.Items pair)
                || pair.items().size() != 2
                || !pair.items().stream().allMatch(Node.Text.class::isInstance)) {
            faults.fault(
                    item.where(),
                    path,
                    "Here stands " + item.kind() + ", where a pair is wanted.",
                    "Write [crank degrees, lift in mm], such as [-60, 3.52].");
            return Optional.empty();
        }
        Optional<Double> deg = number(pair.items().get(0), Unit.DEGREES, path);
        Optional<Double> mm = number(pair.items().get(1), Unit.MM, path);
        return deg.flatMap(angle -> mm.map(lift -> new LiftEntry.Point(angle, lift)));
    }

    private Optional<Double> number(Node entry, Unit wanted, String path) {
        try {
            SizeText size = SizeText.of(entry instanceof Node.Text text ? text.text() : "");
            if (size.unit().isEmpty() || size.unit().get() == wanted) {
                return Optional.of(size.value());
            }
            faults.fault(
                    entry.where(), path, "The units of this pair are the wrong way round.", "Write [degrees, mm].");
        } catch (NotASize e) {
            faults.fault(entry.where(), path, e.sentence(), "Write a number.");
        }
        return Optional.empty();
    }

    private void checkAngles(List<LiftEntry.Point> points, List<Where> wheres, boolean fromCentre, String path) {
        double low = fromCentre ? -250 : 0;
        double high = fromCentre ? 250 : 720;
        for (int i = 0; i < points.size(); i++) {
            double deg = points.get(i).deg();
            if (deg < low || deg > high) {
                faults.fault(
                        wheres.get(i),
                        path,
                        "The angle " + Words.number(deg) + "° is outside " + Words.number(low) + " to "
                                + Words.number(high) + ".",
                        fromCentre
                                ? "Count from the lobe's centre, or take out 'centre' to count from firing top dead centre."
                                : "Add 'centre' where the table counts from the lobe's centre.");
                return;
            }
            if (i > 0 && deg <= points.get(i - 1).deg()) {
                faults.fault(
                        wheres.get(i),
                        path,
                        "The angle " + Words.number(deg) + "° does not rise from the one before, "
                                + Words.number(points.get(i - 1).deg()) + "°.",
                        "Put the readings in the order of their angles, each angle once.");
            }
        }
    }

    /** A lift rises to its greatest value and falls again; where it does not, a reading is likely mistyped. */
    private void checkLifts(List<LiftEntry.Point> points, List<Where> wheres, String path) {
        int top = 0;
        for (int i = 0; i < points.size(); i++) {
            double mm = points.get(i).mm();
            if (mm < 0 || mm > 30) {
                faults.fault(
                        wheres.get(i),
                        path,
                        "The lift of " + Words.number(mm) + " mm " + (mm < 0 ? "is below zero." : "can't be right."),
                        "Lifts are between 0 and 30 mm.");
            }
            top = mm > points.get(top).mm() ? i : top;
        }
        for (int i = 1; i < points.size(); i++) {
            double rise = points.get(i).mm() - points.get(i - 1).mm();
            if (i <= top ? rise < -BACKLASH : rise > BACKLASH) {
                faults.doubt(
                        wheres.get(i),
                        path,
                        "The lift goes from " + Words.number(points.get(i - 1).mm()) + " to "
                                + Words.number(points.get(i).mm()) + " mm at "
                                + Words.number(points.get(i).deg())
                                + "°, where the valve " + (i <= top ? "opens." : "closes."),
                        "Check this reading and the one before; a digit may be wrong.");
            }
        }
        checkJumps(points, wheres, path);
        checkEnd(points.get(0), wheres.get(0), path);
        checkEnd(points.get(points.size() - 1), wheres.get(points.size() - 1), path);
    }

    private void checkJumps(List<LiftEntry.Point> points, List<Where> wheres, String path) {
        double[] angles = points.stream().mapToDouble(LiftEntry.Point::deg).toArray();
        double[] lifts = points.stream().mapToDouble(LiftEntry.Point::mm).toArray();
        for (LiftReadings.Jump jump : LiftReadings.of(angles, lifts).jumps()) {
            faults.doubt(
                    wheres.get(jump.index()),
                    path,
                    "The lift of " + Words.number(lifts[jump.index()]) + " mm at "
                            + Words.number(angles[jump.index()]) + "° jumps: its neighbours ask for about "
                            + Words.number(Math.rint((lifts[jump.index()] - jump.byMm()) * 100) / 100) + " mm.",
                    "Read it again; no valve can be thrown about like that.");
        }
    }

    private void checkEnd(LiftEntry.Point end, Where where, String path) {
        if (end.mm() > SHUT) {
            faults.doubt(
                    where,
                    path,
                    "The table ends at " + Words.number(end.mm()) + " mm, with the valve still open.",
                    "Add readings until the valve is shut.");
        }
    }
}
