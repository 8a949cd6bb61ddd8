package gudgeon.rebuild.decide;

import static gudgeon.rebuild.decide.Told.after;
import static gudgeon.rebuild.decide.Told.bought;
import static gudgeon.rebuild.decide.Told.build;
import static gudgeon.rebuild.decide.Told.drawn;
import static gudgeon.rebuild.decide.Told.ofFamily;
import static gudgeon.rebuild.decide.Told.together;
import static gudgeon.rebuild.decide.Told.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Mate.Goes;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Deciding.OptionDropped;
import gudgeon.rebuild.journal.Deciding.OptionTaken;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whole ways to go on, held against the engine as it is. */
class OptionsTest {
    private static final Trials TRIALS = new Trials();

    private static final Build REBORE = build(
            together(),
            drawn("rebore"),
            bought("rebore", "piston", "64.00 EUR", Map.of("skirt", "50.46 mm", "land", "50.10 mm")),
            work("rebore", "barrel", Map.of("bore", "50.50 mm")));

    private static final Build LARGER = build(
            together(),
            drawn("larger"),
            ofFamily("larger", "barrel"),
            ofFamily("larger", "piston"),
            ofFamily("larger", "head"));

    private static Outcome only(Build build) {
        Options options = Options.of(build, 6000, TRIALS);
        assertThat(options.options()).hasSize(1);
        return options.options().get(0);
    }

    private static OptionFigure figure(Outcome outcome, String key) {
        return outcome.figure(key).orElseThrow(() -> new AssertionError("no " + key + " in " + outcome));
    }

    private static Mate mate(Outcome outcome, String dimension) {
        return outcome.mates().stream()
                .filter(mate -> mate.dimension().equals(dimension))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aReboreMakesTheCapacityOfItsBore() {
        Outcome rebore = only(REBORE);
        // π/4 · 5.05² · 5.0 cm³ by hand
        assertThat(figure(rebore, "sweptCm3").low()).isCloseTo(100.1483, within(0.01));
        assertThat(figure(rebore, "compressionRatio").low())
                .isGreaterThan(figure(Options.of(REBORE, 6000, TRIALS).now(), "compressionRatio")
                        .low());
        assertThat(rebore.cautions()).anyMatch(caution -> caution.contains("Ask the authority"));
    }

    @Test
    void theMeanPistonSpeedIsTwiceTheStrokeTimesTheSpeed() {
        // 2 · 0.05 m · 100/s; the offset pin of 0.5 mm on a rod of 92 mm lengthens the stroke by less than a thousandth
        // of a millimetre
        OptionFigure speed = figure(Options.of(REBORE, 6000, TRIALS).now(), "pistonSpeed");
        assertThat(speed.low()).isCloseTo(10.0, within(2e-4));
        assertThat(speed.words()).startsWith("10.0").endsWith("m/s");
        assertThatThrownBy(() -> Options.of(REBORE, 0, TRIALS)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void workToTheSizeOfANewPistonWaitsForIt() {
        assertThat(only(REBORE).leadTime().days()).contains(new Days(10, 15, 32));
        Build inHand =
                after(REBORE, new Fact.PartEntered("oversize", "piston", Origin.PATTERN, 1, "", "64.00 EUR", ""));
        assertThat(only(inHand).leadTime().days()).contains(new Days(7, 10, 20));
        assertThat(only(inHand).bill().toCome().words()).isEqualTo("80.00 EUR");
        assertThat(only(inHand).inHand()).isEqualTo("1 of 1 in hand.");
    }

    @Test
    void pricesAreAddedUpEachCurrencyByItself() {
        Build two = after(REBORE, bought("rebore", "head-gasket", "9.50 GBP", Map.of()));
        assertThat(only(two).bill().all().words()).isEqualTo("144.00 EUR and 9.50 GBP");
        Build unreadable = after(REBORE, bought("rebore", "head-gasket", "about ten", Map.of()));
        assertThat(only(unreadable).bill().sentence()).isEqualTo("144.00 EUR; no price said for head gasket.");
        assertThat(only(unreadable).notes()).anyMatch(note -> note.contains("about ten"));
    }

    @Test
    void theLargerTopEndOfTheFamilyDoesNotGoIntoTheCase() {
        Outcome larger = only(LARGER);
        // π/4 · 5.65² · 5.0 cm³ by hand
        assertThat(figure(larger, "sweptCm3").low()).isCloseTo(125.3594, within(0.01));
        Mate spigot = mate(larger, "spigot-clearance");
        assertThat(spigot.goes()).isEqualTo(Goes.NOT_TOGETHER);
        assertThat(spigot.sentence()).contains("crankcase would have to be changed or worked on as well");
        assertThat(mate(larger, "piston-clearance").goes()).isEqualTo(Goes.TOGETHER);
        assertThat(larger.leadTime().sentence()).isEqualTo("Not said for barrel, piston and cylinder head.");
    }

    @Test
    void whatOfTheFamilyIsLeftBehindIsSaid() {
        Build barrelOnly = build(together(), drawn("barrel"), ofFamily("barrel", "barrel"));
        Outcome outcome = only(barrelOnly);
        assertThat(outcome.cautions())
                .anyMatch(caution -> caution.startsWith("The Tarn 125 differs in more")
                        && caution.contains("cylinder head and piston would stay as they are"));
        assertThat(mate(outcome, "piston-clearance").goes()).isEqualTo(Goes.NOT_TOGETHER);
    }

    @Test
    void aCaseBoredToTheSpigotGoesTogether() {
        Build bored = after(LARGER, work("larger", "case", Map.of("mouth", "61.02 mm")));
        assertThat(mate(only(bored), "spigot-clearance").goes()).isEqualTo(Goes.TOGETHER);
        assertThat(mate(only(bored), "spigot-clearance").value()).isEqualTo("0.07 mm");
    }

    @Test
    void aBarrelAlreadyWornIsComparedAsItWasRead() {
        Build worn = after(
                build(together(), new Fact.TakenOff("barrel", 1, "", "", "")),
                new Fact.Measured("barrel", "", Map.of("bore", "50.20 mm")),
                drawn("piston"),
                bought("piston", "piston", "", Map.of("skirt", "49.96 mm")));
        assertThat(mate(only(worn), "piston-clearance").goes()).isEqualTo(Goes.NOT_TOGETHER);
        assertThat(mate(only(worn), "piston-clearance").sentence()).contains("barrel would have to be changed");
    }

    @Test
    void everyFigureStandsInOneLineOfTheTable() {
        Options options = Options.of(after(REBORE, drawn("larger"), ofFamily("larger", "barrel")), 5000, TRIALS);
        assertThat(options.rows()).allMatch(row -> row.cells().size() == 3);
        assertThat(options.rows())
                .extracting(Options.Row::key)
                .contains("sweptCm3", "pistonSpeed")
                .doesNotHaveDuplicates();
        assertThat(options.rows())
                .filteredOn(row -> row.key().equals("sweptCm3"))
                .allMatch(row -> row.cells().stream().allMatch(Optional::isPresent));
    }

    @Test
    void theLaterLineOfAPositionCountsAndADecisionIsKept() {
        Build later = after(
                REBORE,
                work("rebore", "barrel", Map.of("bore", "50.25 mm")),
                new OptionTaken("rebore", "cheapest that cleans up"));
        Option option = Option.of(later).get(0);
        assertThat(option.lines()).hasSize(2);
        assertThat(option.lines().get(1).sizes()).containsEntry("bore", "50.25 mm");
        assertThat(option.state()).isEqualTo(Option.State.TAKEN);
        assertThat(option.said()).isEqualTo("cheapest that cleans up");
        assertThat(Option.of(after(later, new OptionDropped("rebore", "no piston to be had")))
                        .get(0)
                        .state())
                .isEqualTo(Option.State.DROPPED);
    }

    @Test
    void aBookWithoutFiguresStillComparesMoneyAndTime() {
        Build bare = after(Build.of(Told.read("""
                        book: 1
                        engine: {name: Tarn 98}
                        positions:
                          - {id: piston, name: piston}
                        steps:
                          - {id: fit, name: Fit, fits: [piston]}
                        """)), drawn("new"), bought("new", "piston", "12.00 EUR", Map.of()));
        Outcome outcome = only(bare);
        assertThat(outcome.figures()).isEmpty();
        assertThat(outcome.bill().all().words()).isEqualTo("12.00 EUR");
        assertThat(outcome.notes()).anyMatch(note -> note.contains("no figures"));
    }

    @Test
    void aSpigotLargerThanItsMouthDoesNotGoInWhereOnlyWearIsLimited() {
        Build tarn = Told.after(
                Build.of(Told.tarn()),
                Drafts.of(Build.of(Told.tarn())).stream()
                        .filter(draft -> draft.option().equals("tarn-125"))
                        .findFirst()
                        .orElseThrow()
                        .facts()
                        .toArray(Fact[]::new));
        Outcome larger = only(tarn);
        assertThat(larger.mates())
                .filteredOn(mate -> mate.goes() == Goes.NOT_TOGETHER)
                .extracting(Mate::sentence)
                .singleElement()
                .asString()
                .contains("spigot", "left crankcase half would have to be changed or worked on as well");
        assertThat(larger.notes()).anyMatch(note -> note.startsWith("Of the piston this option says 3 of 17 sizes."));
    }
}
