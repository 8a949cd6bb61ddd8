package gudgeon.mechanics.clearance;

/**
 * Finds the least value of a function of one variable in a bracket, without derivatives and without allocating: golden section
 * with parabolic steps (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5). A function that jumps,
 * or is infinite on part of the bracket, is still closed in on, by golden section alone.
 */
abstract class Minimiser {
    private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;
    private static final int MOST_STEPS = 60;

    /** Where the least value was found. */
    double at;

    /** The function to be minimised. */
    abstract double value(double s);

    /**
     * The least value in a bracket.
     *
     * @param tolerance how closely its argument is wanted
     */
    final double least(double low, double high, double tolerance) {
        double a = low;
        double b = high;
        double x = a + GOLDEN * (b - a);
        double w = x;
        double v = x;
        double fx = value(x);
        double fw = fx;
        double fv = fx;
        double step = 0;
        double before = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double middle = (a + b) / 2;
            if (Math.abs(x - middle) <= 2 * tolerance - (b - a) / 2) {
                break;
            }
            double next = Double.NaN;
            if (Math.abs(before) > tolerance) {
                next = parabola(x, w, v, fx, fw, fv);
            }
            if (next > a + 2 * tolerance && next < b - 2 * tolerance && Math.abs(next - x) < Math.abs(before) / 2) {
                before = step;
                step = next - x;
            } else {
                before = x < middle ? b - x : a - x;
                step = GOLDEN * before;
            }
            double u = x + (Math.abs(step) >= tolerance ? step : Math.copySign(tolerance, step));
            double fu = value(u);
            if (fu <= fx) {
                if (u < x) {
                    b = x;
                } else {
                    a = x;
                }
                v = w;
                fv = fw;
                w = x;
                fw = fx;
                x = u;
                fx = fu;
            } else {
                if (u < x) {
                    a = u;
                } else {
                    b = u;
                }
                if (fu <= fw || w == x) {
                    v = w;
                    fv = fw;
                    w = u;
                    fw = fu;
                } else if (fu <= fv || v == x || v == w) {
                    v = u;
                    fv = fu;
                }
            }
        }
        at = x;
        return fx;
    }

    /** The vertex of the parabola through three points; NaN where there is none. */
    private static double parabola(double x, double w, double v, double fx, double fw, double fv) {
        double r = (x - w) * (fx - fv);
        double q = (x - v) * (fx - fw);
        double p = (x - v) * q - (x - w) * r;
        double denominator = 2 * (q - r);
        return x - p / denominator;
    }
}
