package gudgeon.rebuild.find;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.mechanics.diagnose.FeltAngle;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.find.SyntheticEngine.Tight;
import gudgeon.rebuild.find.TightSuspect.Place;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding.Tried;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Engines with a known fault, felt by hand with noise: whether the chances given come true, and the fault is named first. */
class CalibrationTest {
    private static final int ENGINES = 600;
    private static final int TESTS = 2;
    private static final double DOUBT_DEG = 3;
    private static final double[] BOUNDS = {0.02, 0.2, 0.4, 0.6, 0.7, 0.9, 0.97, 1.0001};

    private final SplittableRandom random = new SplittableRandom(20260302);
    private final double[] expected = new double[BOUNDS.length];
    private final double[] spread = new double[BOUNDS.length];
    private final int[] right = new int[BOUNDS.length];
    private final int[] given = new int[BOUNDS.length];
    private int canTell;
    private int told;

    @org.junit.jupiter.api.Test
    void chancesComeTrueAndTheFaultIsNamedFirst() {
        Fact shallow = new Fact.Measured("piston", "", Map.of("pockets.exhaust.depth", "0.2"));
        for (Build build : List.of(Tarn.build(), Tarn.build(shallow))) {
            engines(build);
        }
        for (int bin = 0; bin < BOUNDS.length - 1; bin++) {
            // a binomial bound of three standard deviations, and half a case for the steps of counting
            double most = 3 * Math.sqrt(spread[bin]) + 0.5;
            assertThat(given[bin])
                    .as("chances from %.2f to %.2f", BOUNDS[bin], BOUNDS[bin + 1])
                    .isGreaterThan(20);
            assertThat((double) right[bin])
                    .as("right of %d chances from %.2f to %.2f", given[bin], BOUNDS[bin], BOUNDS[bin + 1])
                    .isBetween(expected[bin] - most, expected[bin] + most);
        }
        assertThat(canTell).isGreaterThan(100);
        assertThat(told)
                .as("named first of %d that the angles can tell", canTell)
                .isGreaterThanOrEqualTo((int) Math.ceil(0.9 * canTell));
    }

    private void engines(Build build) {
        TightSpot spot = TightSpot.of(build, Hunt.of(build, Tarn.HUNT).orElseThrow());
        List<Test> tests = new TightTests(new Reach(build), spot.suspects()).all();
        SyntheticEngine engine = new SyntheticEngine(AsMeasured.of(build).orElseThrow(), random);
        for (int i = 0; i < ENGINES; i++) {
            TightSuspect fault = drawn(spot.suspects());
            engine.with(fault).ifPresent(tight -> search(build, spot, tests, fault, tight));
        }
    }

    private TightSuspect drawn(List<TightSuspect> suspects) {
        double at = random.nextDouble()
                * suspects.stream().mapToDouble(one -> one.suspect().odds()).sum();
        for (TightSuspect one : suspects) {
            at -= one.suspect().odds();
            if (at < 0) {
                return one;
            }
        }
        return suspects.get(suspects.size() - 1);
    }

    /** Two angles are felt, and two tests made, those that the ranking asks for; their answers come as they come with the fault. */
    private void search(Build build, TightSpot spot, List<Test> tests, TightSuspect fault, Tight tight) {
        List<FeltAngle> felt = List.of(felt(true, tight), felt(false, tight));
        List<Told<Tried>> tried = new ArrayList<>();
        for (int made = 0; made <= TESTS; made++) {
            Ranking ranking = Ranking.of(
                    build, new TightSpot(spot.suspects(), felt, List.of(), new TestsMade(tests, tried)).asCase());
            count(ranking, fault);
            if (made == 0 && canTell(fault, spot.suspects())) {
                canTell++;
                told += first(ranking).equals(fault.suspect().id()) ? 1 : 0;
            }
            if (ranking.best().isEmpty()) {
                return;
            }
            Test test = ranking.best().get().test();
            tried.add(new Told<>(
                    made, Instant.EPOCH, new Tried(Tarn.HUNT, test.id(), answer(test, fault.suspect()), "")));
        }
    }

    private static String first(Ranking ranking) {
        return ranking.ranked().get(0).suspect().id();
    }

    private String answer(Test test, Suspect fault) {
        double at = random.nextDouble();
        for (Answer answer : test.answers()) {
            at -= test.chance(answer, fault);
            if (at < 0) {
                return answer.id();
            }
        }
        return test.answers().get(0).id();
    }

    /** An angle written down in whole degrees, off by doubt and slack, now and then by a slip. */
    private FeltAngle felt(boolean forward, Tight tight) {
        double doubt = Math.hypot(DOUBT_DEG, TightSpot.SLACK_DEG);
        double deg = (forward ? tight.forwardDeg() : tight.backwardDeg())
                + (tight.everyTurn() && random.nextBoolean() ? 360 : 0)
                + doubt * random.nextGaussian();
        if (random.nextDouble() < 0.02) {
            deg = random.nextDouble(720);
        }
        return FeltAngle.of(forward, Math.rint(deg), doubt, true);
    }

    /** Whether every other suspect worth a thought shows far from the fault, in one direction or the other. */
    private static boolean canTell(TightSuspect fault, List<TightSuspect> suspects) {
        return fault.located()
                && suspects.stream()
                        .filter(other -> !other.equals(fault) && other.located())
                        .filter(other -> other.suspect().odds() > 0.02)
                        .noneMatch(other -> near(fault, other, true) && near(fault, other, false));
    }

    private static boolean near(TightSuspect one, TightSuspect other, boolean forward) {
        Place here = one.place(forward).orElseThrow();
        Place there = other.place(forward).orElseThrow();
        double doubt =
                Math.hypot(Math.hypot(here.doubtDeg(), there.doubtDeg()), Math.hypot(DOUBT_DEG, TightSpot.SLACK_DEG));
        return Math.abs(Math.IEEEremainder(here.deg() - there.deg(), 720)) < 3 * doubt;
    }

    private void count(Ranking ranking, TightSuspect fault) {
        for (Ranked one : ranking.ranked()) {
            for (int bin = 0; bin < BOUNDS.length - 1; bin++) {
                if (one.chance() >= BOUNDS[bin] && one.chance() < BOUNDS[bin + 1]) {
                    given[bin]++;
                    expected[bin] += one.chance();
                    spread[bin] += one.chance() * (1 - one.chance());
                    right[bin] += one.suspect().id().equals(fault.suspect().id()) ? 1 : 0;
                }
            }
        }
    }
}
