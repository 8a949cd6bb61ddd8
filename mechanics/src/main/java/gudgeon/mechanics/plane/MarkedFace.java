package gudgeon.mechanics.plane;

import java.util.ArrayList;
import java.util.List;

/** A face as it was marked in a picture, with the doubt that marking by hand brings. */
public final class MarkedFace {
    private final List<Match> matches;
    private final double markedWithin;
    private final Homography best;
    /** The perspectives in which one mark is moved, across and down, by its standard uncertainty. */
    private final List<Homography> moved;

    private MarkedFace(List<Match> matches, double markedWithin, Homography best) {
        this.matches = List.copyOf(matches);
        this.markedWithin = markedWithin;
        this.best = best;
        this.moved = new ArrayList<>();
        double u = standardPixels();
        for (int i = 0; i < matches.size(); i++) {
            moved.add(Homography.solved(with(i, u, 0)));
            moved.add(Homography.solved(with(i, 0, u)));
        }
    }

    /**
     * The face on which these points are known.
     *
     * @param matches see {@link Homography#of}
     * @param markedWithin by how many picture points a mark may be off, across and down each, more than 0
     * @throws NoPerspective see {@link Homography#of}
     * @throws IllegalArgumentException if the marks are not within more than 0
     */
    public static MarkedFace of(List<Match> matches, double markedWithin) throws NoPerspective {
        if (!(markedWithin > 0) || Double.isInfinite(markedWithin)) {
            throw new IllegalArgumentException("marks are within more than 0 picture points, got " + markedWithin);
        }
        return new MarkedFace(matches, markedWithin, Homography.of(matches));
    }

    /** A mark is as likely anywhere within its bounds: their half width over √3 (JCGM 100:2008, 4.3.7). */
    private double standardPixels() {
        return markedWithin / Math.sqrt(3);
    }

    private List<Match> with(int which, double across, double down) {
        List<Match> changed = new ArrayList<>(matches);
        changed.set(which, matches.get(which).moved(across, down));
        return changed;
    }

    /** Whether a point of the picture can be one of the face: not beyond its horizon. */
    public boolean sees(Pixel pixel) {
        return best.sameSide(pixel, matches.get(0).seen());
    }

    /**
     * Where a point of the picture is on the face, with its standard uncertainty: every mark's own share, found by moving it alone
     * (JCGM 100:2008, 5.1.3 note 2).
     *
     * @throws ArithmeticException if {@link #sees} says no
     */
    public Located at(Pixel pixel) {
        if (!sees(pixel)) {
            throw new ArithmeticException("no point of the face is seen there");
        }
        FacePoint point = best.at(pixel);
        double u = standardPixels();
        double sum = square(point, best.at(pixel.moved(u, 0))) + square(point, best.at(pixel.moved(0, u)));
        for (Homography one : moved) {
            sum += square(point, one.at(pixel));
        }
        return new Located(point, Math.sqrt(sum));
    }

    private static double square(FacePoint one, FacePoint other) {
        double distance = one.distanceMm(other);
        return distance * distance;
    }

    /** See {@link Homography#residualMm}. */
    public double residualMm() {
        return best.residualMm(matches);
    }

    /**
     * A point on the face.
     *
     * @param point where it is
     * @param standardUncertaintyMm how far off it may be, as a standard uncertainty of its place, in mm
     */
    public record Located(FacePoint point, double standardUncertaintyMm) {}
}
