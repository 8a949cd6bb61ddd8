package gudgeon.rebuild.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.lesson.Amendment.Add;
import gudgeon.rebuild.lesson.Amendment.Put;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** What is written into the whole book of the Tarn 98 is read back from it, whatever it is and in whatever order. */
class RoundTripTest {
    private static final String TARN = text();
    private final EngineBook tarn = read(TARN);

    private static String text() {
        try {
            return Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static EngineBook read(String text) {
        return ((BookReading.Read) new EngineBookReader().read(text)).book();
    }

    @Example
    void acceptingNothingIsTheSameText() {
        assertThat(Manuscript.of(TARN).with(List.of()).text()).isEqualTo(TARN);
    }

    /** Every hole measured, every joint mapped with a hole more, every step timed. */
    private Build wholeBuild() {
        List<Fact> facts = new ArrayList<>();
        tarn.structure().joints().forEach(joint -> {
            joint.holes()
                    .forEach(hole -> facts.add(new HoleMeasured(joint.id(), hole.id(), "", "77.7 mm", "33.3 mm", "")));
            Map<String, Point> places = new HashMap<>();
            joint.holes().forEach(hole -> places.put(hole.id(), new Point(5 * places.size(), 1.5)));
            places.put("one-more", new Point(-5, 1.5));
            facts.add(new JointMapped(joint.id(), List.of(), places, "by numbers"));
        });
        tarn.structure().steps().forEach(step -> {
            facts.add(new Fact.TimeSpent(step.id(), 777));
            facts.add(new Fact.StepDone(step.id(), ""));
        });
        return Build.of(tarn).asIf(facts);
    }

    @Example
    void aWholeBuildIsReadBack() {
        List<Lesson> lessons = new ArrayList<>(NextTime.of(wholeBuild()).lessons());
        Improved improved = Improved.of(TARN, lessons);
        assertThat(improved.usable()).isTrue();
        EngineBook book = read(improved.text());
        assertThat(book.structure().steps())
                .allSatisfy(step -> assertThat(step.minutes()).isEqualTo(777));
        book.structure().joints().forEach(joint -> {
            Joint before = tarn.structure().joint(joint.id()).orElseThrow();
            assertThat(joint.holes()).hasSize(before.holes().size() + 1);
            assertThat(joint.hole("one-more").orElseThrow().at()).contains(new Point(-5, 1.5));
            before.holes().forEach(hole -> {
                Hole now = joint.hole(hole.id()).orElseThrow();
                assertThat(now.stack().orElseThrow().value()).isEqualTo(77.7);
                assertThat(now.depth().orElseThrow().value()).isEqualTo(33.3);
                assertThat(now.thread()).isEqualTo(hole.thread());
                assertThat(now.note()).isEqualTo(hole.note());
            });
        });
        Collections.reverse(lessons);
        assertThat(Improved.of(TARN, lessons).text()).isEqualTo(improved.text());
        assertThat(improved.text().lines().filter(line -> line.contains("#")).toList())
                .isEqualTo(TARN.lines().filter(line -> line.contains("#")).toList());
    }

    @Property(tries = 15)
    void minutesAreReadBackAndTheOrderDoesNotMatter(
            @ForAll @IntRange(min = 1, max = 999) int minutes, @ForAll long seed) {
        List<Amendment> all = new ArrayList<>();
        tarn.structure()
                .steps()
                .forEach(step -> all.add(new Put(List.of("steps", step.id(), "minutes"), "" + minutes)));
        Collections.shuffle(all, new Random(seed));
        List<Amendment> some = all.subList(0, 5);
        List<Amendment> turned = new ArrayList<>(some);
        Collections.reverse(turned);
        String text = Manuscript.of(TARN).with(some).text();
        assertThat(Manuscript.of(TARN).with(turned).text()).isEqualTo(text);
        EngineBook improved = read(text);
        improved.structure().steps().forEach(step -> {
            boolean changed = some.stream().anyMatch(one -> one.path().contains(step.id()));
            assertThat(step.minutes())
                    .isEqualTo(
                            changed
                                    ? minutes
                                    : tarn.structure()
                                            .step(step.id())
                                            .orElseThrow()
                                            .minutes());
        });
        assertThat(text.lines().filter(line -> line.contains("#")).toList())
                .isEqualTo(TARN.lines().filter(line -> line.contains("#")).toList());
    }

    @Property(tries = 10)
    void aStackIsReadBackAtEveryHole(@ForAll @IntRange(min = 1, max = 9999) int hundredths, @ForAll long seed) {
        List<Put> all = new ArrayList<>();
        tarn.structure()
                .joints()
                .forEach(joint -> joint.holes()
                        .forEach(hole -> all.add(new Put(
                                List.of("joints", joint.id(), "holes", hole.id(), "stack"),
                                Written.hundredth(hundredths / 100.0) + " mm"))));
        assertThat(all).isNotEmpty();
        Put one = all.get(new Random(seed).nextInt(all.size()));
        EngineBook improved = read(Manuscript.of(TARN).with(List.of(one)).text());
        Optional<Hole> hole = improved.structure()
                .joint(one.path().get(1))
                .flatMap(joint -> joint.hole(one.path().get(3)));
        assertThat(hole.flatMap(Hole::stack).orElseThrow().quantity().value()).isEqualTo(hundredths / 100.0);
    }

    @Property(tries = 15)
    void anySentenceIsReadBackAsASentence(@ForAll @StringLength(min = 1, max = 60) String sentence, @ForAll long seed) {
        String said = sentence.codePoints()
                .filter(c -> !Character.isISOControl(c) && Character.isDefined(c) && !Character.isSurrogate((char) c))
                .filter(c -> c != 0xFEFF && Character.getType(c) != Character.PRIVATE_USE)
                .filter(c -> c != 0x2028 && c != 0x2029)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip();
        String clear = said.isEmpty() ? "- x: \"y\", 'z' # {}" : said;
        List<String> ids =
                tarn.structure().steps().stream().map(step -> step.id()).toList();
        String id = ids.get(new Random(seed).nextInt(ids.size()));
        Amendment add = new Add(List.of("steps", id, "do"), Written.text(clear));
        EngineBook improved = read(Manuscript.of(TARN).with(List.of(add)).text());
        List<String> told = improved.structure().step(id).orElseThrow().instructions();
        assertThat(told.get(told.size() - 1)).isEqualTo(clear);
        assertThat(told)
                .hasSize(tarn.structure().step(id).orElseThrow().instructions().size() + 1);
    }
}
