package gudgeon.rebuild.fasten;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How tight the holes of a build are to be, and with which wrench. */
class TorqueTest {
    private static final String JOINTS = """
              - id: cover
                name: cover screws
                torque: 9 N.m ± 1
                lubricated: dry
                holes:
                  - {id: h1, thread: M6, class: "8.8", depth: 14, into: aluminium, length: 40, stack: 28}
                  - {id: h2, thread: M6, depth: 14, into: aluminium, torque: 5 N.m}
              - id: worked
                name: worked-out screws
                holes:
                  - {id: w1, thread: M6, class: "8.8", depth: 5, into: aluminium}
                  - {id: w2, thread: M8, kind: castle-nut, left-hand: true}
                  - {id: w3}
              - id: small
                name: small screws
                torque: 1.5 N.m
              - id: big
                name: big nut
                torque: 60 N.m
                holes:
                  - {id: b1, thread: M14x1.5, into: steel}
            """;

    private static Build build(Fact... facts) throws IOException {
        String tarn = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        BookReading reading = new EngineBookReader().read(tarn.replace("\njoints:\n", "\njoints:\n" + JOINTS));
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long seen = entries.size();
            entries.add(new Entry("e" + seen, Instant.EPOCH.plusSeconds(seen), "tablet", seen, fact));
        }
        return Build.of(((BookReading.Read) reading).book()).after(entries);
    }

    private static HoleTorque hole(Build build, String joint, String hole) {
        return HoleTorque.all(build, joint).stream()
                .filter(one -> one.hole().id().equals(hole))
                .findFirst()
                .orElseThrow();
    }

    private static WrenchKept wrench(String name, String range) {
        return new WrenchKept(name, range, "", OptionalDouble.empty(), "");
    }

    @Test
    void theMakersFigureWinsAndAHolesOwnBeforeItsJoints() throws IOException {
        assertThat(hole(build(), "cover", "h1").wantedNm()).hasValue(9);
        assertThat(hole(build(), "cover", "h2").wantedNm()).hasValue(5);
        assertThat(hole(build(), "cover", "h1").isComputed()).isFalse();
        assertThat(hole(build(), "cover", "h1").sentences())
                .anyMatch(one -> one.contains("the maker's figure for a thread that is dry"));
        assertThat(hole(build(), "cover", "h1").withinNm()).isBetween(0.9, 1.2);
    }

    @Test
    void theEngagementIsWhatTheScrewReachesBeyondWhatItClamps() throws IOException {
        assertThat(hole(build(), "cover", "h1").reckoned().orElseThrow().seat().engagedMm())
                .hasValue(12);
        assertThat(hole(build(), "worked", "w1").reckoned().orElseThrow().seat().engagedMm())
                .hasValue(5);
    }

    @Test
    void withoutAFigureOneIsWorkedOutAndMarked() throws IOException {
        HoleTorque worked = hole(build(), "worked", "w1");
        assertThat(worked.isComputed()).isTrue();
        assertThat(worked.wantedNm().orElseThrow()).isBetween(2.0, 6.0);
        assertThat(worked.sentences())
                .anyMatch(one -> one.contains("worked out because the book has no figure"))
                .anyMatch(one -> one.contains("reckoned as oiled"));
        assertThat(hole(build(), "worked", "w3").wantedNm()).isEmpty();
        assertThat(hole(build(), "worked", "w3").sentences())
                .singleElement()
                .asString()
                .contains("no torque");
    }

    @Test
    void castleNutsAndLeftHandThreadsAreSpokenOf() throws IOException {
        assertThat(hole(build(), "worked", "w2").sentences())
                .anyMatch(one -> one.startsWith("Castle nut"))
                .anyMatch(one -> one.contains("anticlockwise"));
    }

    @Test
    void onAnOiledThreadTheSamePullNeedsLess() throws IOException {
        HoleTorque oiled = hole(build(new Lubricated("cover", Lubrication.OILED)), "cover", "h1");
        assertThat(oiled.asItIsNm().orElseThrow()).isBetween(6.0, 7.5);
        assertThat(oiled.check().orElseThrow().holds()).isFalse();
        assertThat(hole(build(), "cover", "h1").asItIsNm()).isEmpty();
    }

    /** Of the classes in use, 4.8 and 5.8 do not bear 9 N·m on a dry M6; 8.8 does. */
    @Test
    void anUnknownClassIsTheWeakestThatBearsTheMakersFigure() throws IOException {
        HoleTorque unknown = hole(build(), "cover", "h2");
        assertThat(unknown.reckoned().orElseThrow().bolt().strength().designation())
                .isEqualTo("4.8");
        assertThat(unknown.assumed()).anyMatch(one -> one.contains("the weakest that bears"));
    }

    @Test
    void eachJointGetsTheWrenchInWhoseScaleItLiesHighest() throws IOException {
        Build build =
                build(wrench("big", "40 to 200 N.m"), wrench("mid", "5 to 25 N.m"), wrench("huge", "10 to 60 lbf.ft"));
        WrenchPlan plan = WrenchPlan.of(build);
        assertThat(plan.sentences())
                .anyMatch(one -> one.contains("Cover screws, 9 N·m: the mid"))
                .anyMatch(one -> one.contains("Big nut, 60 N·m: the huge, set to 44.3 lbf·ft"));
        assertThat(plan.unserved()).noneMatch(job -> job.joint().id().equals("cover"));
    }

    @Test
    void whatNoneCanDoIsNamedWithTheRangeToBuy() throws IOException {
        WrenchPlan plan = WrenchPlan.of(build(wrench("big", "40 to 200 N.m")));
        assertThat(plan.unserved()).extracting(job -> job.wantedNm()).contains(9.0, 5.0);
        assertThat(plan.toHave().orElseThrow().trusts(9)).isTrue();
        assertThat(plan.toHaveWords().orElseThrow()).contains("Buy or borrow");
        assertThat(WrenchPlan.of(build(
                                wrench("all", "0 to 300 N.m"),
                                wrench("most", "0 to 60 N.m"),
                                wrench("least", "0.2 to 13 N.m")))
                        .toHave())
                .isEmpty();
    }

    @Test
    void aRangeThatCannotBeReadIsSaid() {
        OwnWrenches read =
                OwnWrenches.of(List.of(wrench("one", "wide"), wrench("two", "25 to 5 N.m"), wrench("ok", "5-25 Nm")));
        assertThat(read.faults()).hasSize(2);
        assertThat(read.named("ok").orElseThrow().range().trustedFromNm()).isCloseTo(5, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "9 N.m, 9, NEWTON_METRE", "7 lbf·ft, 9.490725638, POUND_FORCE_FOOT", "80lbf.in, 9.038786322, POUND_FORCE_INCH",
        "9, 9, NEWTON_METRE", "1.2 kgf.m, 11.76798, KILOGRAM_FORCE_METRE", "9 N.m ± 1, 9, NEWTON_METRE"
    })
    void torquesAreReadInTheirUnit(String text, double nm, TorqueUnit unit) {
        WrittenTorque read = WrittenTorque.of(text, TorqueUnit.NEWTON_METRE).orElseThrow();
        assertThat(read.nm()).isCloseTo(nm, within(1e-8));
        assertThat(read.unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource({"by hand", "9 mm", "-4 N.m", "''"})
    void whatIsNoTorqueIsNotReadAsOne(String text) {
        assertThat(WrittenTorque.of(text, TorqueUnit.NEWTON_METRE)).isEqualTo(Optional.empty());
    }
}
