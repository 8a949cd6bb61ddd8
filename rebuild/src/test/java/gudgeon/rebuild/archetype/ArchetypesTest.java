package gudgeon.rebuild.archetype;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Way;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The archetypes hold together, hold what a fitter expects, and warn of what can hurt. */
class ArchetypesTest {
    private static final String LYING = "lying-overhead-cam-single";
    private static final String UPRIGHT = "upright-pushrod-single";
    private static final String SIDE_VALVE = "side-valve-stationary";

    /** What can hurt, as the work itself or its tools name it, and what a caution of the same step or check must speak of. */
    private static final Map<String, String> HURTS = Map.of(
            "\\bpetrol\\b", "petrol|fire|flame|vapour",
            "compressed air|air line|blow (it|them|each|every|out)\\b|blow through the", "eye|goggle|air",
            "\\bparaffin|\\bsolvent\\b(?! leaves)|thinners|\\bdegrease\\b", "glove|flame|fire|skin|fresh air",
            "\\boven\\b|hot plate|heat gun|hot air|\\bwarm (it|the)\\b", "hot|burn|glove|heat",
            "circlip pliers|spring compressor", "eye|goggle|fly|spring",
            "\\bthen start\\b|let it run|kick (it|until)|with the handle",
                    "turn|kick|hot|fingers|hand|clear|petrol|blow");

    /** What every archetype warns of somewhere. */
    private static final List<String> WARNED_OF = List.of(
            "asbestos",
            "\\bblast",
            "no flame",
            "petrol",
            "compressed air",
            "burn|hot|warm",
            "spring|circlip",
            "goggles",
            "fingers");

    private static EngineBook read(String archetype) {
        BookReading reading = new EngineBookReader()
                .read(Archetype.of(archetype).orElseThrow().text());
        assertThat(reading.faults()).isEmpty();
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        return ((BookReading.Read) reading).book();
    }

    @Test
    void everyBookInTheProgramCanBeChosen() throws IOException {
        Path folder = Path.of("src", "main", "resources", "gudgeon", "rebuild", "archetype");
        try (Stream<Path> books = Files.list(folder)) {
            assertThat(books.map(book -> book.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(Stream.of(Archetype.values())
                            .map(archetype -> archetype.id() + ".yaml")
                            .toList());
        }
        assertThat(Archetype.of("nothing")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({LYING + ",120,60,30,40", UPRIGHT + ",90,45,25,35", SIDE_VALVE + ",70,35,20,30"})
    void readsWithoutFaultOrDoubtAndIsWhole(String archetype, int positions, int steps, int checks, int dimensions) {
        EngineBook book = read(archetype);
        assertThat(book.geometry()).isEmpty();
        Structure structure = book.structure();
        assertThat(structure.positions()).hasSizeGreaterThanOrEqualTo(positions);
        assertThat(structure.steps()).hasSizeGreaterThanOrEqualTo(steps);
        assertThat(structure.checks()).hasSizeGreaterThanOrEqualTo(checks);
        assertThat(structure.dimensions()).hasSizeGreaterThanOrEqualTo(dimensions);
        assertThat(structure.precedence().order())
                .hasSize(structure.steps().size() + structure.checks().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void everythingSaysHowItIsDone(String archetype) {
        Structure structure = read(archetype).structure();
        assertThat(structure.steps()).allSatisfy(step -> {
            assertThat(step.instructions()).as(step.id()).isNotEmpty();
            assertThat(step.minutes()).as(step.id()).isPositive();
        });
        assertThat(structure.checks()).allSatisfy(check -> {
            assertThat(check.instructions()).as(check.id()).isNotEmpty();
            assertThat(check.minutes()).as(check.id()).isPositive();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void noCheckComesLateWithoutNeed(String archetype) {
        Structure structure = read(archetype).structure();
        List<String> needless = structure.checks().stream()
                .filter(check -> !check.late().isEmpty())
                .map(Check::id)
                .filter(id -> !with(structure, id).precedence().buried().containsKey(id))
                .toList();
        assertThat(needless).isEmpty();
    }

    /** The same with that check's reason for coming late left out. */
    private static Structure with(Structure structure, String early) {
        List<Check> checks = structure.checks().stream()
                .map(check -> check.id().equals(early) ? prompt(check) : check)
                .toList();
        return new Structure(
                structure.positions(),
                structure.joints(),
                structure.steps(),
                checks,
                structure.dimensions(),
                structure.family());
    }

    private static Check prompt(Check check) {
        return new Check(
                check.id(),
                check.name(),
                check.how(),
                check.instructions(),
                check.clears(),
                check.with(),
                check.needs(),
                check.after(),
                check.disturbedBy(),
                check.disturbedByBlasting(),
                check.holds(),
                check.expect(),
                "",
                check.tools(),
                check.minutes(),
                check.cautions(),
                check.where());
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void assembledInOrderEveryPassStandsAtTheEnd(String archetype) {
        EngineBook book = read(archetype);
        Build build = assembled(book);
        Set<String> again = book.structure().checks().stream()
                .filter(check -> build.check(check.id()).status() != CheckState.Status.PASSED)
                .map(check -> check.id())
                .collect(Collectors.toSet());
        assertThat(again).isEmpty();
        assertThat(book.structure().steps()).allSatisfy(step -> {
            assertThat(build.step(step.id()).stands()).as(step.id()).isTrue();
            assertThat(build.step(step.id()).unproven()).as(step.id()).isEmpty();
            assertThat(build.unfilled(step)).as(step.id()).isEmpty();
        });
    }

    private static Build assembled(EngineBook book) {
        Structure structure = book.structure();
        List<Fact> facts = new ArrayList<>(List.of(new Fact.Started("", "", Found.IN_PIECES)));
        for (String id : structure.precedence().order()) {
            structure.check(id).ifPresent(check -> facts.add(new Fact.CheckPassed(id, "", "")));
            structure.step(id).ifPresent(step -> {
                facts.add(new Fact.StepBegun(id));
                step.fits().stream()
                        .flatMap(position -> structure.position(position).stream())
                        .forEach(position ->
                                facts.add(new Fact.Fitted(position.id(), "", position.quantity(), Way.NOT_SAID, "")));
                facts.add(new Fact.StepDone(id, ""));
            });
        }
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            entries.add(new Entry("e" + entries.size(), Instant.EPOCH, "bench", entries.size(), fact));
        }
        return Build.of(book).after(entries);
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void everyCriticalPartIsClearedByACheckAndSaysWhatToCompare(String archetype) {
        Structure structure = read(archetype).structure();
        Set<String> cleared = structure.checks().stream()
                .flatMap(check -> check.clears().stream())
                .flatMap(suspect -> structure.positionsOf(suspect).stream())
                .collect(Collectors.toSet());
        List<Position> critical =
                structure.positions().stream().filter(Position::critical).toList();
        assertThat(critical).isNotEmpty();
        assertThat(critical).extracting(Position::id).allMatch(cleared::contains);
        assertThat(critical)
                .allSatisfy(position ->
                        assertThat(position.compare()).as(position.id()).isNotEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void whatCanHurtIsWarnedOf(String archetype) {
        Structure structure = read(archetype).structure();
        List<String> silent = new ArrayList<>();
        for (Step step : structure.steps()) {
            unwarned(
                    step.id(),
                    Stream.concat(step.instructions().stream(), step.tools().stream()),
                    step.cautions(),
                    silent);
        }
        for (Check check : structure.checks()) {
            unwarned(
                    check.id(),
                    Stream.concat(check.instructions().stream(), check.tools().stream()),
                    check.cautions(),
                    silent);
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void theWordsLookedForAreThere() {
        String work = Stream.of(LYING, UPRIGHT, SIDE_VALVE)
                .map(archetype -> read(archetype).structure())
                .flatMap(structure -> Stream.concat(
                        structure.steps().stream()
                                .flatMap(step -> Stream.concat(step.instructions().stream(), step.tools().stream())),
                        structure.checks().stream()
                                .flatMap(
                                        check -> Stream.concat(check.instructions().stream(), check.tools().stream()))))
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
        assertThat(HURTS.keySet())
                .allMatch(danger -> Pattern.compile(danger).matcher(work).find());
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void everyKindOfDangerIsNamedSomewhere(String archetype) {
        Structure structure = read(archetype).structure();
        String cautions = Stream.concat(
                        structure.steps().stream().flatMap(step -> step.cautions().stream()),
                        structure.checks().stream().flatMap(check -> check.cautions().stream()))
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
        assertThat(WARNED_OF)
                .allMatch(danger -> Pattern.compile(danger).matcher(cautions).find());
    }

    private static void unwarned(String id, Stream<String> work, List<String> cautions, List<String> silent) {
        String does = work.collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
        String warns = String.join(" ", cautions).toLowerCase(Locale.ROOT);
        HURTS.forEach((danger, caution) -> {
            if (Pattern.compile(danger).matcher(does).find()
                    && !Pattern.compile(caution).matcher(warns).find()) {
                silent.add(id + ": " + danger);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, SIDE_VALVE})
    void everyArchetypeWarnsAtItsFirstStart(String archetype) {
        Structure structure = read(archetype).structure();
        assertThat(structure.step("first-start").orElseThrow().cautions()).isNotEmpty();
        assertThat(structure.precedence().allBefore("first-start")).contains("oil-in", "two-turns");
        assertThat(structure.precedence().allBefore("run-in")).contains("first-start");
    }

    @Test
    void theLyingSingleHasTheIdsThatOthersRelyOn() {
        Structure structure = read(LYING).structure();
        for (String id : List.of(
                "piston",
                "gudgeon-pin",
                "gudgeon-circlips",
                "barrel",
                "base-gasket",
                "head",
                "head-gasket",
                "exhaust-valve",
                "inlet-valve",
                "camshaft",
                "cam-chain",
                "case-left",
                "case-right",
                "case-gasket",
                "crankshaft",
                "gear-shafts-thrust-washers",
                "selector-drum",
                "selector-forks",
                "selector-fork-pins",
                "oil-pump",
                "oil-pump-gasket",
                "clutch-tab-washer",
                "output-shaft-seal",
                "points-seal",
                "rocker-cover-gasket",
                "kickstart-spring",
                "crank-shims")) {
            assertThat(structure.position(id)).as(id).isPresent();
        }
        for (String id : List.of(
                "close-case",
                "fit-piston",
                "fit-barrel",
                "fit-head",
                "fit-camshaft",
                "fit-oil-pump",
                "fit-selector",
                "first-start",
                "run-in",
                "retighten-head")) {
            assertThat(structure.step(id)).as(id).isPresent();
        }
        for (String id : List.of(
                "gears-by-hand",
                "crank-end-float",
                "oilways-proved",
                "pump-primed",
                "oil-in",
                "oil-seen",
                "two-turns",
                "cam-timing",
                "trial-fit",
                "ring-gaps",
                "circlips-seen",
                "valve-clearance",
                "leak-down",
                "compression-test",
                "valve-springs-fitted")) {
            assertThat(structure.check(id)).as(id).isPresent();
        }
        assertThat(structure.checksHolding("close-case")).extracting(Check::id).contains("gears-by-hand");
        assertThat(structure.position("piston")).map(Position::sizes).contains("pistons");
        assertThat(structure.position("exhaust-valve")).map(Position::sizes).contains("valves.exhaust");
    }
}
