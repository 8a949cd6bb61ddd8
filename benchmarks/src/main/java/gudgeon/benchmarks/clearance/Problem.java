package gudgeon.benchmarks.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Valve;
import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.valvetrain.Lift;
import java.util.ArrayList;
import java.util.List;

/** An invented domed crown with leaning valves in their pockets, and twelve of its sizes in doubt. */
final class Problem {
    private static final Lift EXHAUST = lift(252);
    private static final Lift INLET = lift(466);

    private Problem() {}

    private static Lift lift(double centreDeg) {
        return theta -> {
            double from = Math.IEEEremainder(theta - centreDeg, 720);
            if (Math.abs(from) >= 135) {
                return 0;
            }
            double c = Math.cos(Math.PI * from / 270);
            return 6.2 * c * c;
        };
    }

    /** The twelve sizes in doubt of the exhaust side, in the order that {@link #topEnd(double[])} takes them. */
    static List<Quantity> inputs() {
        double[] values = {24, 3.0, 12.5, 25, 21, 1.0, 12.5, 25, 3.2, 1.0, -0.2, 92};
        List<Quantity> inputs = new ArrayList<>();
        for (double value : values) {
            inputs.add(Quantity.stated(value, 0.03));
        }
        return inputs;
    }

    static TopEnd topEnd(double[] x) {
        Crown crown = new Crown(
                new CrownForm.Dome(4, 46),
                49.6,
                List.of(new Pocket(x[0], x[1], x[2], 180, x[3]), new Pocket(28, 3.2, 12, 0, 25)));
        return new TopEnd(
                50,
                new Crank(25, x[11], 0.5, x[10]),
                crown,
                x[9],
                List.of(
                        new Valve(x[4], x[5], x[6], 180, x[7], x[8], EXHAUST),
                        new Valve(25, 1, 12, 0, 25, 3.2, INLET)));
    }

    static TopEnd known() {
        return topEnd(inputs().stream().mapToDouble(Quantity::value).toArray());
    }

    /** As many like valves as asked for, each in its own pocket, spread around the crown. */
    static TopEnd withValves(int valves) {
        List<Pocket> pockets = new ArrayList<>();
        List<Valve> fitted = new ArrayList<>();
        for (int i = 0; i < valves; i++) {
            double azimuth = 360.0 * i / valves;
            pockets.add(new Pocket(14, 3, 15, azimuth, 20));
            fitted.add(new Valve(11, 1, 15, azimuth, 20, 4, i % 2 == 0 ? EXHAUST : INLET));
        }
        return new TopEnd(
                50, new Crank(25, 92, 0.5, -0.2), new Crown(new CrownForm.Dome(4, 46), 49.6, pockets), 1, fitted);
    }
}
