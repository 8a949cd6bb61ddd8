package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.crank.Crank;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class ChamberProperties {
    private static final double ACCURACY_CM3 = 1e-3;
    private static final RingGroove GROOVE = new RingGroove(4.5, 2.2);

    @Provide
    Arbitrary<Crown> crowns() {
        Arbitrary<CrownForm> forms = Arbitraries.of(Examples.FLAT, Examples.DOME, Examples.DISH);
        Arbitrary<Pocket> pocket = Combinators.combine(
                        Arbitraries.doubles().between(16, 30),
                        Arbitraries.doubles().between(-1, 5),
                        Arbitraries.doubles().between(0, 16),
                        Arbitraries.doubles().between(0, 360),
                        Arbitraries.doubles().between(-15, 35))
                .as(Pocket::new);
        return Combinators.combine(forms, pocket.list().ofMinSize(1).ofMaxSize(3))
                .as((form, pockets) -> new Crown(form, 49.6, pockets));
    }

    private static double removed(Crown crown) {
        return CrownVolumes.of(crown).pocketsCm3();
    }

    private static Crown withFirst(Crown crown, Pocket pocket) {
        List<Pocket> pockets = new ArrayList<>(crown.pockets());
        pockets.set(0, pocket);
        return new Crown(crown.form(), crown.landDiameterMm(), pockets);
    }

    private static Crown rotated(Crown crown, double by) {
        return new Crown(
                crown.form(),
                crown.landDiameterMm(),
                crown.pockets().stream()
                        .map(p ->
                                new Pocket(p.diameterMm(), p.depthMm(), p.offsetMm(), p.azimuthDeg() + by, p.tiltDeg()))
                        .toList());
    }

    @Property(tries = 60)
    void turningAllAzimuthsTogetherChangesNothing(
            @ForAll("crowns") Crown crown, @ForAll @DoubleRange(min = 0, max = 360) double by) {
        Crown turned = rotated(crown, by);
        assertThat(removed(turned)).isCloseTo(removed(crown), within(ACCURACY_CM3));
        for (int i = 0; i < crown.pockets().size(); i++) {
            assertThat(MetalLeft.toEdge(turned, i).mm())
                    .isCloseTo(MetalLeft.toEdge(crown, i).mm(), within(1e-9));
            assertThat(MetalLeft.toGroove(turned, i, GROOVE).mm())
                    .isCloseTo(MetalLeft.toGroove(crown, i, GROOVE).mm(), within(1e-9));
            assertThat(MetalLeft.toUnderside(turned, i, 5).mm())
                    .isCloseTo(MetalLeft.toUnderside(crown, i, 5).mm(), within(1e-9));
        }
    }

    @Property(tries = 60)
    void aDeeperOrWiderPocketNeverRemovesLessNorLeavesMore(
            @ForAll("crowns") Crown crown, @ForAll @DoubleRange(min = 0, max = 2) double more) {
        Pocket p = crown.pockets().get(0);
        Pocket deeper = new Pocket(p.diameterMm(), p.depthMm() + more, p.offsetMm(), p.azimuthDeg(), p.tiltDeg());
        Pocket wider = new Pocket(p.diameterMm() + more, p.depthMm(), p.offsetMm(), p.azimuthDeg(), p.tiltDeg());
        for (Pocket larger : List.of(deeper, wider)) {
            Crown after = withFirst(crown, larger);
            assertThat(removed(after)).isGreaterThanOrEqualTo(removed(crown) - ACCURACY_CM3);
            assertThat(MetalLeft.toGroove(after, 0, GROOVE).mm())
                    .isLessThanOrEqualTo(MetalLeft.toGroove(crown, 0, GROOVE).mm() + 1e-9);
            if (MetalLeft.toEdge(crown, 0).zMm() <= 0) {
                assertThat(MetalLeft.toEdge(after, 0).mm())
                        .isLessThanOrEqualTo(MetalLeft.toEdge(crown, 0).mm() + 1e-9);
            }
            assertThat(MetalLeft.toUnderside(after, 0, 5).mm())
                    .isLessThanOrEqualTo(MetalLeft.toUnderside(crown, 0, 5).mm() + 1e-9);
        }
    }

    @Property(tries = 60)
    void theUnionIsNoMoreThanTheSumAndInNoOrder(@ForAll("crowns") Crown crown) {
        double sum = crown.pockets().stream()
                .mapToDouble(p -> removed(new Crown(crown.form(), crown.landDiameterMm(), List.of(p))))
                .sum();
        double union = removed(crown);
        assertThat(union).isBetween(0.0, sum + ACCURACY_CM3);
        List<Pocket> reversed = new ArrayList<>(crown.pockets());
        Collections.reverse(reversed);
        assertThat(removed(new Crown(crown.form(), crown.landDiameterMm(), reversed)))
                .isCloseTo(union, within(ACCURACY_CM3));
    }

    @Property
    void aThickerGasketLowersTheRatio(
            @ForAll @DoubleRange(min = 0, max = 3) double gasket,
            @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
        assertThat(ratio(gasket + more)).isLessThan(ratio(gasket));
    }

    private static double ratio(double gasketMm) {
        return new Compression(50, new Crank(25, 92, 0.5, -0.2), new CrownVolumes(3.3, 0, 1), 9.8, gasketMm, 51)
                .staticRatio();
    }

    @Property
    void pressureFallsWithAltitudeAndRisesWithTheRatio(
            @ForAll @DoubleRange(min = -500, max = 5000) double altitude,
            @ForAll @DoubleRange(min = 1.5, max = 14) double ratio) {
        CrankingPressure here = CrankingPressure.range(ratio, altitude);
        assertThat(here.lowKPa()).isBetween(0.0, here.highKPa());
        assertThat(CrankingPressure.range(ratio, altitude + 100).highKPa()).isLessThan(here.highKPa());
        assertThat(CrankingPressure.range(ratio + 0.1, altitude).lowKPa()).isGreaterThan(here.lowKPa());
    }
}
