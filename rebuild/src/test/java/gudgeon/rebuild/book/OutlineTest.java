package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OutlineTest {
    private static final List<Point> COVER =
            List.of(new Point(0, 0), new Point(80, 0), new Point(80, 60), new Point(40, 30), new Point(0, 60));

    @Test
    void saysHowFarInsideAPointLies() {
        Outline outline = new Outline(COVER);
        assertThat(outline.insideMm(new Point(40, 10))).isCloseTo(10, within(1e-9));
        assertThat(outline.insideMm(new Point(40, 40))).as("in the notch").isNegative();
        assertThat(outline.insideMm(new Point(90, 30))).isCloseTo(-10, within(1e-9));
        assertThat(outline.insideMm(new Point(84, -3))).as("off a corner").isCloseTo(-5, within(1e-9));
    }

    /** The way round and the corner begun with do not matter, and the figure moves and is mirrored with the face. */
    @Test
    void itIsTheSameEitherWayRoundMovedAndMirrored() {
        Random random = new Random(5);
        for (int i = 0; i < 500; i++) {
            Point point = new Point(random.nextDouble() * 120 - 20, random.nextDouble() * 100 - 20);
            double inside = new Outline(COVER).insideMm(point);
            List<Point> other = new ArrayList<>(COVER);
            Collections.rotate(other, random.nextInt(5));
            Collections.reverse(other);
            assertThat(new Outline(other).insideMm(point)).isCloseTo(inside, within(1e-9));
            List<Point> mirrored = COVER.stream()
                    .map(corner -> new Point(7 - corner.x(), corner.y() + 3))
                    .toList();
            assertThat(new Outline(mirrored).insideMm(new Point(7 - point.x(), point.y() + 3)))
                    .isCloseTo(inside, within(1e-9));
        }
    }

    @Test
    void aHoleOutsideItsJointOrOnItsEdgeIsDoubted() {
        String book = """
                book: 1
                engine: {name: Tarn 98}
                joints:
                  - id: cover
                    name: cover
                    outline: [[0, 0], [80, 0], [80, 60], [0, 60]]
                    holes:
                      - {id: h1, at: [6, 6], thread: M6}
                      - {id: h2, at: [78, 6], thread: M6}
                      - {id: h3, at: [90, 50], thread: M6}
                steps:
                  - {id: close, name: close it, tightens: [cover]}
                """;
        assertThat(new EngineBookReader()
                        .read(book).faults().stream()
                                .filter(fault -> fault.severity() == Fault.Severity.DOUBT)
                                .map(Fault::sentence))
                .satisfiesExactly(
                        edge -> assertThat(edge).contains("Line 9,", "Hole 'h2' lies on the edge of"),
                        outside -> assertThat(outside).contains("Line 10,", "Hole 'h3' lies outside"));
    }
}
