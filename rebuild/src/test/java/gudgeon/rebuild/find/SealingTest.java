package gudgeon.rebuild.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.chamber.CrankingPressure;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.LeakPath;
import gudgeon.rebuild.journal.Trouble;
import gudgeon.rebuild.journal.Way;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SealingTest {
    private static final EngineBook TARN = tarn();

    private static EngineBook tarn() {
        try {
            BookReading reading =
                    new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
            return ((BookReading.Read) reading).book();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Build build(Trouble trouble, Found found, Fact... facts) {
        List<Fact> all = new ArrayList<>(List.of(new Started("Tarn 98", "", found), new HuntOpened("h", trouble, "")));
        all.addAll(Arrays.asList(facts));
        return Build.of(TARN).asIf(all);
    }

    private static Ranking ranking(Build build) {
        return Ranking.of(build, Hunt.of(build, "h").orElseThrow());
    }

    private static Ranking sealing(Fact... facts) {
        return ranking(build(Trouble.POOR_SEALING, Found.TOGETHER, facts));
    }

    private static String first(Ranking ranking) {
        return ranking.ranked().get(0).suspect().id();
    }

    private static double chance(Ranking ranking, String suspect) {
        return ranking.ranked().stream()
                .filter(one -> one.suspect().id().equals(suspect))
                .findFirst()
                .orElseThrow()
                .chance();
    }

    private static Fact cranked(Cranking how, String pressure) {
        return new PressureRead(how, pressure, true, OptionalDouble.empty(), "");
    }

    private static Fact leak(String loss, LeakPath... out) {
        return new LeakDownRead(loss, List.of(out), "");
    }

    /** By the trapped ratio of the fit; p (r^n - 1) with n from 1.2 to 1.3, as textbooks of engines have the polytropic. */
    @Test
    void expectsThePressureOfThePolytropic() {
        Sealing sealing = Sealing.of(build(Trouble.POOR_SEALING, Found.TOGETHER));
        CrankingPressure sea = sealing.expected().orElseThrow();
        double ratio = Math.pow(sea.lowKPa() / 101.325 + 1, 1 / 1.2);
        assertThat(ratio).isBetween(5.0, 11.0);
        assertThat(sea.highKPa()).isGreaterThanOrEqualTo(101.325 * (Math.pow(ratio, 1.3) - 1) - 1e-6);
        // ISO 2533 has 79.495 kPa at 2000 m
        assertThat(sealing.expectedAt(2000).orElseThrow().lowKPa())
                .isCloseTo(sea.lowKPa() * 79.495 / 101.325, within(0.2));
    }

    @ParameterizedTest
    @CsvSource({
        "INLET, inlet-valve",
        "EXHAUST, exhaust-valve",
        "BREATHER, rings",
        "HEAD_JOINT, head-joint",
        "PLUG, plug-joint"
    })
    void whereTheAirComesOutNamesTheCause(LeakPath path, String suspect) {
        assertThat(first(sealing(cranked(Cranking.DRY, "5 bar"), leak("45 %", path))))
                .isEqualTo(suspect);
    }

    @Test
    void oilThatRaisesThePressureMakesTheRingsLikelier() {
        double before = chance(sealing(cranked(Cranking.DRY, "5 bar")), "rings");
        double up = chance(sealing(cranked(Cranking.DRY, "5 bar"), cranked(Cranking.WITH_OIL, "7 bar")), "rings");
        double same = chance(sealing(cranked(Cranking.DRY, "5 bar"), cranked(Cranking.WITH_OIL, "5.1 bar")), "rings");
        assertThat(up).isGreaterThan(before);
        assertThat(same).isLessThan(before);
    }

    @Test
    void lowPressureWithAGoodLeakDownIsNoLeak() {
        Ranking ranking = sealing(cranked(Cranking.DRY, "6 bar"), leak("6 %", LeakPath.NOWHERE));
        assertThat(first(ranking)).isIn("cam-late", "not-cranked", "gauge");
        assertThat(ranking.next()).isNotEmpty();
    }

    /** AC 43.13-1B has a cylinder off the engine below 60 on a gauge of 80: 25 % lost. */
    @Test
    void holdsTheLossAgainstTheBandOfAircraftPractice() {
        assertThat(Sealing.FAA_MOST_LOSS).isCloseTo(100 * (80 - 60) / 80.0, within(1e-12));
        assertThat(Sealing.of(build(Trouble.POOR_SEALING, Found.TOGETHER, leak("30 %")))
                        .sentences())
                .anyMatch(sentence -> sentence.contains("above 25 %"));
        assertThat(Sealing.of(build(Trouble.POOR_SEALING, Found.TOGETHER, leak("20 %")))
                        .sentences())
                .anyMatch(sentence -> sentence.contains("not above 25 %"));
    }

    @Test
    void theOrderOfUnlikeReadingsDoesNotMatter() {
        List<Fact> facts = new ArrayList<>(List.of(
                cranked(Cranking.DRY, "5 bar"),
                cranked(Cranking.WITH_OIL, "6.6 bar"),
                leak("40 %", LeakPath.BREATHER),
                new Tried("h", "set-clearances", "same", "")));
        double one = chance(sealing(facts.toArray(Fact[]::new)), "rings");
        Collections.reverse(facts);
        assertThat(chance(sealing(facts.toArray(Fact[]::new)), "rings")).isCloseTo(one, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Trouble.class)
    void everyTroubleHasSuspectsAndATestThatTells(Trouble trouble) {
        for (Found found : Found.values()) {
            Ranking ranking = ranking(build(trouble, found));
            assertThat(ranking.ranked())
                    .hasSizeGreaterThan(4)
                    .allSatisfy(one -> assertThat(one.chance()).isBetween(0.0, 1.0));
            assertThat(ranking.ranked().stream().mapToDouble(Ranked::chance).sum())
                    .isCloseTo(1, within(1e-9));
            assertThat(ranking.best()).as(trouble + ", " + found).isPresent();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "NO_SHIFT, each-gear, jumps, detent",
        "NO_SHIFT, slack-case, frees, shim",
        "SLIPS, play, none, cable",
        "NO_SPARK, switch-off, sparks, switch",
        "NO_OIL, prime, comes, not-primed"
    })
    void aTestsAnswerNamesItsCause(Trouble trouble, String test, String answer, String suspect) {
        Ranking ranking = ranking(build(trouble, Found.TOGETHER, new Tried("h", test, answer, "")));
        assertThat(first(ranking)).isEqualTo(suspect);
        assertThat(ranking.next()).noneMatch(next -> next.test().id().equals(test));
    }

    @Test
    void whatTheBuildKnowsCountsWithItsEntry() {
        Build build = build(Trouble.NO_OIL, Found.TOGETHER, new CheckFailed("pump-primed", "", "no oil"));
        Ranking ranking = ranking(build);
        assertThat(ranking.evidence()).anySatisfy(seen -> {
            assertThat(seen.said()).startsWith("Failed:");
            assertThat(seen.entries()).containsExactly(3L);
        });
        assertThat(chance(ranking, "not-primed"))
                .isGreaterThan(chance(ranking(build(Trouble.NO_OIL, Found.TOGETHER)), "not-primed"));
    }

    private static List<String> reach(Ranking ranking, String suspect) {
        return ranking.ranked().stream()
                .map(Ranked::suspect)
                .filter(one -> one.id().equals(suspect))
                .findFirst()
                .orElseThrow()
                .reach();
    }

    /** A spring, a bearing or an O-ring is no piston ring, nor the pump's rotor that of the ignition. */
    @Test
    void aSuspectReachesOnlyItsOwnParts() {
        assertThat(reach(sealing(), "rings"))
                .containsExactlyInAnyOrder("top-ring", "second-ring", "oil-ring", "oil-ring-expander", "barrel");
        assertThat(reach(ranking(build(Trouble.NO_SPARK, Found.TOGETHER)), "key"))
                .containsExactlyInAnyOrder("rotor", "rotor-key");
        Ranking oil = ranking(build(Trouble.NO_OIL, Found.TOGETHER));
        assertThat(reach(oil, "oilway")).contains("head-gasket").doesNotContain("inlet-gaskets", "exhaust-gasket");
        assertThat(reach(oil, "gallery-plug")).contains("barrel-o-ring").doesNotContain("carburettor-o-ring");
    }

    @Test
    void aForkPinNeverSeenGoingInComesFirst() {
        Build empty = build(Trouble.NO_SHIFT, Found.IN_PIECES);
        Fact[] all = empty.structure().positions().stream()
                .filter(position -> !position.id().equals("selector-fork-pins"))
                .map(position -> new Fact.Fitted(position.id(), "", position.quantity(), Way.NOT_SAID, ""))
                .toArray(Fact[]::new);
        assertThat(first(ranking(build(Trouble.NO_SHIFT, Found.IN_PIECES, all))))
                .isEqualTo("fork-pin");
    }
}
