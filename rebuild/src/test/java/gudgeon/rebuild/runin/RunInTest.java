package gudgeon.rebuild.runin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartSigned;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RunInTest {
    private static final EngineBook TARN = tarn();
    private static final List<Fact> STARTED = List.of(
            new Fact.Started("Tarn", "", Found.TOGETHER),
            new Fact.CheckPassed("valve-clearance", "0.05 mm", ""),
            new Fact.CheckPassed("oil-in", "", ""),
            new Fact.CheckPassed("oil-seen", "", ""),
            new Fact.CheckPassed("ready-to-start", "", ""),
            new StartSigned("the fitter", List.of(), ""),
            new Fact.StepBegun("first-start"),
            new Fact.StepDone("first-start", ""));

    private static EngineBook tarn() {
        try {
            String text = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
            return ((BookReading.Read) new EngineBookReader().read(text)).book();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Build started(Fact... more) {
        return Build.of(TARN)
                .asIf(Stream.concat(STARTED.stream(), Stream.of(more)).toList());
    }

    private static Fact ran(String stage, int minutes, boolean cooled) {
        return new RanIn(stage, minutes, cooled, "");
    }

    private static List<String> due(Build build) {
        return RunIn.of(build).due().stream().map(Work::id).toList();
    }

    @Test
    void nothingIsRunInBeforeItWasStarted() {
        Build found = Build.of(TARN).asIf(List.of(new Fact.Started("Tarn", "", Found.IN_PIECES)));
        assertThat(RunIn.of(found).started()).isFalse();
        assertThat(Refusals.of(found, ran("first-heat", 5, true)))
                .singleElement()
                .asString()
                .contains("not begun");
    }

    @Test
    void aStageIsOverAfterItsTimeAndItsHeats() {
        RunIn hot = RunIn.of(started(ran("first-heat", 5, false)));
        assertThat(hot.now().orElseThrow().stage().id()).isEqualTo("first-heat");
        RunIn cold = RunIn.of(started(ran("first-heat", 5, false), ran("first-heat", 1, true)));
        assertThat(cold.now().orElseThrow().stage().id()).isEqualTo("short-runs");
    }

    @Test
    void whatIsDoneAfterTheFirstHeatComesBackUntilItIsDone() {
        Build once = started(ran("first-heat", 5, true));
        assertThat(due(once)).containsExactly("retighten-head", "clearance-after-heat", "no-leaks");
        Build again = once.asIf(List.of(
                new Fact.StepBegun("retighten-head"),
                new Fact.StepDone("retighten-head", ""),
                new Fact.CheckPassed("clearance-after-heat", "0.05 mm", "")));
        assertThat(due(again)).containsExactly("no-leaks");
    }

    @Test
    void clearanceAndOilComeBackAtTheirHours() {
        Build later = started(
                ran("first-heat", 5, true),
                new Fact.StepDone("retighten-head", ""),
                new Fact.CheckPassed("clearance-after-heat", "0.05 mm", ""),
                new Fact.CheckPassed("no-leaks", "", ""),
                ran("short-runs", 30, true),
                ran("short-runs", 1, true),
                ran("short-runs", 1, true),
                new FluidChanged("engine-oil", ""),
                ran("half-load", 240, false));
        assertThat(due(later)).containsExactly("clearance-after-heat", "engine-oil");
        assertThat(due(later.asIf(List.of(new FluidChanged("engine-oil", "clean")))))
                .containsExactly("clearance-after-heat");
    }

    @Test
    void whoRunsOnOverWhatIsDueIsWarned() {
        Build on = started(ran("first-heat", 5, true), ran("short-runs", 10, true));
        assertThat(Alarms.of(on))
                .filteredOn(alarm -> alarm.kind().key().equals("ran-on"))
                .extracting(alarm -> alarm.at())
                .containsExactly("retighten-head", "clearance-after-heat", "no-leaks");
    }

    @Test
    void aTopEndTakenOffIsRunInAnew() {
        Build run = started(ran("first-heat", 5, true));
        assertThat(RunIn.of(run).runs()).hasSize(1);
        Build off = run.asIf(List.of(new Fact.Undone("fit-barrel", "It smokes.", List.of())));
        assertThat(RunIn.of(off).started()).isFalse();
        assertThat(RunIn.of(off).runs()).isEmpty();
    }

    /** 50 mm at 5 m/s: 3000/min, by 2 s n / 60 (Heywood, eq. 2.9). */
    @Test
    void theSpeedLimitFollowsFromTheStroke() {
        StageNow runs = RunIn.of(started()).stages().get(1);
        assertThat(runs.mostRpm()).hasValue(3000);
        assertThat(runs.limits()).startsWith("No more than 3000/min (mean piston speed 5.0 m/s, 984 ft/min).");
        StageNow first = RunIn.of(started()).stages().get(0);
        assertThat(first.pistonSpeedMPerS().orElseThrow()).isCloseTo(5, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Archetype.class)
    void aBookWithoutASchemeGetsCommonPracticeAndIsToldSo(Archetype archetype) {
        RunIn common = RunIn.of(Build.of(archetype.book()));
        assertThat(common.own()).isFalse();
        assertThat(common.scheme().source()).contains("Common practice, no source", "maker's scheme");
        assertThat(common.stages().get(0).stage().then()).contains("head-joint", "clearance-after-heat");
        assertThat(common.stages().get(1).stage().then()).contains("engine-oil");
        assertThat(common.stages().get(1).mostRpm()).isEmpty();
        assertThat(common.stages().get(1).limits()).contains("no stroke");
        assertThat(common.stages())
                .extracting(stage -> stage.stage().pistonSpeedMPerS().orElseThrow())
                .isSorted();
    }

    @Test
    void anUnknownStageOrFluidIsRefused() {
        assertThat(Refusals.of(started(), ran("warp", 5, true)))
                .singleElement()
                .asString()
                .contains("no stage 'warp'");
        assertThat(Refusals.of(started(), new FluidChanged("brake-fluid", "")))
                .singleElement()
                .asString()
                .contains("no fluid 'brake-fluid'");
    }
}
