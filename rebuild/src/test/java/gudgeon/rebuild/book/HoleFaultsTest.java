package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class HoleFaultsTest {
    private static List<String> doubts(String... holes) {
        StringBuilder book = new StringBuilder("""
                book: 1
                engine: {name: Tarn 98}
                joints:
                  - id: cover
                    name: cover
                    holes:
                """);
        for (String hole : holes) {
            book.append("      - {").append(hole).append("}\n");
        }
        book.append("""
                steps:
                  - {id: close, name: close it, tightens: [cover]}
                """);
        return new EngineBookReader()
                .read(book.toString()).faults().stream()
                        .filter(fault -> fault.severity() == Fault.Severity.DOUBT)
                        .map(Fault::sentence)
                        .toList();
    }

    @Test
    void aSoundJointIsNotDoubted() {
        assertThat(doubts(
                        "id: h1, at: [6, 6], thread: M6, length: 40, stack: 28",
                        "id: h2, at: [70, 6], thread: 1/4 BSF, length: 1.5 in, stack: 28",
                        "id: h3, at: [70, 50], kind: stud, thread: M8, length: 20, stack: 28",
                        "id: h4, length: 40"))
                .isEmpty();
    }

    @Test
    void allThatCanHardlyBeRightIsToldAtOnceWhereItStands() {
        assertThat(doubts(
                        "id: h1, at: [6, 6], thread: M6, length: 40, stack: 28",
                        "id: h2, at: [6.4, 6], thread: M6.5, length: 40, stack: 28",
                        "id: h3, at: [70, 50], thread: M6, length: 28, stack: 28"))
                .satisfiesExactly(
                        spot -> assertThat(spot).contains("Line 8,", "Holes 'h1' and 'h2' lie on one spot."),
                        thread -> assertThat(thread).contains("Line 8,", "'M6.5' is not a thread known here"),
                        reach -> assertThat(reach)
                                .contains("Line 9,", "'h3' is 28 mm long and clamps 28 mm", "does not reach"));
    }
}
