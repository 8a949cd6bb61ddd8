package gudgeon.rebuild.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.bore.CleansUp;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class BorePlanTest {
    private static BorePlan plan(Fact... facts) {
        return BorePlan.of(Worn.build(facts)).orElseThrow();
    }

    private static List<CleansUp> cleansUp(BorePlan plan) {
        return plan.oversizes().stream().map(Oversize::cleansUp).toList();
    }

    @Test
    void anUnmeasuredBoreIsToBeMeasured() {
        assertThat(plan().sentence())
                .isEqualTo("The bore has not been measured on this barrel as it is now; measure it first.");
        assertThat(plan().lines()).hasSize(1);
    }

    @Test
    void aBookWithoutPistonClearanceHasNoPlan() {
        String without = Worn.BOOK.replace("as: clearance, of: [bore, piston-skirt]", "as: ovality, of: [bore]");
        assertThat(BorePlan.of(Worn.build(without))).isEmpty();
    }

    /** Wear of 0.12 mm across and 0.05 along: 50.22 is the least, 50.34 on the old centre; 0.25 over does on a shifted one. */
    @Test
    void theSmallestOversizeThatIsProvedIsChosen() {
        BorePlan plan = plan(Worn.bore(50.06, 50.13, 50.015, 50.015));
        assertThat(cleansUp(plan)).containsExactly(CleansUp.UNPROVEN, CleansUp.ON_ANY_CENTRE, CleansUp.ON_ANY_CENTRE);
        assertThat(plan.sentence()).contains("+0.50 mm").contains("50.500 mm").contains("in hand and measured before");
        assertThat(plan.ask()).isEmpty();
        assertThat(plan.unproven()).anyMatch(line -> line.startsWith("No new piston is in hand"));
        // with a little less wear the doubt no longer reaches 50.25
        BorePlan less = plan(Worn.bore(50.04, 50.10, 50.015, 50.015));
        assertThat(cleansUp(less))
                .containsExactly(CleansUp.ON_A_SHIFTED_CENTRE, CleansUp.ON_ANY_CENTRE, CleansUp.ON_ANY_CENTRE);
        assertThat(less.sentence()).contains("+0.25 mm");
    }

    @Test
    void aScoreIsCounted() {
        BorePlan plan = plan(Worn.bore(50.04, 50.10, 50.015, 50.015, Worn.reading("score-depth", "", "", 0.10)));
        assertThat(cleansUp(plan)).startsWith(CleansUp.NO, CleansUp.ON_A_SHIFTED_CENTRE);
        assertThat(plan.unproven()).noneMatch(line -> line.contains("scores"));
        assertThat(plan(Worn.bore(50.04, 50.10, 50.015, 50.015)).unproven()).anyMatch(line -> line.contains("scores"));
    }

    @Test
    void whenNoneCleansUpASleeveIsLeft() {
        BorePlan plan = plan(Worn.bore(50.5, 51.0, 50.015, 50.015));
        assertThat(cleansUp(plan)).containsOnly(CleansUp.NO);
        assertThat(plan.sentence()).contains("a sleeve or another barrel");
        assertThat(plan.cautions()).isEqualTo(BorePlan.SLEEVE);
        assertThat(plan.oversizes().get(2).sentence()).contains("51.100 mm").contains("0.100 mm more");
    }

    /** Skirt 50.46 with the gauge's 2 u of 0.0065: 50.4865 to 50.5035, inwards to 50.490 and 50.500. */
    @Test
    void withThePistonInHandTheSizeToAskForIsItsOwn() {
        BorePlan plan = plan(Worn.bore(
                50.06, 50.13, 50.015, 50.015, Worn.piston("copy"), Worn.reading("piston-skirt", "copy", "", 50.46)));
        assertThat(plan.sentence())
                .isEqualTo(
                        "Bore and hone to 50.490 mm +0.010 / -0, measured at 20 °C, for the piston handed over with it (skirt 50.460 mm).");
        assertThat(plan.ask().orElseThrow().bored()).contains("50.470 mm");
        assertThat(plan.oversizes().get(0).name()).isEqualTo("'copy', in hand");
        assertThat(plan.lines())
                .contains(plan.sentence(), plan.ask().orElseThrow().bored());
    }

    @Test
    void aPistonThatDoesNotCleanUpIsNotAskedFor() {
        BorePlan plan = plan(Worn.bore(
                50.06, 50.20, 50.015, 50.015, Worn.piston("copy"), Worn.reading("piston-skirt", "copy", "", 50.21)));
        assertThat(plan.ask()).isEmpty();
        assertThat(plan.oversizes().get(0).cleansUp()).isEqualTo(CleansUp.NO);
        assertThat(plan.sentence()).contains("+0.50 mm");
    }

    @Test
    void pistonsOrderedAndOfferedAreInTheTable() {
        BorePlan plan =
                plan(Worn.bore(50.04, 50.10, 50.015, 50.015, Worn.ordered("50.23 mm"), Worn.offered("50.46 mm")));
        assertThat(plan.oversizes())
                .extracting(Oversize::name)
                .containsExactly("'big', ordered", "offered by a breaker", "+0.25 mm", "+0.50 mm", "+1.00 mm");
        assertThat(plan.oversizes().get(0).finishedMm()).isEqualTo(50.25, within(1e-9));
    }

    @Test
    void aBoreThatWasBoredBeforeIsWornFromThere() {
        BorePlan plan = plan(Worn.bore(50.30, 50.35, 50.262, 50.262));
        assertThat(plan.found()).anyMatch(line -> line.startsWith("It was bored to 0.250 mm over before"));
        assertThat(plan.oversizes()).extracting(Oversize::name).containsExactly("+0.50 mm", "+1.00 mm");
    }

    @Test
    void withinItsLimitsItNeedNotBeBored() {
        assertThat(plan(Worn.bore(50.02, 50.04, 50.01, 50.01)).found())
                .anyMatch(line -> line.contains("wear alone does not ask for boring"));
        assertThat(plan(Worn.bore(50.02, 50.07, 50.01, 50.01)).found())
                .noneMatch(line -> line.contains("wear alone does not ask for boring"));
    }

    @Test
    void whatWasReadBeforeTheMachinistNoLongerCounts() {
        Fact[] facts = Worn.bore(50.06, 50.13, 50.015, 50.015, Worn.sent(), Worn.back());
        assertThat(plan(facts).sentence()).contains("has not been measured on this barrel as it is now");
        BorePlan finished = plan(Worn.bore(
                50.06,
                50.13,
                50.015,
                50.015,
                Worn.piston("copy"),
                Worn.reading("piston-skirt", "copy", "", 50.46),
                Worn.sent(),
                Worn.back(),
                Worn.reading("bore", "", "top, along the pin", 50.495)));
        assertThat(finished.sentence())
                .isEqualTo(
                        "The bore leaves the piston 'copy' a clearance of 0.035 ± 0.009 mm, where 0.02 mm to 0.05 mm is wanted.");
    }

    @Test
    void anOrdinaryRingGapIsToldOfTheFinishedBore() {
        BorePlan plan = plan(Worn.bore(50.04, 50.10, 50.015, 50.015));
        assertThat(plan.after()).anyMatch(line -> line.contains("0.18 to 0.23 mm in a bore of 50.250 mm"));
    }

    /** A ring that gaps 0.20 mm in 50.015 mm gaps pi times 0.235 mm more in 50.250 mm. */
    @Test
    void anOldRingGapsWiderInALargerBore() {
        BorePlan plan = plan(Worn.bore(50.04, 50.09, 50.015, 50.015, Worn.reading("ring-gap-top", "", "", 0.20)));
        assertThat(plan.after())
                .anyMatch(
                        line -> line.startsWith("The gap of the top ring will be 0.94 ±") && line.contains("too wide"));
    }

    /** 3.50 mm around 50.015, bored to 50.250 on a centre moved by (50.09 - 50.0075) / 2: 3.50 - 0.1175 - 0.041. */
    @Test
    void theWallLeftIsJudged() {
        String walled = Worn.BOOK + "  - {id: barrel-wall, name: wall of the barrel, of: barrel, at-least: 3.4}\n";
        Fact[] facts = Worn.bore(50.04, 50.09, 50.015, 50.015, Worn.reading("barrel-wall", "", "", 3.50));
        assertThat(BorePlan.of(Worn.build(walled, facts)).orElseThrow().after())
                .contains("The wall of the barrel will be 3.34 mm at its thinnest, outside at least 3.4 mm.");
    }
}
