package gudgeon.rebuild.source;

import static gudgeon.rebuild.source.Bench.FIRST;
import static gudgeon.rebuild.source.Bench.together;
import static gudgeon.rebuild.source.Bench.told;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.source.OrderLine.State;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was ordered and what came of it. */
class ArrivalsTest {
    private static Fact ordered(Optional<Days> days, Optional<LocalDate> promised) {
        return new Ordered(
                "A", "clips", "", Optional.empty(), 2, "Low Quay Workshop", "1 EUR", days, promised, Map.of());
    }

    private static OrderLine only(Build build, LocalDate today) {
        List<OrderLine> lines = Arrivals.of(build, today).lines();
        assertThat(lines).hasSize(1);
        return lines.get(0);
    }

    @Test
    void anOrderIsLateTheDayAfterTheLastThatWasReckonedWith() {
        Build build = told(together(), ordered(Optional.of(new Days(3, 5, 10)), Optional.empty()));
        LocalDate due = FIRST.plusDays(1 + 10);
        assertThat(only(build, due).state()).isEqualTo(State.ON_ITS_WAY);
        assertThat(only(build, due).sentence()).isEqualTo("circlips: 2 on the way, to be here by " + due + ".");
        assertThat(only(build, due.plusDays(1)).state()).isEqualTo(State.LATE);
        Build promised = told(together(), ordered(Optional.of(new Days(3, 5, 10)), Optional.of(FIRST.plusDays(4))));
        assertThat(only(promised, FIRST.plusDays(5)).state()).isEqualTo(State.LATE);
        Build notSaid = told(together(), ordered(Optional.empty(), Optional.empty()));
        assertThat(only(notSaid, FIRST.plusYears(1)).state()).isEqualTo(State.ON_ITS_WAY);
    }

    @Test
    void whatCameIsCountedAgainstWhatWasOrdered() {
        Build one =
                told(together(), ordered(Optional.empty(), Optional.empty()), new Arrived("A", "clips", 1, "torn bag"));
        assertThat(only(one, FIRST).state()).isEqualTo(State.SHORT);
        assertThat(only(one, FIRST).sentence()).isEqualTo("circlips: 1 of 2 came; 1 short.");
        assertThat(only(told(one, new Arrived("A", "clips", 1, "")), FIRST).state())
                .isEqualTo(State.COME);
        assertThat(only(told(one, new Arrived("A", "clips", 2, "")), FIRST).state())
                .isEqualTo(State.TOO_MANY);
        assertThat(only(told(one, new Arrived("", "clips", 1, "")), FIRST).state())
                .as("an arrival without the order's name")
                .isEqualTo(State.COME);
        assertThat(only(told(one, new Returned("A", "clips", "", 1, "bent", "")), FIRST)
                        .returned())
                .isEqualTo(1);
    }

    @Test
    void whatNobodyOrderedSaysSo() {
        Build build = told(
                together(),
                ordered(Optional.empty(), Optional.empty()),
                new Arrived("A", "clips", 2, ""),
                new Arrived("A", "head", 1, ""));
        List<OrderLine> lines = Arrivals.of(build, FIRST).of("A");
        assertThat(lines).extracting(OrderLine::state).containsExactly(State.COME, State.NOT_ORDERED);
        assertThat(lines.get(1).sentence()).isEqualTo("head: 1 came and none was ordered by that name.");
    }
}
