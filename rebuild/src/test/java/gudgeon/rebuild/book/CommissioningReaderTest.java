package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CommissioningReaderTest {
    private static final String AROUND = """
            book: 1
            engine: {name: Tarn 98}
            positions: [{id: a, name: a}]
            steps: [{id: fit-a, name: Fit it, fits: [a]}, {id: go, name: First start, into: [a]}]
            checks: [{id: seen, name: Seen, how: seen, clears: [a], holds: [go]}]
            """;

    private static BookReading read(String blocks) {
        return new EngineBookReader().read(AROUND + blocks);
    }

    private static Commissioning good(String blocks) {
        BookReading reading = read(blocks);
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        return ((BookReading.Read) reading).book().commissioning();
    }

    private static String fault(String blocks) {
        BookReading reading = read(blocks);
        assertThat(reading).isInstanceOf(BookReading.Refused.class);
        return reading.faults().get(0).sentence();
    }

    @Test
    void readsAllThree() {
        Commissioning read = good("""
                start: {step: go, proved-by: {priming: seen, tools: [seen]}, without: [gears, throttle]}
                fluids: [{id: engine-oil, name: oil, amount: 0.75 l, grade: SAE 30, at: to the mark, proved-by: seen}]
                running-in:
                  source: the handbook
                  stages:
                    - {id: one, name: One, minutes: 60, heats: 2, km: 30, load: light, piston-speed: 5.5, then: [engine-oil, seen]}
                    - {id: two, name: Two, minutes: 600, most-rpm: 4500}
                """);
        assertThat(read.start().step()).isEqualTo("go");
        assertThat(read.start().proving(StartPoint.PRIMING)).containsExactly("seen");
        assertThat(read.start().without()).containsExactlyInAnyOrder(StartPoint.GEARS, StartPoint.THROTTLE);
        assertThat(read.fluid("engine-oil").orElseThrow().amount()).isEqualTo("0.75 l");
        RunningIn.Stage one = read.ownScheme().orElseThrow().stage("one").orElseThrow();
        assertThat(one.pistonSpeedMPerS()).hasValue(5.5);
        assertThat(one.km()).hasValue(30);
        assertThat(one.then()).containsExactly("engine-oil", "seen");
    }

    @Test
    void aBookMaySayNothing() {
        assertThat(good("")).isEqualTo(Commissioning.NOT_SAID);
    }

    @Test
    void tellsWhatTheBookDoesNotHave() {
        assertThat(fault("start: {step: run}\n")).contains("no step 'run'");
        assertThat(fault("start: {step: go, proved-by: {spark: plug-seen}}\n")).contains("no check 'plug-seen'");
        assertThat(fault("start: {step: go, without: [wings]}\n")).contains("'wings'");
        assertThat(fault("fluids: [{id: oil, name: oil, proved-by: x}]\n")).contains("no check 'x'");
        assertThat(fault("running-in: {stages: [{id: one, name: One, minutes: 5, then: [wax]}]}\n"))
                .contains("no step, check, joint or fluid 'wax'");
    }

    @Test
    void tellsWhatCannotBe() {
        assertThat(fault("fluids: [{id: spark, name: oil}]\n")).contains("'spark' is a point of the list");
        assertThat(fault("running-in: {source: somewhere}\n")).contains("no stages");
        assertThat(fault("running-in: {stages: [{id: one, name: One, minutes: 5, most-rpm: 3000, piston-speed: 5}]}\n"))
                .contains("an engine speed and a mean piston speed");
        assertThat(fault("running-in: {stages: [{id: one, name: One, minutes: 5, piston-speed: 90}]}\n"))
                .contains("piston-speed");
    }
}
