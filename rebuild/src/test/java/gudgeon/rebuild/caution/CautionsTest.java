package gudgeon.rebuild.caution;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.caution.Cautions.Caution;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CautionsTest {
    static Stream<Named<Structure>> structures() throws IOException {
        String tarn = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        BookReading.Read read = (BookReading.Read) new EngineBookReader().read(tarn);
        return Stream.concat(
                Stream.of(Archetype.values())
                        .map(archetype ->
                                Named.of(archetype.id(), archetype.book().structure())),
                Stream.of(Named.of("tarn-98", read.book().structure())));
    }

    @ParameterizedTest
    @MethodSource("structures")
    void everyCautionOfEveryStepAndCheckIsCollectedOnceWithAllItsPlaces(Structure structure) {
        List<Caution> all = Cautions.of(structure).groups().stream()
                .flatMap(group -> group.cautions().stream())
                .toList();
        assertThat(all.stream().map(Caution::text)).doesNotHaveDuplicates();
        long places = structure.steps().stream()
                        .mapToLong(step -> step.cautions().size())
                        .sum()
                + structure.checks().stream()
                        .mapToLong(check -> check.cautions().size())
                        .sum();
        assertThat(all.stream().mapToLong(caution -> caution.at().size()).sum()).isEqualTo(places);
        for (Caution caution : all) {
            assertThat(caution.at()).allMatch(id -> Cautions.at(structure, id).contains(caution.text()));
        }
    }

    @ParameterizedTest
    @MethodSource("structures")
    void whatIsUnderNoKindHurtsTheEngineAndNotThePerson(Structure structure) {
        assertThat(Cautions.of(structure).groups())
                .extracting(Cautions.Group::hazard)
                .isSorted();
        assertThat(Cautions.of(structure).groups())
                .filteredOn(group -> group.hazard() == Hazard.OTHER)
                .flatMap(Cautions.Group::cautions)
                .hasSizeLessThanOrEqualTo(3)
                .extracting(Caution::text)
                .noneMatch(text -> text.matches("(?i).*(eye|face|glove|burn|hand|skin|lung|kill).*"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Old linings may hold asbestos. No blowing out, no sanding, wipe them wet and bag the rag. | ASBESTOS",
                "Exhaust gas kills in minutes, even with a door open. Start it outdoors only. | GAS",
                "Petrol and a hot exhaust. Wipe up spills and let vapour clear before you kick. | FIRE",
                "Compressed air - goggles, guarded nozzle, nobody opposite the hole. | AIR",
                "A compressed spring throws collets hard. Wear eye protection. | SPRING",
                "Let it go cold first. Hot fins and pipes burn. | HEAT",
                "A kick-back hurts a knee. Timing proved, thumb beside the grip, foot ready. | RUNNING",
                "Keep fingers out of the gears. | CRUSHED",
                "Ring ends are sharp. | SHARP",
                "Used oil is bad for the skin. Gloves, and it goes to the oil bank. | OIL",
                "Mind the cat. | OTHER"
            })
    void aCautionIsOfTheGravestKindThatItNames(String caution, Hazard hazard) {
        assertThat(Hazard.of(caution)).isEqualTo(hazard);
    }

    @Test
    void theMakerComesFirstAndNothingIsACertificate() {
        assertThat(MakerFirst.sentences().get(0)).contains("maker's manual").contains("rules of the place");
        assertThat(String.join(" ", MakerFirst.sentences())).contains("no certificate", "licensed");
    }
}
