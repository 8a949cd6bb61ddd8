package gudgeon.mechanics.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A camera whose place is known looks at a sheet, so that every millimetre is known beforehand. */
class HomographyTest {
    private static final List<FacePoint> A4 =
            List.of(new FacePoint(0, 297), new FacePoint(210, 297), new FacePoint(210, 0), new FacePoint(0, 0));

    /** A pinhole camera above the face, tipped and turned; angles in degrees, distance in mm, focal length in picture points. */
    private record Camera(double tip, double turn, double distance, double focal) {
        Pixel sees(FacePoint point) {
            double a = Math.toRadians(turn);
            double x = Math.cos(a) * (point.xMm() - 105) - Math.sin(a) * (point.yMm() - 148);
            double y = Math.sin(a) * (point.xMm() - 105) + Math.cos(a) * (point.yMm() - 148);
            double b = Math.toRadians(tip);
            double up = Math.cos(b) * y;
            double away = distance + Math.sin(b) * y;
            return new Pixel(1600 + focal * x / away, 1200 - focal * up / away);
        }

        List<Match> marks(List<FacePoint> points) {
            return points.stream().map(point -> new Match(sees(point), point)).toList();
        }
    }

    private static Match mark(double across, double down, int corner) {
        return new Match(new Pixel(across, down), A4.get(corner));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 600, 3000", "25, 10, 500, 2600", "45, -70, 700, 3200", "60, 180, 900, 2800", "35, 90, 420, 2400"
    })
    void fourCornersGiveEveryPointOfTheFaceExactly(double tip, double turn, double distance, double focal)
            throws NoPerspective {
        Camera camera = new Camera(tip, turn, distance, focal);
        Homography found = Homography.of(camera.marks(A4));
        for (double x = -80; x <= 290; x += 37) {
            for (double y = -60; y <= 330; y += 39) {
                FacePoint point = new FacePoint(x, y);
                assertThat(found.at(camera.sees(point)).distanceMm(point)).isLessThan(1e-6);
            }
        }
        assertThat(found.residualMm(camera.marks(A4))).isCloseTo(0, within(1e-7));
    }

    @Test
    void moreMarksThanFourAverageOutWhatTheHandMisses() throws NoPerspective {
        Camera camera = new Camera(30, 20, 600, 3000);
        List<FacePoint> more = new ArrayList<>(A4);
        for (double x = 0; x <= 210; x += 30) {
            for (double y = 0; y <= 297; y += 33) {
                more.add(new FacePoint(x, y));
            }
        }
        FacePoint hole = new FacePoint(60, 200);
        Random random = new Random(7);
        double four = 0;
        double all = 0;
        for (int i = 0; i < 60; i++) {
            List<Match> marks = shaken(camera.marks(more), random);
            four += Homography.of(marks.subList(0, 4)).at(camera.sees(hole)).distanceMm(hole);
            all += Homography.of(marks).at(camera.sees(hole)).distanceMm(hole);
            assertThat(Homography.of(marks).residualMm(marks)).isBetween(0.2, 1.5);
        }
        assertThat(all).isLessThan(four / 2);
    }

    private static List<Match> shaken(List<Match> marks, Random random) {
        return marks.stream()
                .map(mark -> mark.moved(random.nextDouble(-5, 5), random.nextDouble(-5, 5)))
                .toList();
    }

    @Test
    void theDoubtOfAPlaceIsTheScatterThatMarkingByHandHas() throws NoPerspective {
        Camera camera = new Camera(35, 15, 600, 3000);
        FacePoint hole = new FacePoint(260, 150);
        Random random = new Random(3);
        double sum = 0;
        int tries = 3000;
        for (int i = 0; i < tries; i++) {
            Homography found = Homography.of(shaken(camera.marks(A4), random));
            Pixel touched = camera.sees(hole).moved(random.nextDouble(-5, 5), random.nextDouble(-5, 5));
            double miss = found.at(touched).distanceMm(hole);
            sum += miss * miss;
        }
        MarkedFace.Located said = MarkedFace.of(camera.marks(A4), 5).at(camera.sees(hole));
        assertThat(said.point().distanceMm(hole)).isLessThan(1e-6);
        assertThat(said.standardUncertaintyMm())
                .isCloseTo(Math.sqrt(sum / tries), within(0.06 * said.standardUncertaintyMm()));
    }

    @Test
    void cornersThatNoCameraSeesSoAreRefused() {
        assertRefused(
                List.of(mark(0, 0, 0), mark(100, 0, 1), mark(0, 140, 3), mark(100, 140, 2)),
                NoPerspective.Kind.CROSSED);
        assertRefused(
                List.of(mark(0, 0, 0), mark(100, 0, 1), mark(200, 1, 2), mark(0, 140, 3)), NoPerspective.Kind.IN_LINE);
        assertRefused(
                List.of(mark(0, 0, 0), mark(0, 0, 1), mark(100, 140, 2), mark(0, 140, 3)), NoPerspective.Kind.IN_LINE);
        assertRefused(
                List.of(mark(100, 0, 0), mark(0, 0, 1), mark(0, 140, 2), mark(100, 140, 3)),
                NoPerspective.Kind.MIRRORED);
        assertRefused(List.of(mark(0, 0, 0), mark(100, 0, 1), mark(100, 140, 2)), NoPerspective.Kind.TOO_FEW);
        assertRefused(
                List.of(mark(0, 0, 0), mark(100, 0, 1), mark(20, 20, 2), mark(0, 100, 3)), NoPerspective.Kind.CROSSED);
    }

    private static void assertRefused(List<Match> marks, NoPerspective.Kind kind) {
        assertThatThrownBy(() -> Homography.of(marks))
                .isInstanceOfSatisfying(
                        NoPerspective.class, fault -> assertThat(fault.kind()).isEqualTo(kind));
    }

    @Test
    void beyondTheHorizonThereIsNoFace() throws NoPerspective {
        Camera camera = new Camera(60, 0, 600, 2800);
        MarkedFace face = MarkedFace.of(camera.marks(A4), 3);
        Pixel sky = new Pixel(1600, 1200 - 2800 / Math.tan(Math.toRadians(60)) - 200);
        assertThat(face.sees(camera.sees(new FacePoint(100, 280)))).isTrue();
        assertThat(face.sees(sky)).isFalse();
        assertThatThrownBy(() -> face.at(sky)).isInstanceOf(ArithmeticException.class);
    }
}
