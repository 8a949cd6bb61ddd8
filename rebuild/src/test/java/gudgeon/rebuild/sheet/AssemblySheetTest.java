package gudgeon.rebuild.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A sheet leaves nothing of the book out, and says it where a hand needs it. */
class AssemblySheetTest {
    private static Act act(AssemblySheet sheet, String id) {
        return sheet.acts().stream()
                .filter(act -> act.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> lines(Act act, String heading) {
        return act.passages().stream()
                .filter(passage -> passage.heading().equals(heading))
                .flatMap(passage -> passage.lines().stream())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Archetype.class)
    void everyStepCheckPartAndSizeIsThereOnce(Archetype archetype) {
        EngineBook book = archetype.book();
        AssemblySheet sheet = AssemblySheet.of(book);
        assertThat(sheet.acts())
                .hasSize(book.structure().steps().size()
                        + book.structure().checks().size());
        assertThat(sheet.acts()).extracting(Act::id).doesNotHaveDuplicates();
        assertThat(sheet.acts().stream()
                        .mapToInt(act -> lines(act, "parts").size())
                        .sum())
                .isEqualTo(book.structure().positions().size());
        assertThat(sheet.sizes().stream().mapToInt(part -> part.lines().size()).sum())
                .isEqualTo(book.structure().dimensions().size());
        for (int i = 0; i < sheet.acts().size(); i++) {
            assertThat(sheet.acts().get(i).number()).isEqualTo(i + 1);
        }
    }

    @ParameterizedTest
    @EnumSource(Archetype.class)
    void aHoldPointStandsBeforeWhatItHoldsAndAPartBeforeWhatCoversIt(Archetype archetype) {
        EngineBook book = archetype.book();
        Set<String> done = new HashSet<>();
        for (Act act : AssemblySheet.of(book).acts()) {
            book.structure()
                    .checksHolding(act.id())
                    .forEach(check -> assertThat(done).as("before %s", act.id()).contains(check.id()));
            book.structure()
                    .step(act.id())
                    .ifPresent(step -> step.covers().stream()
                            .flatMap(position -> book.structure().stepFitting(position).stream())
                            .filter(fitting -> !fitting.equals(step))
                            .forEach(fitting ->
                                    assertThat(done).as("under %s", act.id()).contains(fitting.id())));
            done.add(act.id());
        }
    }

    @Test
    void aStepSaysItsPartsHowManyWhichWayRoundAndWhetherNew() {
        EngineBook book = Archetype.LYING_OVERHEAD_CAM_SINGLE.book();
        AssemblySheet sheet = AssemblySheet.of(book);
        Act piston = act(sheet, "fit-piston");
        Position circlips = book.structure().position("gudgeon-circlips").orElseThrow();
        assertThat(piston.kind()).isEqualTo(Act.Kind.STEP);
        assertThat(piston.cautions()).isNotEmpty();
        assertThat(lines(piston, "parts"))
                .anySatisfy(line ->
                        assertThat(line).startsWith("2 x " + circlips.name()).contains("always new"));
        assertThat(lines(piston, "tools").get(0)).contains("circlip pliers");
        assertThat(lines(piston, "time").get(0)).startsWith("about ");
    }

    @Test
    void aHoldPointSaysWhatItHoldsAndWhatItProves() {
        AssemblySheet sheet = AssemblySheet.of(Archetype.LYING_OVERHEAD_CAM_SINGLE.book());
        Act gears = act(sheet, "gears-by-hand");
        assertThat(gears.kind()).isEqualTo(Act.Kind.HOLD_POINT);
        assertThat(lines(gears, "holds").get(0))
                .contains(act(sheet, "close-case").name());
        assertThat(lines(gears, "how").get(0)).isEqualTo("Tried by hand.");
        assertThat(lines(gears, "proves")).hasSize(1);
        assertThat(lines(act(sheet, "oilways-proved"), "void by").get(0)).contains("blasting");
    }

    @Test
    void archetypesAreFoundByTheirId() {
        assertThat(Archetype.of("side-valve-stationary")).contains(Archetype.SIDE_VALVE_STATIONARY);
        assertThat(Archetype.of("nothing")).isEmpty();
    }

    @Test
    void aSizeSaysWhereItIsMeasuredAndWhatItFollowsFrom() {
        List<Passage> sizes =
                AssemblySheet.of(Archetype.LYING_OVERHEAD_CAM_SINGLE.book()).sizes();
        assertThat(sizes.stream().flatMap(part -> part.lines().stream()))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("Bore. ")
                        .contains(
                                "Places: top of the rings' travel, middle, bottom; each along the pin, across the pin.")
                        .contains("With bore gauge set with a micrometer."))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("Clearance of the piston in the bore.")
                        .contains("Follows from: bore; piston skirt."));
    }
}
