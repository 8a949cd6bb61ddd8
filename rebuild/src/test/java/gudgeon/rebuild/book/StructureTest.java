package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What follows from a book's second part. */
class StructureTest {
    private static final String TEXT = """
            book: 1
            engine: {name: Tarn 98}
            positions:
              - {id: clips, name: circlips}
              - {id: piston, name: piston}
              - {id: barrel, name: barrel}
              - {id: head, name: head}
              - {id: fan, name: fan}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston, clips]}
              - {id: fit-barrel, name: Fit the barrel, fits: [barrel], covers: [piston, clips]}
              - {id: fit-head, name: Fit the head, fits: [head], into: [barrel], covers: [barrel]}
              - {id: fit-fan, name: Fit the fan, fits: [fan], needs: [fit-piston]}
            checks:
              - {id: turns, name: Two turns, how: tried, clears: [fit-piston], with: [head], late: All of it turns.}
              - {id: clips-seen, name: Circlips seen, how: seen, clears: [clips], holds: [fit-fan]}
              - {id: weighed, name: Piston weighed, how: measured, clears: [piston], holds: [fit-piston]}
            """;

    private final Structure structure = structure();

    private static Structure structure() {
        BookReading reading = new EngineBookReader().read(TEXT);
        assertThat(Books.sentences(reading)).isEmpty();
        return ((BookReading.Read) reading).book().structure();
    }

    private static List<String> ids(List<Step> steps) {
        return steps.stream().map(Step::id).toList();
    }

    @Test
    void coverIsFollowedOutwards() {
        assertThat(ids(structure.stepsCovering("clips"))).containsExactly("fit-barrel");
        assertThat(ids(structure.allCovering("clips"))).containsExactly("fit-barrel", "fit-head");
        assertThat(structure.allCovering("fan")).isEmpty();
        assertThat(structure.allCovering("nothing")).isEmpty();
    }

    @Test
    void whatDoesNotStandCoversNothing() {
        assertThat(ids(Cover.of(structure, List.of("piston"), step -> !step.id().equals("fit-head"))))
                .containsExactly("fit-barrel");
        // with the barrel off, the head covers nothing of the piston
        assertThat(Cover.of(structure, List.of("piston"), step -> step.id().equals("fit-head")))
                .isEmpty();
    }

    @Test
    void theOrderFollowsWithChecksAsEarlyAsTheyCanBe() {
        assertThat(structure.precedence().order())
                .containsExactly("weighed", "fit-piston", "clips-seen", "fit-barrel", "fit-head", "turns", "fit-fan");
    }

    @Test
    void whyOneThingComesBeforeAnotherIsAPath() {
        Precedence precedence = structure.precedence();
        assertThat(precedence.path("fit-piston", "turns")).contains(List.of("fit-piston", "turns"));
        assertThat(precedence.path("weighed", "fit-head")).contains(List.of("weighed", "fit-barrel", "fit-head"));
        assertThat(precedence.path("fit-fan", "fit-head")).isEmpty();
        assertThat(precedence.allBefore("fit-fan")).containsExactlyInAnyOrder("fit-piston", "clips-seen", "weighed");
        assertThat(precedence.allAfter("fit-head")).containsExactly("turns");
        assertThat(precedence.before("nothing")).isEmpty();
    }

    @Test
    void everythingIsFoundByItsIdAndCalledByItsName() {
        assertThat(structure.name("clips")).isEqualTo("circlips");
        assertThat(structure.name("fit-head")).isEqualTo("Fit the head");
        assertThat(structure.name("turns")).isEqualTo("Two turns");
        assertThat(structure.name("nothing")).isEqualTo("nothing");
        assertThat(structure.stepFitting("clips")).map(Step::id).contains("fit-piston");
        assertThat(structure.checksHolding("fit-fan")).extracting(Check::id).containsExactly("clips-seen");
        assertThat(structure.positionsOf("fit-piston")).containsExactly("piston", "clips");
        assertThat(structure.positionsOf("clips")).containsExactly("clips");
        assertThat(Structure.none().isEmpty()).isTrue();
        assertThat(Structure.none().precedence().order()).isEmpty();
    }
}
