package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What does not hold together in a book's dimensions, and in the seats of its parts, is told. */
class DimensionFaultsTest {
    private static final String SOUND = """
            book: 1
            engine: {name: Tarn 98}
            positions:
              - {id: barrel, name: barrel, sizes: cylinder}
              - {id: piston, name: piston}
            steps:
              - {id: fit-barrel, name: Fit the barrel, fits: [piston, barrel]}
            dimensions:
              - id: bore
                name: bore
                of: barrel
                key: bore
                heights: [top, bottom]
                axes: [along the pin, across the pin]
                usual: {at-least: 30, at-most: 90}
                new: {at-least: 50.000, at-most: 50.015}
                at-most: 50.060
              - {id: skirt, name: skirt, of: piston}
              - {id: gap, name: gap, of: piston, derived: {as: clearance, of: [bore, skirt]}}
              - {id: oval, name: oval, of: barrel, derived: {as: ovality, of: [bore]}}
              - {id: cone, name: cone, of: barrel, derived: {as: taper, of: [bore]}}
            """;

    private static List<String> told(String right, String wrong) {
        assertThat(SOUND).contains(right);
        return Books.sentences(new EngineBookReader().read(SOUND.replace(right, wrong)));
    }

    @Test
    void aSoundOneIsReadWithoutAWord() {
        assertThat(told("bore", "bore")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            of: [bore, skirt]          | of: [gap, skirt]           | dimensions.gap: It is worked out of itself.
            as: ovality, of: [bore]    | as: difference, of: [gap, oval] | dimensions.oval: It is worked out of itself.
            name: skirt, of: piston    | name: skirt, of: piston, unit: N | dimensions.gap: It is in mm and follows from 'skirt' in N.
            axes: [along the pin, across the pin] | axes: [along the pin] | dimensions.oval: Its ovality needs two axes, and 'bore' is measured on fewer.
            heights: [top, bottom]     | heights: [top]             | dimensions.cone: Its taper needs two heights, and 'bore' is measured at fewer.
            at-most: 50.060            | at-most: 50.006            | dimensions.bore: A new part of 50 mm to 50.015 mm would be beyond its service limit, at most 50.006 mm.
            at-most: 50.060            | at-most: 500.60            | dimensions.bore: Its limit, at most 500.6 mm, lies outside what is usual, 30 mm to 90 mm.
            sizes: cylinder            | note: none                 | dimensions.bore: Its key is 'bore', but 'barrel' does not say which sizes it has.
            """)
    void whatDoesNotHoldTogetherIsTold(String right, String wrong, String sentence) {
        assertThat(told(right, wrong)).anySatisfy(said -> assertThat(said).contains(sentence));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            size: 42 N7/h6   | size: 42 N7/y9z | positions.main-bearing-left.fit:
            into: aluminium  | into: alu       | positions.main-bearing-left.fit: No material is called 'alu' here. Write one of these: steel, grey iron, aluminium,
            bearing: 6004 C3 | bearing: 6203   | positions.main-bearing-left.bearing: A 6203 is 40 mm outside, and the fit is of 42 mm.
            bearing: 6004 C3 | bearing: thin   | positions.main-bearing-left.bearing:
            """)
    void aFitOrABearingThatIsNoneIsTold(String right, String wrong, String sentence) {
        assertThat(Books.sentences(new EngineBookReader().read(Books.spoilt(right, wrong))))
                .anySatisfy(said -> assertThat(said).contains(sentence));
    }

    @Test
    void aKeyThatTheFiguresDoNotHaveIsTold() {
        BookReading reading = new EngineBookReader().read(Books.spoilt("    key: land\n", "    key: lnd\n"));
        assertThat(Books.sentences(reading))
                .anySatisfy(said -> assertThat(said)
                        .contains("dimensions.land: The book's figures have no size 'lnd' at 'pistons'."));
        assertThat(reading).isInstanceOf(BookReading.Read.class);
    }
}
