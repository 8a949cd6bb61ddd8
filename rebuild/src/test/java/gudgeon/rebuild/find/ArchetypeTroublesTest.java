package gudgeon.rebuild.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Trouble;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** An engine without a figure in its book has its suspects and tests all the same. */
class ArchetypeTroublesTest {
    static Stream<Arguments> all() {
        return Arrays.stream(Archetype.values())
                .flatMap(archetype -> Arrays.stream(Trouble.values())
                        .flatMap(trouble ->
                                Arrays.stream(Found.values()).map(found -> Arguments.of(archetype, trouble, found))));
    }

    @ParameterizedTest
    @MethodSource("all")
    void isRankedWithATestToMake(Archetype archetype, Trouble trouble, Found found) {
        Build build = Build.of(archetype.book())
                .asIf(List.of(new Started("Lying single no. 12", "", found), new HuntOpened("h", trouble, "")));
        Ranking ranking = Ranking.of(build, Hunt.of(build, "h").orElseThrow());
        assertThat(ranking.ranked().stream().mapToDouble(Ranked::chance).sum()).isCloseTo(1, within(1e-9));
        assertThat(ranking.best()).isPresent();
        assertThat(ranking.next()).allSatisfy(next -> {
            for (Ranked one : ranking.ranked()) {
                double sum = next.test().answers().stream()
                        .mapToDouble(answer -> next.test().chance(answer, one.suspect()))
                        .sum();
                assertThat(sum).as(next.test().id() + ", " + one.suspect().id()).isCloseTo(1, within(1e-9));
            }
        });
    }
}
