package gudgeon.mechanics.valvetrain;

/**
 * Where a valve opens and closes at a stated lift, and where it stands highest. Angles in crank degrees in [0, 720).
 *
 * @param opensDeg where it reaches the stated lift
 * @param closesDeg where it is back there
 * @param greatestMm greatest lift
 * @param greatestDeg the middle of where it stands there
 */
public record LiftEvents(double opensDeg, double closesDeg, double greatestMm, double greatestDeg) {
    private static final double STEP_DEG = 0.25;
    private static final double TOLERANCE_DEG = 1e-6;

    /**
     * The events of a lift.
     *
     * @param lift a lift with one summit
     * @param atMm the stated lift, 0 or more; at 0 the angles where any lift begins and ends
     * @throws IllegalArgumentException if the valve never lifts so far, or never comes down so far
     */
    public static LiftEvents of(Lift lift, double atMm) {
        double top = 0;
        double greatest = -1;
        double last = 0;
        for (double theta = 0; theta < 720; theta += STEP_DEG) {
            double here = lift.mmAt(theta);
            if (here > greatest + 1e-12) {
                greatest = here;
                top = theta;
                last = theta;
            } else if (here > greatest - 1e-12 && theta - last <= STEP_DEG) {
                last = theta;
            }
        }
        if (!(atMm >= 0 && atMm < greatest)) {
            throw new IllegalArgumentException(
                    "a valve that lifts " + greatest + " mm has no opening at " + atMm + " mm");
        }
        double middle = last > top ? (top + last) / 2 : summit(lift, top);
        return new LiftEvents(
                wrap(flank(lift, atMm, middle, -1)),
                wrap(flank(lift, atMm, middle, 1)),
                Math.max(greatest, lift.mmAt(middle)),
                wrap(middle));
    }

    /** Lift in mm at overlap top dead centre. */
    public static double atOverlapMm(Lift lift) {
        return lift.mmAt(360);
    }

    /** The summit within a step of an angle, by thirds. */
    private static double summit(Lift lift, double about) {
        double from = about - STEP_DEG;
        double to = about + STEP_DEG;
        while (to - from > TOLERANCE_DEG) {
            double third = (to - from) / 3;
            if (lift.mmAt(from + third) < lift.mmAt(to - third)) {
                from += third;
            } else {
                to -= third;
            }
        }
        return (from + to) / 2;
    }

    private static double flank(Lift lift, double atMm, double top, int way) {
        double inside = top;
        double outside = top;
        while (lift.mmAt(outside) > atMm) {
            inside = outside;
            outside += way * STEP_DEG;
            if (Math.abs(outside - top) > 720) {
                throw new IllegalArgumentException("the valve never comes down to " + atMm + " mm");
            }
        }
        while (Math.abs(outside - inside) > TOLERANCE_DEG) {
            double middle = (inside + outside) / 2;
            if (lift.mmAt(middle) > atMm) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return (inside + outside) / 2;
    }

    private static double wrap(double theta) {
        double within = theta % 720;
        return within < 0 ? within + 720 : within;
    }
}
