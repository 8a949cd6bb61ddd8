package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What the book knows of a valve's lift. */
public sealed interface LiftEntry {
    /** Where a lift was taken. */
    enum At {
        /** On the cam: rocker ratio and valve clearance are still to come. */
        LOBE,
        /** On the valve with the book's valve clearance set, which is therefore in it already. */
        VALVE
    }

    /** The same with every size changed. */
    LiftEntry each(UnaryOperator<Size> change);

    /**
     * A measured table.
     *
     * @param points angle and lift, angles rising; crank degrees from the lobe's centre, or from firing top dead centre
     *     where no centre is stated
     * @param centre the lobe's centre: degrees after overlap top dead centre for an inlet, before it for an exhaust
     * @param zero what the gauge's zero was out by, added to every lift that is not 0; mostly 0 with a doubt
     * @param at where it was taken
     * @param rockerRatio valve lift over lobe lift; 1 where it was taken at the valve
     */
    record Table(List<Point> points, Optional<Size> centre, Optional<Size> zero, At at, Optional<Size> rockerRatio)
            implements LiftEntry {
        public Table {
            points = List.copyOf(points);
        }

        @Override
        public Table each(UnaryOperator<Size> change) {
            return new Table(points, centre.map(change), zero.map(change), at, rockerRatio.map(change));
        }
    }

    /**
     * A point of a lift table.
     *
     * @param deg crank degrees
     * @param mm lift in mm
     */
    record Point(double deg, double mm) {}

    /**
     * A named law.
     *
     * @param law which law
     * @param duration crank degrees from the start of lift to its end
     * @param greatest greatest lift
     * @param centre the lobe's centre, as in {@link Table}
     * @param at where the greatest lift was taken
     * @param rockerRatio as in {@link Table}
     */
    record Law(LawName law, Size duration, Size greatest, Size centre, At at, Optional<Size> rockerRatio)
            implements LiftEntry {
        @Override
        public Law each(UnaryOperator<Size> change) {
            return new Law(
                    law,
                    change.apply(duration),
                    change.apply(greatest),
                    change.apply(centre),
                    at,
                    rockerRatio.map(change));
        }
    }

    /** The named laws of lift. */
    enum LawName {
        HARMONIC("harmonic"),
        POLYNOMIAL_345("3-4-5"),
        POLYNOMIAL_4567("4-5-6-7");

        private final String written;

        LawName(String written) {
            this.written = written;
        }

        /** The name as the book writes it. */
        public String written() {
            return written;
        }
    }

    /**
     * Opening and closing angles alone, at the valve with its clearance set; the shape between is not known.
     *
     * @param opens crank angle at which the valve reaches the lift {@code at}, degrees from firing top dead centre
     * @param closes crank angle at which it is back there, degrees from firing top dead centre
     * @param at the lift at which both were taken
     * @param greatest greatest lift
     */
    record Events(Size opens, Size closes, Size at, Size greatest) implements LiftEntry {
        @Override
        public Events each(UnaryOperator<Size> change) {
            return new Events(change.apply(opens), change.apply(closes), change.apply(at), change.apply(greatest));
        }
    }
}
