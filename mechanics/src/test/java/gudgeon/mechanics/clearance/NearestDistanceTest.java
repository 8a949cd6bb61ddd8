package gudgeon.mechanics.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.crank.Crank;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Nearest distances against a general bounded optimiser from a numerics library, which knows nothing of rims or edges. */
class NearestDistanceTest {
    private static final int STARTS = 5;

    private static double[] inHead(Valve v, double gasket, double r, double phi, double up) {
        double a = Math.toRadians(v.azimuthDeg());
        double t = Math.toRadians(v.tiltDeg());
        double p = r * v.headDiameterMm() / 2 * Math.cos(phi);
        double q = r * v.headDiameterMm() / 2 * Math.sin(phi);
        double h = up * v.marginMm();
        double out = v.offsetMm() + p * Math.cos(t) + h * Math.sin(t);
        return new double[] {
            out * Math.cos(a) - q * Math.sin(a),
            out * Math.sin(a) + q * Math.cos(a),
            gasket + v.recessMm() - p * Math.sin(t) + h * Math.cos(t)
        };
    }

    private static double least(MultivariateFunction distance, double[] low, double[] high, SplittableRandom r) {
        double best = Double.POSITIVE_INFINITY;
        double[] sigma = new double[low.length];
        for (int k = 0; k < low.length; k++) {
            sigma[k] = (high[k] - low[k]) / 4;
        }
        for (int i = 0; i < STARTS; i++) {
            double[] start = new double[low.length];
            for (int k = 0; k < low.length; k++) {
                start[k] = low[k] + (high[k] - low[k]) * (0.1 + 0.8 * r.nextDouble());
            }
            CMAESOptimizer optimiser = new CMAESOptimizer(
                    5000, 0, true, 0, 0, new Well19937c(i), false, new SimpleValueChecker(1e-10, 1e-10));
            best = Math.min(
                    best,
                    optimiser
                            .optimize(
                                    new MaxEval(200000),
                                    new ObjectiveFunction(distance),
                                    GoalType.MINIMIZE,
                                    new SimpleBounds(low, high),
                                    new InitialGuess(start),
                                    new CMAESOptimizer.Sigma(sigma),
                                    new CMAESOptimizer.PopulationSize(14))
                            .getValue());
        }
        return best;
    }

    private static double apart(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    private static Valve valve(SplittableRandom r, double azimuth) {
        return new Valve(
                16 + 6 * r.nextDouble(),
                0.5 + r.nextDouble(),
                13 + 3 * r.nextDouble(),
                azimuth + 20 * r.nextDouble(),
                -10 + 45 * r.nextDouble(),
                12 + 4 * r.nextDouble(),
                Examples.shut());
    }

    @Test
    void twoHeadsAreAsFarApartAsTheOptimiserFinds() {
        SplittableRandom r = new SplittableRandom(11);
        for (int n = 0; n < 12; n++) {
            Valve one = valve(r, 180);
            Valve two = valve(r, 0);
            TopEnd topEnd = new TopEnd(
                    60, Examples.CRANK, new Crown(new CrownForm.Flat(), 49, List.of()), 1, List.of(one, two));
            double swept = new Sweep().gaps(topEnd).valveToValve().get(0).gap().leastMm();
            if (swept < 0.2) {
                continue;
            }
            double found = least(
                    p -> apart(inHead(one, 1, p[0], p[1], p[2]), inHead(two, 1, p[3], p[4], p[5])),
                    new double[] {0, -4, 0, 0, -4, 0},
                    new double[] {1, 4, 1, 1, 4, 1},
                    r);
            assertThat(swept).as("case " + n).isCloseTo(found, within(0.002));
        }
    }

    @Test
    void aDomeIsAsFarFromAHeadAsTheOptimiserFinds() {
        SplittableRandom r = new SplittableRandom(12);
        for (int n = 0; n < 12; n++) {
            Valve valve = valve(r, 40);
            double height = 2 + 5 * r.nextDouble();
            double base = 20 + 4 * r.nextDouble();
            Crown crown = new Crown(new CrownForm.Dome(height, 2 * base), 2 * base, List.of());
            TopEnd topEnd = new TopEnd(60, new Crank(25, 92, 0, 0), crown, 1, List.of(valve));
            double swept = new Sweep().gaps(topEnd).valves().get(0).nearest().leastMm();
            double radius = (base * base + height * height) / (2 * height);
            double cap = Math.asin(base / radius);
            double found = least(
                    p -> apart(inHead(valve, 1, p[0], p[1], p[2]), new double[] {
                        radius * Math.sin(p[3]) * Math.cos(p[4]),
                        radius * Math.sin(p[3]) * Math.sin(p[4]),
                        height - radius + radius * Math.cos(p[3])
                    }),
                    new double[] {0, -4, 0, 0, -4},
                    new double[] {1, 4, 1, cap, 4},
                    r);
            assertThat(swept).as("case " + n).isCloseTo(found, within(0.002));
        }
    }
}
