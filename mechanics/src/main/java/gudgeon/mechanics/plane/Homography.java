package gudgeon.mechanics.plane;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The perspective between a picture and a flat face. Straight lines stay straight: a lens that bends them, as one of a wide angle
 * does towards the edge of its picture, is not allowed for, so that the face belongs into the middle of the picture.
 *
 * <p>Found by the direct linear transformation with both sets of points moved and scaled first; exact from four points, with more
 * by least squares. A photo of a joint is mapped from the four corners of a sheet and no more. Source: R. Hartley, A. Zisserman, <i>Multiple View Geometry in Computer Vision</i>, 2nd ed., Cambridge 2004,
 * algorithm 4.2.
 */
public final class Homography {
    /** A third point is in line with two where it lies nearer to their line than this share of the longest side. */
    private static final double IN_LINE = 0.02;

    private final double[][] toFace;

    private Homography(double[][] toFace) {
        this.toFace = toFace;
    }

    /**
     * The perspective in which the known points are seen where they were marked.
     *
     * @param matches four or more; the first four are corners in the order of going round, the same way on the face as seen from the
     *     camera
     * @throws NoPerspective if there are fewer, or the first four are crossed, mirrored, or three of them in line
     */
    public static Homography of(List<Match> matches) throws NoPerspective {
        Corners.check(matches);
        return solved(matches);
    }

    /** The same without a look at the corners, for marks that differ by little from some that were looked at. */
    static Homography solved(List<Match> matches) {
        Scaling seen = Scaling.of(matches.stream()
                .map(match -> new double[] {match.seen().across(), match.seen().down()})
                .toList());
        Scaling known = Scaling.of(matches.stream()
                .map(match -> new double[] {match.known().xMm(), match.known().yMm()})
                .toList());
        double[][] rows = new double[2 * matches.size()][];
        for (int i = 0; i < matches.size(); i++) {
            Match match = matches.get(i);
            double u = seen.x(match.seen().across());
            double v = seen.y(match.seen().down());
            double x = known.x(match.known().xMm());
            double y = known.y(match.known().yMm());
            rows[2 * i] = new double[] {u, v, 1, 0, 0, 0, -x * u, -x * v, -x};
            rows[2 * i + 1] = new double[] {0, 0, 0, u, v, 1, -y * u, -y * v, -y};
        }
        RealMatrix equations = new Array2DRowRealMatrix(rows, false);
        // the right singular vector of the least singular value of AᵀA, which is square also with four points only
        double[] h = new SingularValueDecomposition(equations.transposeMultiply(equations))
                .getV()
                .getColumn(8);
        RealMatrix scaled = new Array2DRowRealMatrix(
                new double[][] {{h[0], h[1], h[2]}, {h[3], h[4], h[5]}, {h[6], h[7], h[8]}}, false);
        return new Homography(
                known.undo().multiply(scaled).multiply(seen.apply()).getData());
    }

    /**
     * Where on the face a point of the picture is.
     *
     * @throws ArithmeticException if it lies on or beyond the horizon, where no point of the face is seen
     */
    public FacePoint at(Pixel pixel) {
        double w = row(2, pixel);
        double x = row(0, pixel) / w;
        double y = row(1, pixel) / w;
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new ArithmeticException("no point of the face is seen there");
        }
        return new FacePoint(x, y);
    }

    private double row(int row, Pixel pixel) {
        return toFace[row][0] * pixel.across() + toFace[row][1] * pixel.down() + toFace[row][2];
    }

    /** Whether a point of the picture is on the same side of the horizon as another, so that both can be of the face. */
    public boolean sameSide(Pixel one, Pixel other) {
        return row(2, one) * row(2, other) > 0;
    }

    /** Root of the mean square of how far the known points are from where the picture has them, in mm; 0 from four points. */
    public double residualMm(List<Match> matches) {
        double sum = 0;
        for (Match match : matches) {
            double miss = at(match.seen()).distanceMm(match.known());
            sum += miss * miss;
        }
        return Math.sqrt(sum / matches.size());
    }

    /** Moves points so that their middle is 0 and scales them so that they are √2 away from it on average. */
    private record Scaling(double middleX, double middleY, double factor) {
        static Scaling of(List<double[]> points) {
            double x = points.stream().mapToDouble(point -> point[0]).average().orElse(0);
            double y = points.stream().mapToDouble(point -> point[1]).average().orElse(0);
            double mean = points.stream()
                    .mapToDouble(point -> Math.hypot(point[0] - x, point[1] - y))
                    .average()
                    .orElse(1);
            return new Scaling(x, y, Math.sqrt(2) / mean);
        }

        double x(double value) {
            return (value - middleX) * factor;
        }

        double y(double value) {
            return (value - middleY) * factor;
        }

        RealMatrix apply() {
            return new Array2DRowRealMatrix(
                    new double[][] {{factor, 0, -factor * middleX}, {0, factor, -factor * middleY}, {0, 0, 1}}, false);
        }

        RealMatrix undo() {
            return new Array2DRowRealMatrix(
                    new double[][] {{1 / factor, 0, middleX}, {0, 1 / factor, middleY}, {0, 0, 1}}, false);
        }
    }

    /** Looks at the first four marks: seen and known, each must be a quadrangle without a dent, gone round alike. */
    private static final class Corners {
        static void check(List<Match> matches) throws NoPerspective {
            if (matches.size() < 4) {
                throw new NoPerspective(NoPerspective.Kind.TOO_FEW);
            }
            List<Match> corners = matches.subList(0, 4);
            int seen = turn(corners.stream()
                    .map(match ->
                            new double[] {match.seen().across(), -match.seen().down()})
                    .toList());
            int known = turn(corners.stream()
                    .map(match ->
                            new double[] {match.known().xMm(), match.known().yMm()})
                    .toList());
            if (seen != known) {
                throw new NoPerspective(NoPerspective.Kind.MIRRORED);
            }
        }

        /** 1 for a quadrangle gone round to the left, -1 for one to the right. */
        private static int turn(List<double[]> corners) throws NoPerspective {
            double longest = 0;
            for (double[] from : corners) {
                for (double[] to : corners) {
                    longest = Math.max(longest, Math.hypot(to[0] - from[0], to[1] - from[1]));
                }
            }
            int left = 0;
            for (int i = 0; i < 4; i++) {
                double[] a = corners.get(i);
                double[] b = corners.get((i + 1) % 4);
                double[] c = corners.get((i + 2) % 4);
                double twiceArea = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
                double away = Math.abs(twiceArea) / Math.max(Math.hypot(c[0] - a[0], c[1] - a[1]), IN_LINE * longest);
                if (!(away > IN_LINE * longest)) {
                    throw new NoPerspective(NoPerspective.Kind.IN_LINE);
                }
                left += twiceArea > 0 ? 1 : 0;
            }
            if (left != 0 && left != 4) {
                throw new NoPerspective(NoPerspective.Kind.CROSSED);
            }
            return left == 4 ? 1 : -1;
        }
    }
}
