package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Check.How;
import gudgeon.rebuild.book.Fault.Severity;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The book's second part: what is read, and what is refused in which words. */
class StructureReaderTest {
    private static final String WHOLE = """
            book: 1
            engine: {name: Tarn 98}
            positions:
              - id: case
                name: crankcase halves
                quantity: 2
                space: [wet, outside]
                note: Kept as a pair.
              - id: piston
                name: piston
                space: gas
                critical: true
                mark: arrow to the exhaust
                compare: [diameter, height]
                sizes: pistons
              - id: gasket
                name: base gasket
                single-use: true
                sizes: base-gasket
                pressed: 0.40 ± 0.03
            joints:
              - id: case-joint
                name: crankcase joint
                order: from the middle outwards
                note: In two passes.
                holes:
                  - {id: h1, thread: M6, length: 40, depth: 14, through: true, note: Beside the dowel.}
            steps:
              - id: close-case
                name: Close the crankcase
                do: [Wipe the faces., Draw it together.]
                fits: [case]
                tightens: [case-joint]
                oil: Oil on the threads.
                grease: [Grease in the lip.]
                sealant: [A thin film.]
                tools: [spanner]
                minutes: 20
                sets: 60
                cautions: Keep fingers out.
              - id: fit-piston
                name: Fit the piston
                fits: [piston, gasket]
                into: case
                needs: [close-case]
                covers: [case]
            checks:
              - id: float
                name: End float
                how: measured
                do: [Push and pull.]
                clears: [case, close-case]
                with: [case]
                needs: [close-case]
                disturbed-by: [piston, close-case, blasting]
                holds: [fit-piston]
                expect: {at-least: 2 thou, at-most: 0.20}
                tools: [dial gauge]
                minutes: 10
                cautions: [Mind the probe.]
              - id: free
                name: Turns freely
                how: tried
                clears: [piston]
                after: [float]
                late: It has to be in first.
            dimensions:
              - id: bore
                name: bore
                of: piston
                how: Across the pin.
                with: bore gauge
                at-most: 50.10
                note: Invented.
            """;

    private static Structure read(String text) {
        BookReading reading = new EngineBookReader().read(text);
        assertThat(Books.sentences(reading)).isEmpty();
        return ((BookReading.Read) reading).book().structure();
    }

    private static String without(String text, String by) {
        assertThat(WHOLE).contains(text);
        return WHOLE.replace(text, by);
    }

    private static List<String> told(String text) {
        return Books.sentences(new EngineBookReader().read(text));
    }

    /** What is told of a book of these steps, one a line, and whatever positions they name. */
    private static List<Fault> ofSteps(String positions, String steps, String checks) {
        StringBuilder text = new StringBuilder("book: 1\nengine: {name: Tarn 98}\npositions:\n");
        positions.lines().forEach(id -> text.append("  - {id: " + id + ", name: the " + id + "}\n"));
        text.append("steps:\n");
        steps.lines().forEach(step -> text.append("  - {" + step + "}\n"));
        if (!checks.isEmpty()) {
            text.append("checks:\n");
            checks.lines().forEach(check -> text.append("  - {" + check + "}\n"));
        }
        return new EngineBookReader().read(text.toString()).faults();
    }

    @Test
    void everyKeyOfAPositionIsRead() {
        Structure structure = read(WHOLE);
        Position shell = structure.position("case").orElseThrow();
        assertThat(shell.name()).isEqualTo("crankcase halves");
        assertThat(shell.quantity()).isEqualTo(2);
        assertThat(shell.spaces()).containsExactly(Space.WET, Space.OUTSIDE);
        assertThat(shell.seals()).isTrue();
        assertThat(shell.note()).isEqualTo("Kept as a pair.");
        assertThat(shell.singleUse()).isFalse();
        assertThat(shell.critical()).isFalse();
        assertThat(shell.where().line()).isEqualTo(4);
        Position piston = structure.position("piston").orElseThrow();
        assertThat(piston.quantity()).isEqualTo(1);
        assertThat(piston.critical()).isTrue();
        assertThat(piston.seals()).isFalse();
        assertThat(piston.mark()).isEqualTo("arrow to the exhaust");
        assertThat(piston.compare()).containsExactly("diameter", "height");
        assertThat(piston.sizes()).isEqualTo("pistons");
        Position gasket = structure.position("gasket").orElseThrow();
        assertThat(gasket.singleUse()).isTrue();
        assertThat(gasket.pressed()).map(Size::value).contains(0.40);
        assertThat(gasket.pressed().orElseThrow().hasDoubt()).isTrue();
    }

    @Test
    void everyKeyOfAJointIsRead() {
        Joint joint = read(WHOLE).joint("case-joint").orElseThrow();
        assertThat(joint.order()).isEqualTo("from the middle outwards");
        assertThat(joint.note()).isEqualTo("In two passes.");
        Hole hole = joint.holes().get(0);
        assertThat(hole.id()).isEqualTo("h1");
        assertThat(hole.thread()).isEqualTo("M6");
        assertThat(hole.length()).map(Size::value).contains(40.0);
        assertThat(hole.depth()).map(Size::value).contains(14.0);
        assertThat(hole.through()).isTrue();
        assertThat(hole.note()).isEqualTo("Beside the dowel.");
    }

    @Test
    void everyKeyOfAStepIsRead() {
        Structure structure = read(WHOLE);
        assertThat(structure.step("close-case"))
                .contains(new Step(
                        "close-case",
                        "Close the crankcase",
                        List.of("Wipe the faces.", "Draw it together."),
                        List.of("case"),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of("case-joint"),
                        List.of("Oil on the threads."),
                        List.of("Grease in the lip."),
                        List.of("A thin film."),
                        List.of("spanner"),
                        20,
                        60,
                        List.of("Keep fingers out."),
                        structure.step("close-case").orElseThrow().where()));
        Step piston = structure.step("fit-piston").orElseThrow();
        assertThat(piston.into()).containsExactly("case");
        assertThat(piston.needs()).containsExactly("close-case");
        assertThat(piston.covers()).containsExactly("case");
        assertThat(piston.minutes()).isZero();
    }

    @Test
    void everyKeyOfACheckIsRead() {
        Structure structure = read(WHOLE);
        Check check = structure.check("float").orElseThrow();
        assertThat(check.how()).isEqualTo(How.MEASURED);
        assertThat(check.instructions()).containsExactly("Push and pull.");
        assertThat(check.clears()).containsExactly("case", "close-case");
        assertThat(check.with()).containsExactly("case");
        assertThat(check.needs()).containsExactly("close-case");
        assertThat(check.disturbedBy()).containsExactly("piston", "close-case");
        assertThat(check.disturbedByBlasting()).isTrue();
        assertThat(check.holds()).containsExactly("fit-piston");
        assertThat(check.isHoldPoint()).isTrue();
        assertThat(check.tools()).containsExactly("dial gauge");
        assertThat(check.minutes()).isEqualTo(10);
        assertThat(check.cautions()).containsExactly("Mind the probe.");
        Check free = structure.check("free").orElseThrow();
        assertThat(free.after()).containsExactly("float");
        assertThat(free.late()).isEqualTo("It has to be in first.");
        assertThat(free.disturbedByBlasting()).isFalse();
        assertThat(free.expect()).isEmpty();
    }

    @Test
    void spansAreConvertedToTheirUnit() {
        Expect expect = read(WHOLE).check("float").orElseThrow().expect().orElseThrow();
        assertThat(expect.unit()).isEqualTo(Unit.MM);
        assertThat(expect.atLeast()).isEqualTo(OptionalDouble.of(0.0508));
        assertThat(expect.holds(0.0508)).isTrue();
        assertThat(expect.holds(0.0507)).isFalse();
        assertThat(expect.holds(0.21)).isFalse();
        assertThat(expect.words()).isEqualTo("0.051 mm to 0.2 mm");
        Expect degrees = read(without("{at-least: 2 thou, at-most: 0.20}", "{at-most: 5 deg}"))
                .check("float")
                .orElseThrow()
                .expect()
                .orElseThrow();
        assertThat(degrees.words()).isEqualTo("at most 5°");
        assertThat(degrees.atLeast()).isEmpty();
    }

    @Test
    void everyKeyOfADimensionIsRead() {
        Dimension bore = read(WHOLE).dimensions().get(0);
        assertThat(bore.name()).isEqualTo("bore");
        assertThat(bore.of()).isEqualTo("piston");
        assertThat(bore.how()).isEqualTo("Across the pin.");
        assertThat(bore.with()).isEqualTo("bore gauge");
        assertThat(bore.expect()).map(Expect::words).contains("at most 50.1 mm");
        assertThat(bore.note()).isEqualTo("Invented.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            tightens: [case-joint]    | tightens: [case-jont]     | No joint has the id 'case-jont'. Did you mean 'case-joint'?
            needs: [close-case]       | needs: [clsoe-case]       | No step has the id 'clsoe-case'. Did you mean 'close-case'?
            after: [float]            | after: [flot]             | No check has the id 'flot'. Did you mean 'float'?
            of: piston                | of: pistom                | No position has the id 'pistom'. Did you mean 'piston'?
            into: case                | into: zzzzzzzzzz          | No position has the id 'zzzzzzzzzz'. Add it to the book, or take it out here.
            holds: [fit-piston]       | holds: [piston]           | 'piston' is a position, where a step is wanted. Write the id of one here.
            after: [float]            | after: [close-case]       | 'close-case' is a step, where a check is wanted.
            clears: [piston]          | clears: [case-joint]      | 'case-joint' is a joint, where a position or step is wanted.
            covers: [case]            | covers: [blasting]        | No position has the id 'blasting'.
            how: tried                | how: guessed              | Here stands 'guessed'. Write measured, tried, computed, seen: one of these.
            space: gas                | space: damp               | Here stands 'damp'. Write wet, dry, gas, outside: one or more of these.
            space: gas                | space: [gas, wet, dry]    | A part can seal two spaces from each other, not 3. Name one space, or two.
            critical: true            | critical: maybe           | Here stands 'maybe'. Write true, false: one of these.
            quantity: 2               | quantity: 0               | Here stands '0'. Write a whole number from 1 to 999.
            minutes: 20               | minutes: soon             | Here stands 'soon'. Write a whole number from 0 to 100000.
            sizes: pistons            | sizes: pistns             | No figures of the book are called 'pistns'. Did you mean 'pistons'? Write pistons, gaskets, base-gasket, cylinder, head, or valves and a valve's id, such as valves.exhaust.
            at-most: 0.20             | at-most: 0.20 deg         | 'at-least' and 'at-most' are in different units. Check both figures and their units.
            at-most: 0.20             | at-most: 1 thou           | 'at-least' is more than 'at-most'. Check both figures and their units.
            at-most: 50.10            | at-most: plenty           | such as '0.05'.
            {at-least: 2 thou, at-most: 0.20} | {}                | The span states neither 'at-least' nor 'at-most'.
            id: bore                  | id: piston                | The id 'piston' is used again, first for a position on line 9.
            id: fit-piston            | id: close-case            | The id 'close-case' is used again, first on line
            id: fit-piston            | id: fit piston            | 'fit piston' can't be used as an id. Use letters, digits and hyphens only, such as 'pattern-2'.
            covers: [case]            | cover: [case]             | 'cover' is not a key of a step. Did you mean 'covers'?
            of: piston                | ord: piston               | The dimension has no 'of'.
            fits: [piston, gasket]    | fits: [piston, gasket, case] | The position 'case' is fitted by this step too, though close-case fits it.
            """)
    void whatCanNotBeRightIsRefusedInPlainWords(String right, String wrong, String sentence) {
        String text = without(right, wrong);
        BookReading reading = new EngineBookReader().read(text);
        assertThat(reading).isInstanceOf(BookReading.Refused.class);
        assertThat(Books.sentences(reading))
                .anySatisfy(said -> assertThat(said).startsWith("Line ").contains(sentence));
    }

    @Test
    void aFaultPointsAtTheWordThatIsWrong() {
        String text = without("disturbed-by: [piston, close-case, blasting]", "disturbed-by: [piston, cloze-case]");
        assertThat(told(text))
                .containsExactly("Line 55, column 28, checks.float.disturbed-by: No position or step has the id"
                        + " 'cloze-case'. Did you mean 'close-case'?");
    }

    @Test
    void allFaultsAreToldAtOnceInTheOrderOfTheFile() {
        List<Fault> faults = ofSteps("a\nb\nc", """
                id: one, name: One, fits: [a, nothing], needs: [two]
                id: two, name: Two, fits: [b, a], needs: [one], minutes: -1
                """, "id: see, name: See, how: looked, clears: [nowhere]");
        assertThat(faults)
                .extracting(Fault::what)
                .containsExactly(
                        "These wait for each other in a circle: one, then two, then one.",
                        "No position has the id 'nothing'.",
                        "The position 'a' is fitted by this step too, though one fits it.",
                        "Here stands '-1'.",
                        "Here stands 'looked'.",
                        "No position or step has the id 'nowhere'.");
        assertThat(faults).extracting(Fault::line).containsExactly(8, 8, 9, 9, 11, 11);
    }

    @Test
    void ofTwoCirclesTheShortestIsTold() {
        List<Fault> faults = ofSteps("p", """
                id: a, name: A, needs: [e]
                id: b, name: B, needs: [a]
                id: c, name: C, needs: [b, d]
                id: d, name: D, needs: [c]
                id: e, name: E, needs: [d], fits: [p]
                """, "");
        assertThat(faults)
                .extracting(Fault::what)
                .containsExactly("These wait for each other in a circle: c, then d, then c.");
    }

    @Test
    void aCircleThroughCoversAndHoldPointsIsTold() {
        // what covers p needs p first; the check on p, done with q, holds the step that fits p's cover's part q
        List<Fault> faults =
                ofSteps("p\nq", """
                id: fit-p, name: P, fits: [p]
                id: fit-q, name: Q, fits: [q], covers: [p]
                """, "id: see-p, name: See p, how: seen, clears: [p], with: [q], holds: [fit-q]");
        assertThat(faults)
                .extracting(Fault::what)
                .contains("These wait for each other in a circle: fit-q, then see-p, then fit-q.");
    }

    @Test
    void aStepThatNeedsItselfIsACircle() {
        assertThat(ofSteps("p", "id: a, name: A, fits: [p], needs: [a]", ""))
                .extracting(Fault::what)
                .containsExactly("These wait for each other in a circle: a, then a.");
    }

    @Test
    void whatWasMostLikelyForgottenIsDoubted() {
        List<Fault> faults = ofSteps("p\nq\nr", """
                id: fit-p, name: P, fits: [p]
                id: fit-q, name: Q, fits: [q], needs: [fit-p]
                id: sweep, name: Sweep
                """, "id: look, name: Look, how: seen, with: [q]");
        assertThat(faults).extracting(Fault::severity).containsOnly(Severity.DOUBT);
        assertThat(faults)
                .extracting(Fault::what)
                .containsExactly(
                        "No step fits the position 'r', so it could be forgotten.",
                        "Nothing leads to the step 'sweep', and it leads to nothing.",
                        "The check 'look' clears nothing, so nobody would know what to look at when it fails.");
    }

    @Test
    void aCheckThatComesTooLateIsDoubtedWithThePath() {
        String steps = """
                id: fit-p, name: P, fits: [p]
                id: fit-q, name: Q, fits: [q], covers: [p]
                id: fit-r, name: R, fits: [r], needs: [fit-q]
                """;
        String check = "id: see-p, name: See p, how: seen, clears: [p], with: [r]";
        assertThat(ofSteps("p\nq\nr", steps, check))
                .extracting(Fault::sentence)
                .containsExactly("Line 12, column 5, checks.see-p: The check 'see-p' can never be done before its"
                        + " suspects are covered: 'fit-q' comes before 'fit-r' comes before 'see-p'. Do it with less in"
                        + " place, or say at 'late' why it has to be so.");
        assertThat(ofSteps("p\nq\nr", steps, check + ", late: It takes all three."))
                .isEmpty();
    }

    @Test
    void aJointThatNothingTightensIsDoubted() {
        assertThat(told(without("    tightens: [case-joint]\n", "")))
                .singleElement()
                .asString()
                .endsWith("No step tightens the joint 'case-joint'. Add it to 'tightens' of the step that closes it.");
    }

    @Test
    void severalBlocksWithoutAnIdAreEachToldOnce() {
        assertThat(told(without("id: bore\n    name: bore", "name: bore").replace("id: free\n    name:", "name:")))
                .allSatisfy(
                        said -> assertThat(said).doesNotContain("used again").contains("has no 'id'"))
                .hasSize(2);
    }

    @Test
    void aValveWhoseSizesAreMeantMustBeInTheBook() {
        String book = Books.spoilt("sizes: valves.exhaust", "sizes: valves.exhuast");
        assertThat(told(book))
                .singleElement()
                .asString()
                .contains("No figures of the book are called 'valves.exhuast'. Did you mean 'valves.exhaust'?");
        assertThat(told(without("sizes: pistons", "sizes: valves.third"))).isEmpty();
    }
}
