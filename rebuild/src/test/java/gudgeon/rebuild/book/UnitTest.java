package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How a person reads a value beside its doubt. */
class UnitTest {
    @Test
    void aValueIsShownToThePlacesOfItsDoubt() {
        assertThat(Unit.MM.figure(0.15, 0.009)).isEqualTo("0.150 ± 0.009 mm");
        assertThat(Unit.DEGREES.figure(82, 0.5)).isEqualTo("82.0 ± 0.5°");
        assertThat(Unit.MM.figure(50, 2)).isEqualTo("50 ± 2 mm");
    }

    @Test
    void noPlaceOfTheValueIsLostToACoarserDoubt() {
        assertThat(Unit.MM.figure(50.064, 0.1)).isEqualTo("50.064 ± 0.1 mm");
    }
}
