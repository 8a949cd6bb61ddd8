package gudgeon.rebuild.fasten;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.mechanics.plane.Pixel;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.MarkedPhoto.MeasuredApart;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A cover beside a sheet, seen by a camera whose place is known. */
class PhotoMapTest {
    private static final String PHOTO = "0123456789abcdef".repeat(4);
    /** Where the holes are from the lower left corner of an A4 sheet on its side, in mm. */
    private static final Map<String, Point> HOLES = Map.of(
            "h1", new Point(320, 20), "h2", new Point(382, 20), "h3", new Point(382, 70.5), "h4", new Point(320, 70.5));

    private final JointNow joint = joint();

    private static JointNow joint() {
        String book = """
                book: 1
                engine: {name: Tarn 98}
                positions:
                  - id: cover
                    name: cover
                steps:
                  - id: close
                    name: close it
                    fits: [cover]
                    tightens: [cover-joint]
                joints:
                  - id: cover-joint
                    name: cover
                    holes:
                      - {id: h1, thread: M6}
                      - {id: h2, thread: M6}
                      - {id: h3, thread: M6}
                      - {id: h4, thread: M6}
                """;
        BookReading reading = new EngineBookReader().read(book);
        assertThat(reading).as("%s", reading).isInstanceOf(BookReading.Read.class);
        return JointNow.of(Build.of(((BookReading.Read) reading).book()), "cover-joint")
                .orElseThrow();
    }

    /** A pinhole camera tipped by 30°, 700 mm away, that looks at a point of the table. */
    private static Pixel seen(double x, double y) {
        double tip = Math.toRadians(30);
        double along = y - 100;
        double away = 700 + Math.sin(tip) * along;
        return new Pixel(1600 + 3000 * (x - 250) / away, 1200 - 3000 * Math.cos(tip) * along / away);
    }

    private static List<Pixel> corners(double width, double height) {
        return List.of(seen(0, height), seen(width, height), seen(width, 0), seen(0, 0));
    }

    private static Map<String, Pixel> marks(Map<String, Point> holes) {
        Map<String, Pixel> marks = new TreeMap<>();
        holes.forEach((id, at) -> marks.put(id, seen(at.x(), at.y())));
        return marks;
    }

    private static MarkedPhoto marked(
            List<Pixel> corners, Map<String, Pixel> holes, boolean inside, Optional<MeasuredApart> check) {
        return new MarkedPhoto(
                PHOTO, SheetOfPaper.of("A4 on its side").orElseThrow(), corners, 4, inside, List.of(), holes, check);
    }

    private JointMapped mapped(MarkedPhoto marked) {
        PhotoMap map = PhotoMap.of(joint, marked);
        assertThat(map).as("%s", map).isInstanceOf(PhotoMap.Mapped.class);
        return ((PhotoMap.Mapped) map).fact();
    }

    private String refused(MarkedPhoto marked) {
        PhotoMap map = PhotoMap.of(joint, marked);
        assertThat(map).as("%s", map).isInstanceOf(PhotoMap.Refused.class);
        return String.join(" ", ((PhotoMap.Refused) map).sentences());
    }

    @Test
    void holesComeOutInMillimetresFromTheLowerLeft() {
        JointMapped fact = mapped(marked(corners(297, 210), marks(HOLES), false, Optional.empty()));
        assertThat(fact.holes())
                .isEqualTo(Map.of(
                        "h1",
                        new Point(0, 0),
                        "h2",
                        new Point(62, 0),
                        "h3",
                        new Point(62, 50.5),
                        "h4",
                        new Point(0, 50.5)));
        assertThat(fact.how()).contains("photo 01234567", "A4 on its side", "residual 0.0 mm", "lens is not removed");
    }

    @Test
    void aFaceSeenFromInsideIsMappedTheOtherWayRound() {
        JointMapped fact = mapped(marked(corners(297, 210), marks(HOLES), true, Optional.empty()));
        assertThat(fact.holes()).containsEntry("h2", new Point(0, 0));
        assertThat(fact.holes()).containsEntry("h1", new Point(62, 0));
    }

    @Test
    void aMeasuredDistanceProvesTheMapOrRefusesIt() {
        Optional<MeasuredApart> right = Optional.of(new MeasuredApart("h1", "h2", "62.1 mm"));
        assertThat(mapped(marked(corners(297, 210), marks(HOLES), false, right)).how())
                .contains("h1 to h2 is 62.0 mm by the photo and 62.1 mm measured, 0.1 mm apart");
        Optional<MeasuredApart> wrong = Optional.of(new MeasuredApart("h1", "h2", "58 mm"));
        assertThat(refused(marked(corners(297, 210), marks(HOLES), false, wrong)))
                .contains("4.0 mm apart", "level with the face");
        Optional<MeasuredApart> none = Optional.of(new MeasuredApart("h1", "h1", "58 mm"));
        assertThat(refused(marked(corners(297, 210), marks(HOLES), false, none)))
                .contains("Choose two marked holes");
    }

    @Test
    void cornersInTheWrongOrderInLineOrTheOtherWayAreRefusedInWords() {
        List<Pixel> right = corners(297, 210);
        assertThat(refused(marked(
                        List.of(right.get(0), right.get(1), right.get(3), right.get(2)),
                        marks(HOLES),
                        false,
                        Optional.empty())))
                .contains("crosswise", "in this order");
        assertThat(refused(marked(
                        List.of(right.get(1), right.get(0), right.get(3), right.get(2)),
                        marks(HOLES),
                        false,
                        Optional.empty())))
                .contains("wrong way round");
        Pixel middle = new Pixel(
                (right.get(0).across() + right.get(2).across()) / 2,
                (right.get(0).down() + right.get(2).down()) / 2);
        assertThat(refused(marked(
                        List.of(right.get(0), middle, right.get(2), right.get(3)),
                        marks(HOLES),
                        false,
                        Optional.empty())))
                .contains("in line");
        assertThat(refused(marked(corners(148, 297), marks(HOLES), false, Optional.empty())))
                .contains("lying the other way");
        assertThat(refused(marked(right.subList(0, 3), marks(HOLES), false, Optional.empty())))
                .contains("four corners");
    }

    @Test
    void everyHoleOfTheBookMustBeMarked() {
        Map<String, Pixel> some = marks(HOLES);
        some.remove("h3");
        assertThat(refused(marked(corners(297, 210), some, false, Optional.empty())))
                .contains("Not marked yet: h3.");
        assertThat(refused(marked(corners(297, 210), Map.of(), false, Optional.empty())))
                .contains("No hole is marked");
    }

    @Test
    void aSheetIsKnownByNameOrSize() {
        assertThat(SheetOfPaper.of("a5 upright"))
                .hasValueSatisfying(sheet -> assertThat(sheet.widthMm()).isEqualTo(148));
        assertThat(SheetOfPaper.of("120,5 x 80 mm"))
                .hasValueSatisfying(sheet -> assertThat(sheet.widthMm()).isEqualTo(120.5));
        for (String no : List.of("", "A9", "0 x 10", "1 x 1", "99999 x 5", "1..2 x 3", "-5 x 80")) {
            assertThat(SheetOfPaper.of(no)).as(no).isEmpty();
        }
    }
}
