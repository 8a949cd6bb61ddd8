package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.book.Fault.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class EngineBookReaderTest {
    @Test
    void readsTheExampleWithoutFaultOrDoubt() {
        BookReading reading = new EngineBookReader().read(Books.tarn());
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        assertThat(reading.faults())
                .filteredOn(f -> f.severity() != Severity.NOTE)
                .isEmpty();
        Geometry book = ((BookReading.Read) reading).book().geometry().orElseThrow();
        assertThat(book.engine().name()).isEqualTo("Tarn 98");
        assertThat(book.pistons()).extracting(PistonEntry::id).containsExactly("original", "pattern");
        assertThat(book.piston("pattern").orElseThrow().from()).isEqualTo(PistonEntry.From.PATTERN);
        assertThat(book.cam()).contains(new CamDrive(28));
        assertThat(book.valve("inlet").orElseThrow().lift())
                .isInstanceOfSatisfying(
                        LiftEntry.Table.class,
                        table -> assertThat(table.points()).hasSize(31));
    }

    @Test
    void everySizeIsFoundByItsPathAndChangedAlone() {
        Geometry book = Books.book(Books.tarn());
        String path = "pistons.pattern.pockets.exhaust.depth";
        Size depth = book.size(path).orElseThrow();
        assertThat(depth.label()).isEqualTo("exhaust pocket depth");
        assertThat(depth.value()).isEqualTo(0.2);
        assertThat(depth.instrument()).contains("depth-micrometer");
        assertThat(depth.where().line()).isEqualTo(Books.lineOf("depth: 0.2"));
        Geometry deeper = book.with(path, 2.0);
        assertThat(deeper.size(path).orElseThrow().value()).isEqualTo(2.0);
        assertThat(deeper.size(path).orElseThrow().quantity().doubts())
                .isEqualTo(depth.quantity().doubts());
        assertThat(deeper.with(path, 0.2)).isEqualTo(book);
    }

    @Test
    void readingsCarryTheirScatterAndTheInstrumentsDoubts() {
        Size bore = Books.book(Books.tarn()).cylinder().bore();
        assertThat(bore.value()).isCloseTo(50.01, within(1e-12));
        // scatter 0.00707/sqrt 5, resolution 0.005/(2 sqrt 3), error 0.008/sqrt 3 (JCGM 100:2008, 4.2.3, F.2.2.1,
        // 4.3.7)
        double expected = Math.sqrt(0.00005 / 5 + 0.005 * 0.005 / 12 + 0.008 * 0.008 / 3);
        assertThat(bore.quantity().standardUncertainty()).isCloseTo(expected, within(1e-12));
        assertThat(bore.howMeasured()).isEqualTo("The mean of 5 readings taken with the bore-gauge.");
    }

    @Test
    void theCrownsHeightFollowsFromTheBestThatIsKnown() {
        Geometry book = Books.book(Books.spoilt("compression-height: 27.00", "compression-height: 27.30"));
        PistonEntry pattern = book.piston("pattern").orElseThrow();
        assertThat(book.protrusion(pattern).mm(Size::value)).isCloseTo(-0.05 - 0.30, within(1e-9));
        Geometry stacked = Books.book(Books.tarn()
                .replaceFirst("protrusion: .*\n", "deck-height: {case: 60.00 ± 0.02, barrel: 84.00 ± 0.02}\n"));
        // by hand: sqrt((92 + 25)^2 - 0.5^2) + 27 - 144 = 116.998932 + 27 - 144
        assertThat(stacked.protrusion(stacked.pistons().get(0)).mm(Size::value)).isCloseTo(-0.001068, within(1e-6));
        assertThat(stacked.protrusion(stacked.pistons().get(0)).sizes()).hasSize(6);
    }

    @Test
    void opensAndClosesAreCountedFromFiringTopDeadCentre() {
        Geometry book = Books.book(withLift("{opens: 45 bbdc ± 2, closes: 12 atdc, at: 1.0, greatest: 7.9}"));
        LiftEntry.Events lift =
                (LiftEntry.Events) book.valve("exhaust").orElseThrow().lift();
        assertThat(lift.opens().value()).isEqualTo(135);
        assertThat(lift.opens().hasDoubt()).isTrue();
        assertThat(lift.closes().value()).isEqualTo(372);
    }

    @Test
    void aLawTakesItsRockerRatioAtTheLobe() {
        Geometry book =
                Books.book(withLift("{law: 3-4-5, duration: 300, greatest: 6.0, centre: 102, rocker-ratio: 1.2}"));
        LiftEntry.Law lift = (LiftEntry.Law) book.valve("exhaust").orElseThrow().lift();
        assertThat(lift.at()).isEqualTo(LiftEntry.At.LOBE);
        assertThat(lift.law()).isEqualTo(LiftEntry.LawName.POLYNOMIAL_345);
    }

    /** The example with another lift for its exhaust valve. */
    private static String withLift(String lift) {
        String tarn = Books.tarn();
        int from = tarn.indexOf("lift:\n");
        int to = tarn.indexOf("  - id: inlet");
        return tarn.substring(0, from) + "lift: " + lift + "\n" + tarn.substring(to);
    }

    static List<Arguments> faults() {
        return List.of(
                spoilt(
                        "stroke: {value: 50.0",
                        "stroke: {value: 5O.0",
                        "'5O.0' has a letter where a digit should be; 50.0 was perhaps meant."),
                spoilt("rod: 92.0 ± 0.1", "rod: 9.2.0", "'9.2.0' is not a number."),
                spoilt("rod: 92.0 ± 0.1", "rod: 1,092.0", "has both a comma and a point"),
                spoilt("rod: 92.0 ± 0.1", "rod: 92 furlongs", "'furlongs' is not a unit known here"),
                spoilt("rod: 92.0 ± 0.1", "rod: 92 cm3", "is in cubic centimetres, where millimetres is wanted"),
                spoilt("rod: 92.0 ± 0.1", "rod: 92 ± -0.1", "The doubt after ± in '92 ± -0.1' is below zero."),
                spoilt("rod: 92.0 ± 0.1", "rod:", "Nothing stands here."),
                spoilt("rod: 92.0 ± 0.1", "rod: [92]", "Here stands a list, where a size is wanted."),
                spoilt("rod: 92.0 ± 0.1", "rod: 24", "The rod of 24 mm is too short to turn a stroke of 50 mm."),
                spoilt("rod: 92.0 ± 0.1", "rod: 3.62", "It looks like inches: write '3.62 in' if it is."),
                spoilt("rod: 92.0 ± 0.1", "rodd: 92", "Did you mean 'rod'?"),
                spoilt(
                        "clearance: 0.05 ± 0.01",
                        "clearance: 2",
                        "It looks like thousandths of an inch: write '2 thou' if it is."),
                spoilt(
                        "clearance: 0.05 ± 0.01",
                        "clearance: -0.05",
                        "The exhaust valve clearance of -0.05 mm is below zero."),
                spoilt("head: 20.00 with calliper", "head: 20.00 with caliper", "Did you mean 'calliper'?"),
                spoilt(
                        "head: 20.00 with calliper",
                        "head: 20.00 with protractor",
                        "The protractor measures degrees, but millimetres is wanted here."),
                spoilt(
                        "head: 20.00 with calliper",
                        "head: 52",
                        "The valve head of 52 mm is not smaller than the bore of 50.01 mm."),
                spoilt("tilt: 10.0 with protractor", "tilt: 70", "The exhaust valve tilt of 70 ° can't be right."),
                spoilt("kind: exhaust", "kind: exhuast", "Did you mean 'exhaust'?"),
                spoilt("- id: inlet", "- id: exhaust", "The id 'exhaust' is used again"),
                spoilt("{id: thin", "{id: thi n", "'thi n' can't be used as an id."),
                spoilt("- id: pattern", "- id: original", "The id 'original' is used again"),
                spoilt(
                        "cam: {sprocket-teeth: 28}",
                        "cam: {sprocket-teeth: 28.5}",
                        "Write a whole number from 8 to 200."),
                spoilt("cam: {sprocket-teeth: 28}", "cam: 28", "Here stands '28', where a block of keys is wanted."),
                spoilt(
                        "cam: {sprocket-teeth: 28}",
                        "cam: [28]",
                        "Here stands a list, where a block of keys is wanted."),
                spoilt("cam: {sprocket-teeth: 28}", "valves: []", "The list of valves is empty."),
                spoilt("book: 1", "book: 2", "Write 1."),
                spoilt(
                        "land: 49.60",
                        "land: 50.40",
                        "The piston's land of 50.4 mm is larger than the bore of 50.01 mm."),
                spoilt("dome: 4.0", "dome: 24.0", "The dome of 24 mm is more than half its circle of 46 mm."),
                spoilt("base: 46.0", "base: 49.8", "The dome's circle of 49.8 mm is larger than the land of 49.6 mm."),
                spoilt(
                        "diameter: 23.2",
                        "diameter: 53.2",
                        "The pocket of 53.2 mm is not smaller than the bore of 50.01 mm."),
                spoilt("[-130, 0.49]", "[-150, 0.49]", "does not rise from the one before"),
                spoilt("[-130, 0.49]", "[-130]", "Here stands a list, where a pair is wanted."),
                spoilt("[-130, 0.49]", "[-130, 0.49, 1]", "Here stands a list, where a pair is wanted."),
                spoilt("[-130, 0.49]", "[-130, x]", "'x' is not a number."),
                spoilt("centre: 102 with degree-disc", "note: no centre", "'note' is not a key of a lift."),
                spoilt("readings: [9.9, 10.0, 10.0]", "readings: []", "The list of readings is empty."),
                spoilt("readings: [9.9, 10.0, 10.0], ", "", "The size has neither 'value' nor 'readings'."),
                spoilt("{value: 50.0, doubt: 0.05", "{value: 50,0, doubt: 0.05", "a decimal comma does not work there"),
                spoilt(
                        "{value: 50.0, doubt: 0.05",
                        "{value: 50.0, doubt: 0.05, doubt: 0.1",
                        "The key 'doubt' stands here again"),
                spoilt(
                        "exhaust: {diameter: 23.2",
                        "exhast: {diameter: 23.2",
                        "A pocket is named 'exhast', but no valve has that id. Did you mean 'exhaust'?"),
                spoilt("from: original", "from: somewhere", "one of these"),
                spoilt("resolution: 0.01", "resolution: fine", "'fine' is not a number."));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource
    void faults(String text, String by, String sentence) {
        BookReading reading = new EngineBookReader().read(Books.spoilt(text, by));
        assertThat(reading).isInstanceOf(BookReading.Refused.class);
        assertThat(reading.faults()).as("%s", Books.sentences(reading)).anySatisfy(fault -> {
            assertThat(fault.sentence()).contains(sentence);
            assertThat(fault.line()).isEqualTo(Books.lineOf(text));
        });
        assertThat(reading.faults()).extracting(Fault::severity).contains(Severity.FAULT);
    }

    static List<Arguments> doubts() {
        return List.of(
                spoilt(
                        "spring-travel: 9.5",
                        "spring-travel: 7.5",
                        "The valve lifts 7.95 mm, past the spring's travel of 7.5 mm"),
                spoilt("depth: 2.0 ", "depth: 7.0 ", "through a crown of 6.5 mm"),
                spoilt(
                        "diameter: 23.2",
                        "diameter: 19.2",
                        "The pocket of 19.2 mm is no wider than its valve's head of 20 mm."),
                spoilt("rod: 92.0", "rod: 62.0", "The rod is 1.24 times the stroke, which is unusual."),
                spoilt(
                        "protrusion: {readings: [-0.06, -0.04, -0.05]",
                        "protrusion: {readings: [-18.0]",
                        "would stand 18 mm below the deck"),
                spoilt("bore: 51", "bore: 49", "The gasket's hole of 49 mm reaches into the bore of 50.01 mm."),
                spoilt("unit: cm3", "unit: in3", "hardly goes with a swept volume of 98.2 cm³"),
                spoilt(
                        "[-130, 0.49]",
                        "[-130, 0.94]",
                        "The lift of 0.94 mm at -130° jumps: its neighbours ask for about 0.5 mm."),
                spoilt("[-130, 0.49]", "[-130, 4.9]", "at -120°, where the valve opens."),
                spoilt(
                        "offset: 11.4 ± 0.1, azimuth: 180",
                        "offset: 11.4 ± 0.1, azimuth: 0",
                        "Check which way round the piston was"),
                spoilt("recess: 0.90", "recess: 0.90 ± 3", ""),
                spoilt("margin: 1.00 with calliper", "margin: 1.00 ± 0.1", ""),
                spoilt("land: 49.60 with micrometer", "land: 49.6 ± 60", "is larger than the size itself."));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource
    void doubts(String text, String by, String sentence) {
        BookReading reading = new EngineBookReader().read(Books.spoilt(text, by));
        assertThat(reading).as("%s", Books.sentences(reading)).isInstanceOf(BookReading.Read.class);
        List<Fault> doubts = reading.faults().stream()
                .filter(fault -> fault.severity() == Severity.DOUBT)
                .toList();
        if (sentence.isEmpty()) {
            assertThat(doubts).isEmpty();
        } else {
            assertThat(doubts).anySatisfy(doubt -> {
                assertThat(doubt.sentence()).contains(sentence);
                assertThat(doubt.line()).isPositive();
            });
        }
    }

    @Test
    void allFaultsAreToldAtOnceAndAtTheirLines() {
        String bad = Books.tarn()
                .replace("bore: {readings: [50.01, 50.00, 50.01, 50.02, 50.01], with: bore-gauge}", "bore: 1.97")
                .replace("rod: 92.0", "rod: 9z.0")
                .replace("stroke:", "strok:")
                .replace("kind: inlet", "kind: intake")
                .replace("head: 20.00", "head: 60.00");
        List<Fault> faults = new EngineBookReader().read(bad).faults();
        assertThat(faults)
                .extracting(Fault::path)
                .contains("cylinder.bore", "crank.rod", "crank.strok", "crank", "valves.inlet.kind");
        assertThat(faults).isSortedAccordingTo(java.util.Comparator.comparingInt(Fault::line));
        Fault bore = faults.stream()
                .filter(f -> f.path().equals("cylinder.bore"))
                .findFirst()
                .orElseThrow();
        assertThat(bore.sentence())
                .isEqualTo("Line " + Books.lineOf("bore: {readings: [50.01") + ", column 9, cylinder.bore: "
                        + "The bore of 1.97 mm can't be right. It looks like inches: write '1.97 in' if it is.");
    }

    @Test
    void whatIsMissingIsTold() {
        String little = Books.tarn()
                .replaceFirst("head:\n  chamber: .*\n", "")
                .replaceFirst("cam: .*\n", "")
                .replaceFirst("(?s)wanted:.*", "")
                .replace("rod: 92.0 ± 0.1", "rod: 92.0");
        BookReading reading = new EngineBookReader().read(little);
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        assertThat(String.join("\n", Books.sentences(reading)))
                .contains("no compression ratio can be worked out")
                .contains("a chain moved by a tooth can't be tried")
                .contains("common practice stands in")
                .contains("1 size has no doubt stated (rod length)");
        assertThat(((BookReading.Read) reading)
                        .book()
                        .geometry()
                        .orElseThrow()
                        .wanted()
                        .deck()
                        .source())
                .isEqualTo("common practice, no source");
    }

    @Test
    void aBookWithNothingInItNamesEveryMissingKey() {
        List<String> sentences = Books.sentences(new EngineBookReader().read("book: 1"));
        for (String key : List.of("engine", "cylinder", "crank", "gaskets", "valves", "pistons")) {
            assertThat(sentences).anySatisfy(said -> assertThat(said).contains("has no '" + key + "'"));
        }
        assertThat(sentences).hasSize(6);
    }

    private static Arguments spoilt(String text, String by, String sentence) {
        return Arguments.of(text, by, sentence);
    }
}
