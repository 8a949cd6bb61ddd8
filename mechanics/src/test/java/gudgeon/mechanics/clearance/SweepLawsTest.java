package gudgeon.mechanics.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.crank.Crank;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class SweepLawsTest {
    private static final double TOLERANCE = 0.001;

    /** A random but plausible top end: any crown, up to two pockets, one leaning valve. */
    static TopEnd random(long seed) {
        SplittableRandom r = new SplittableRandom(seed);
        CrownForm form = switch (r.nextInt(3)) {
            case 0 -> new CrownForm.Flat();
            case 1 -> new CrownForm.Dome(1 + 5 * r.nextDouble(), 30 + 18 * r.nextDouble());
            default -> new CrownForm.Dish(1 + 3 * r.nextDouble(), 20 + 25 * r.nextDouble());
        };
        List<Pocket> pockets = new ArrayList<>();
        for (int i = r.nextInt(3); i > 0; i--) {
            pockets.add(new Pocket(
                    18 + 12 * r.nextDouble(),
                    4 * r.nextDouble(),
                    15 * r.nextDouble(),
                    360 * r.nextDouble(),
                    -10 + 40 * r.nextDouble()));
        }
        Valve valve = new Valve(
                15 + 12 * r.nextDouble(),
                0.3 + 1.5 * r.nextDouble(),
                14 * r.nextDouble(),
                360 * r.nextDouble(),
                -5 + 35 * r.nextDouble(),
                1 + 6 * r.nextDouble(),
                Examples.lift(240 + 240 * r.nextDouble(), 250, 3 + 5 * r.nextDouble()));
        return new TopEnd(50, Examples.CRANK, new Crown(form, 49.6, pockets), 1, List.of(valve));
    }

    private static TopEnd with(TopEnd t, Crown crown, List<Valve> valves) {
        return new TopEnd(t.boreDiameterMm(), t.crank(), crown, t.gasketMm(), valves);
    }

    private static Valve azimuth(Valve v, double azimuthDeg) {
        return new Valve(
                v.headDiameterMm(), v.marginMm(), v.offsetMm(), azimuthDeg, v.tiltDeg(), v.recessMm(), v.lift());
    }

    private static void assertSame(Gaps one, Gaps other) {
        for (int v = 0; v < one.valves().size(); v++) {
            ValveGaps a = one.valves().get(v);
            ValveGaps b = other.valves().get(v);
            assertThat(a.bore().leastMm()).isCloseTo(b.bore().leastMm(), within(TOLERANCE));
            assertThat(a.valve().leastMm()).isCloseTo(b.valve().leastMm(), within(TOLERANCE));
            assertThat(a.nearest().leastMm()).isCloseTo(b.nearest().leastMm(), within(TOLERANCE));
            assertThat(a.wall().leastMm()).isCloseTo(b.wall().leastMm(), within(TOLERANCE));
            // where a part is far out, its edge may dip in or out by a hair between two samples, in one image only
            if (a.side().isPresent()
                    && b.side().isPresent()
                    && Math.abs(a.side().get().leastMm()) < 3) {
                assertThat(a.side().get().leastMm())
                        .as("side gap")
                        .isCloseTo(b.side().get().leastMm(), within(0.01));
            }
        }
    }

    @Property(tries = 60, seed = "7331")
    void turningEverythingAboutTheBoreChangesNothing(@ForAll long seed) {
        TopEnd topEnd = random(seed);
        double by = 360 * new SplittableRandom(seed + 1).nextDouble();
        List<Pocket> turned = topEnd.crown().pockets().stream()
                .map(p -> new Pocket(p.diameterMm(), p.depthMm(), p.offsetMm(), p.azimuthDeg() + by, p.tiltDeg()))
                .toList();
        List<Valve> valves = topEnd.valves().stream()
                .map(v -> azimuth(v, v.azimuthDeg() + by))
                .toList();
        Crown crown = new Crown(topEnd.crown().form(), 49.6, turned);
        assertSame(new Sweep().gaps(topEnd), new Sweep().gaps(with(topEnd, crown, valves)));
    }

    @Property(tries = 60, seed = "7331")
    void aMirrorImageHasTheSameGaps(@ForAll long seed) {
        TopEnd topEnd = random(seed);
        List<Pocket> mirrored = topEnd.crown().pockets().stream()
                .map(p -> new Pocket(p.diameterMm(), p.depthMm(), p.offsetMm(), -p.azimuthDeg(), p.tiltDeg()))
                .toList();
        List<Valve> valves =
                topEnd.valves().stream().map(v -> azimuth(v, -v.azimuthDeg())).toList();
        Crown crown = new Crown(topEnd.crown().form(), 49.6, mirrored);
        assertSame(new Sweep().gaps(topEnd), new Sweep().gaps(with(topEnd, crown, valves)));
    }

    @Property(tries = 60, seed = "7331")
    void aDeeperPocketNeverLessensABoreGap(@ForAll long seed) {
        TopEnd topEnd = random(seed);
        List<Pocket> deeper = topEnd.crown().pockets().stream()
                .map(p -> new Pocket(p.diameterMm(), p.depthMm() + 0.5, p.offsetMm(), p.azimuthDeg(), p.tiltDeg()))
                .toList();
        TopEnd cut = with(topEnd, new Crown(topEnd.crown().form(), 49.6, deeper), topEnd.valves());
        double before = new Sweep().gaps(topEnd).valves().get(0).bore().leastMm();
        double after = new Sweep().gaps(cut).valves().get(0).bore().leastMm();
        assertThat(after).isGreaterThan(before - TOLERANCE);
    }

    @Property(tries = 60, seed = "7331")
    void aThickerGasketAddsItselfToTheBoreGap(@ForAll long seed) {
        TopEnd t = random(seed);
        TopEnd thicker = new TopEnd(t.boreDiameterMm(), t.crank(), t.crown(), t.gasketMm() + 0.3, t.valves());
        double before = new Sweep().gaps(t).valves().get(0).bore().leastMm();
        double after = new Sweep().gaps(thicker).valves().get(0).bore().leastMm();
        // a rim that passes under an overhanging lip may lose a little; otherwise the gap grows by the gasket
        if (before > 0) {
            assertThat(after).isCloseTo(before + 0.3, within(TOLERANCE));
        }
    }

    @Property(tries = 40, seed = "7331")
    void noGapIsLeastAnywhereButWhereTheSweepSays(@ForAll long seed) {
        TopEnd topEnd = random(seed);
        Gaps gaps = new Sweep().gaps(topEnd);
        Curves curves = new Sweep().curves(topEnd, 1);
        for (int i = 0; i < curves.thetaDeg().length; i++) {
            ValveGaps valve = gaps.valves().get(0);
            if (!Double.isNaN(curves.boreMm()[0][i])) {
                assertThat(curves.boreMm()[0][i]).isGreaterThan(valve.bore().leastMm() - TOLERANCE);
            }
            assertThat(curves.nearestMm()[0][i]).isGreaterThan(valve.nearest().leastMm() - TOLERANCE);
            assertThat(curves.deckMm()[i]).isGreaterThan(gaps.deck().leastMm() - 1e-9);
        }
    }

    @Property(tries = 60, seed = "7331")
    void whatClearsTheBoreAndTheStemClearsAltogether(@ForAll long seed) {
        ValveGaps gaps = new Sweep().gaps(random(seed)).valves().get(0);
        assertThat(gaps.nearest().leastMm() < 0).isEqualTo(gaps.bore().leastMm() < 0);
        assertThat(gaps.nearest().leastMm())
                .isLessThan(
                        Math.max(0, Math.min(gaps.bore().leastMm(), gaps.valve().leastMm())) + TOLERANCE);
    }

    @Property(tries = 25, seed = "7331")
    void followingFindsWhatASweepFinds(@ForAll long seed) {
        TopEnd known = random(seed);
        SplittableRandom r = new SplittableRandom(seed + 2);
        for (CrownGap kind : new CrownGap[] {CrownGap.BORE, CrownGap.VALVE, CrownGap.NEAREST}) {
            Follower follower = new Follower(known, 0, kind, 0.5);
            for (int i = 0; i < 4; i++) {
                TopEnd drawn = nudged(known, r);
                ValveGaps gaps = new Sweep().gaps(drawn).valves().get(0);
                double swept = switch (kind) {
                    case BORE -> gaps.bore().leastMm();
                    case VALVE -> gaps.valve().leastMm();
                    default -> gaps.nearest().leastMm();
                };
                // a top end that overlaps jumps between faces; what is asked there is that it is seen to overlap
                if (swept > 0) {
                    assertThat(follower.leastMm(drawn)).isCloseTo(swept, within(0.004));
                } else {
                    assertThat(follower.leastMm(drawn)).isLessThan(0.004);
                }
            }
        }
    }

    /** The same top end measured again, with errors of some hundredths of a millimetre. */
    private static TopEnd nudged(TopEnd t, SplittableRandom r) {
        Valve v = t.valves().get(0);
        Valve valve = new Valve(
                v.headDiameterMm() + error(r),
                v.marginMm(),
                v.offsetMm() + error(r),
                v.azimuthDeg(),
                v.tiltDeg() + error(r),
                v.recessMm() + error(r),
                v.lift());
        List<Pocket> pockets = t.crown().pockets().stream()
                .map(p -> new Pocket(
                        p.diameterMm() + error(r),
                        p.depthMm() + error(r),
                        p.offsetMm() + error(r),
                        p.azimuthDeg(),
                        p.tiltDeg()))
                .toList();
        Crank crank = new Crank(25, 92, 0.5, t.crank().protrusionMm() + error(r));
        return new TopEnd(50, crank, new Crown(t.crown().form(), 49.6, pockets), t.gasketMm(), List.of(valve));
    }

    private static double error(SplittableRandom r) {
        return 0.04 * (r.nextDouble() - 0.5);
    }
}
