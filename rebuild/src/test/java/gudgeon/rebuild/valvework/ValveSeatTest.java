package gudgeon.rebuild.valvework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.bore.Worn;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ValveSeatTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: head, name: cylinder head}
              - {id: valve-seats, name: valve seats}
              - {id: exhaust-valve, name: exhaust valve}
            steps:
              - {id: fit-valve, name: Fit the valve, fits: [exhaust-valve]}
            dimensions:
              - {id: exhaust-seat-width, name: width of the exhaust seat, of: valve-seats, at-least: 0.8, at-most: 1.8}
              - id: exhaust-stem-height
                name: stem height
                of: valve-seats
                new: {at-least: 30.5, at-most: 30.7}
                at-most: 31.3
              - {id: exhaust-head, name: head of the exhaust valve, of: exhaust-valve}
              - {id: exhaust-face-width, name: face, of: exhaust-valve}
              - {id: exhaust-seat-outside, name: outside of the seat, of: valve-seats}
            """;

    private static Build build(Fact... facts) {
        return Worn.build(BOOK, facts);
    }

    private static Fact read(String what, double mm) {
        return Worn.reading("exhaust-" + what, "", "", mm);
    }

    private static ValveSeat seat(Build build) {
        List<ValveSeat> seats = ValveSeat.all(build);
        assertThat(seats).hasSize(1);
        return seats.get(0);
    }

    private static List<String> proposed(Build build) {
        return SeatWays.of(build, seat(build)).stream()
                .map(way -> way.drawn().option())
                .toList();
    }

    @Test
    void nothingMeasuredSaysNothing() {
        assertThat(seat(build()).sentences()).isEmpty();
        assertThat(seat(build()).needsWork()).isFalse();
    }

    @Test
    void widthAndSinkingAreJudgedByTheBook() {
        ValveSeat seat = seat(build(read("seat-width", 1.9), read("stem-height", 31.1)));
        assertThat(seat.needsWork()).isTrue();
        assertThat(seat.sunkMm().orElseThrow().value()).isEqualTo(0.5, within(1e-9));
        assertThat(seat.mayRiseMm().orElseThrow()).isEqualTo(0.2, within(1e-9));
        assertThat(seat.sentences())
                .anyMatch(line -> line.equals("The width of the exhaust seat is 1.90 mm, outside 0.8 mm to 1.8 mm."))
                .anyMatch(line -> line.startsWith("The exhaust valve has sunk 0.50 ±"))
                .anyMatch(line -> line.equals("By the book's limit it may sink 0.20 mm more."));
    }

    @Test
    void theLastReadingCounts() {
        assertThat(seat(build(read("seat-width", 1.9), read("seat-width", 1.2))).needsWork())
                .isFalse();
    }

    @Test
    void withoutTheBooksRangeItSinksFromTheFirstReading() {
        String open = BOOK.replace("    new: {at-least: 30.5, at-most: 30.7}\n", "");
        ValveSeat seat = seat(Worn.build(open, read("stem-height", 30.6), read("stem-height", 31.0)));
        assertThat(seat.sunkMm().orElseThrow().value()).isEqualTo(0.4, within(1e-9));
        assertThat(seat(Worn.build(open, read("stem-height", 30.6))).sunkMm()).isEmpty();
    }

    /** Head 20, seat 1 mm wide out to 19.5: (20 - 19.5) / 2 / cos 45 = 0.354 mm bare outside. */
    @Test
    void whereItLandsIsSaid() {
        Build build = build(read("head", 20), read("face-width", 2), read("seat-width", 1), read("seat-outside", 19.5));
        assertThat(seat(build).sentences())
                .anyMatch(line -> line.equals(
                        "It lands 0.35 mm from the outer and 0.65 mm from the inner edge of the valve's face."));
        Build past = build(read("head", 19), read("face-width", 2), read("seat-width", 1), read("seat-outside", 19.5));
        assertThat(seat(past).needsWork()).isTrue();
        assertThat(seat(past).sentences()).anyMatch(line -> line.contains("reaches past the edge"));
    }

    @Test
    void aSoundSeatMayBeLeft() {
        assertThat(proposed(build(read("seat-width", 1.2), read("stem-height", 30.6))))
                .containsExactly(
                        "recut exhaust valve",
                        "other-valve exhaust valve",
                        "seat-ring exhaust valve",
                        "used-head exhaust valve",
                        "leave exhaust valve");
    }

    @Test
    void oneThatIsSunkAsFarAsItMayIsNotCutAgain() {
        assertThat(proposed(build(read("seat-width", 1.9), read("stem-height", 31.25))))
                .containsExactly("other-valve exhaust valve", "seat-ring exhaust valve", "used-head exhaust valve");
    }

    /** Sunk 0.5 mm, so on a 45 degree seat a head 1 mm wider stands where the old one stood. */
    @Test
    void aWiderHeadIsGivenItsSize() {
        Build build = build(read("head", 20), read("seat-width", 1.9), read("stem-height", 31.1));
        OptionLine line = SeatWays.of(build, seat(build)).get(1).lines().get(0);
        assertThat(line.position()).isEqualTo("exhaust-valve");
        assertThat(line.sizes()).isEqualTo(Map.of("exhaust-head", "21.00 mm"));
        assertThat(line.option()).isEqualTo("other-valve exhaust valve");
    }

    @Test
    void cuttingWidensAsTheConesSay() {
        // 0.1 mm in: (1/(1 - tan 30) + 1/(tan 60 - 1)) * 0.1 / cos 45 = 0.53 mm
        Build build = build(read("seat-width", 1.2));
        assertThat(SeatWays.of(build, seat(build)).get(0).drawn().why()).contains("by 0.53 mm");
    }

    /** (20 - 18.8) / 2 / cos 45 = 0.849 along the slope, less 0.3 bare outside and 0.3 / cos 45 = 0.424 inside: 0.12 mm. */
    @Test
    void aHeadTooSmallForItsThroatIsNotCutAgain() {
        String throat = BOOK + "  - {id: exhaust-throat, name: throat, of: valve-seats}\n";
        Build small = Worn.build(throat, read("head", 20), read("throat", 18.8), read("seat-width", 1.0));
        assertThat(seat(small).isTooSmall()).isTrue();
        assertThat(seat(small).sentences()).anyMatch(line -> line.contains("room for a seat 0.12 mm wide"));
        assertThat(proposed(small)).doesNotContain("recut exhaust valve", "leave exhaust valve");
        Build wide = Worn.build(throat, read("head", 20), read("throat", 17), read("seat-width", 1.0));
        assertThat(seat(wide).isTooSmall()).isFalse();
        assertThat(proposed(wide)).contains("recut exhaust valve", "leave exhaust valve");
    }
}
