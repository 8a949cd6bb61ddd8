package gudgeon.mechanics.limits;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Boundary dimensions of rolling bearings, ISO 15:2017, for bores of 3 to 100 mm: a line for each bore, a column for each series of
 * single-row deep groove ball bearings, outside diameter and width in each cell. Entered from memory of bearing tables and checked
 * where {@code BearingTest} says. The series are the standard's dimension series 18, 19, 00, 10, 02, 03 and 04.
 */
final class BearingSizes {
    private static final String TABLE = """
            bore 618    619    160    60     62     63     64
            3    .      .      .      .      10x4   13x5   .
            4    .      .      .      12x4   13x5   16x5   .
            5    .      .      .      14x5   16x5   19x6   .
            6    .      .      .      17x6   19x6   22x7   .
            7    .      .      .      19x6   22x7   26x9   .
            8    .      .      .      22x7   24x8   28x9   .
            9    .      .      .      24x7   26x8   30x10  .
            10   19x5   22x6   .      26x8   30x9   35x11  .
            12   21x5   24x6   28x7   28x8   32x10  37x12  .
            15   24x5   28x7   32x8   32x9   35x11  42x13  .
            17   26x5   30x7   35x8   35x10  40x12  47x14  62x17
            20   32x7   37x9   42x8   42x12  47x14  52x15  72x19
            22   .      .      .      44x12  50x14  56x16  .
            25   37x7   42x9   47x8   47x12  52x15  62x17  80x21
            28   .      .      .      52x12  58x16  68x18  .
            30   42x7   47x9   55x9   55x13  62x16  72x19  90x23
            32   .      .      .      58x13  65x17  75x20  .
            35   47x7   55x10  62x9   62x14  72x17  80x21  100x25
            40   52x7   62x12  68x9   68x15  80x18  90x23  110x27
            45   58x7   68x12  75x10  75x16  85x19  100x25 120x29
            50   65x7   72x12  80x10  80x16  90x20  110x27 130x31
            55   72x9   80x13  90x11  90x18  100x21 120x29 140x33
            60   78x10  85x13  95x11  95x18  110x22 130x31 150x35
            65   85x10  90x13  100x11 100x18 120x23 140x33 160x37
            70   90x10  100x16 110x13 110x20 125x24 150x35 180x42
            75   95x10  105x16 115x13 115x20 130x25 160x37 190x45
            80   100x10 110x16 125x14 125x22 140x26 170x39 200x48
            85   110x13 120x18 130x14 130x22 150x28 180x41 210x52
            90   115x13 125x18 140x16 140x24 160x30 190x43 225x54
            95   120x13 130x18 145x16 145x24 170x32 200x45 .
            100  125x13 140x20 150x16 150x24 180x34 215x47 .
            """;

    private static final List<List<String>> LINES =
            TABLE.lines().map(line -> Arrays.asList(line.split(" +"))).toList();

    /** Outside diameter and width, mm. */
    record Envelope(int outsideMm, int widthMm) {}

    private BearingSizes() {}

    static boolean hasSeries(String series) {
        return LINES.get(0).indexOf(series) > 0;
    }

    /** The series held. */
    static List<String> series() {
        return LINES.get(0).subList(1, LINES.get(0).size());
    }

    /** The envelope of a series at a bore, mm; empty where the tables have none. */
    static Optional<Envelope> envelope(String series, int boreMm) {
        int column = LINES.get(0).indexOf(series);
        return LINES.stream()
                .skip(1)
                .filter(line -> line.get(0).equals(Integer.toString(boreMm)))
                .map(line -> line.get(column))
                .filter(cell -> !cell.equals("."))
                .map(cell -> cell.split("x"))
                .map(cell -> new Envelope(Integer.parseInt(cell[0]), Integer.parseInt(cell[1])))
                .findFirst();
    }
}
