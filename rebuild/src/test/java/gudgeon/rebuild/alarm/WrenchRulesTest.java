package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.inPieces;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The alarms of wrenches, their settings, and figures meant for another thread. */
class WrenchRulesTest {
    private static final EngineBook BOOK = Told.tarnWithJoints("""
              - id: cover
                name: cover screws
                torque: 9 N.m ± 0.5
                lubricated: dry
                holes:
                  - {id: h1, thread: M6, class: "8.8", depth: 14, into: aluminium}
                  - {id: h2, thread: M6, class: "8.8", depth: 14, into: aluminium}
              - id: light
                name: light screws
                torque: 4 N.m
                lubricated: dry
                holes:
                  - {id: l1, thread: M6, class: "8.8", depth: 14, into: aluminium}
              - id: shallow
                name: shallow screws
                torque: 5 N.m
                lubricated: dry
                holes:
                  - {id: s1, thread: M6, class: "8.8", depth: 5, into: aluminium}
              - id: pounds
                name: nut in pounds
                torque: 7 lbf.ft
                holes:
                  - {id: p1, thread: M8}
              - id: bare
                name: joint without a figure
                holes:
                  - {id: b1, thread: M6}
            """);

    private static final Fact BIG = wrench("big", "20 to 200 N.m");
    private static final Fact SMALL = wrench("small", "2 to 25 N.m");
    private static final Fact POUNDS = wrench("pounds", "3 to 20 lbf.ft");

    private static Fact wrench(String name, String range) {
        return new WrenchKept(name, range, "", OptionalDouble.empty(), "");
    }

    private static Fact chosen(String joint, String wrench, String setting) {
        return chosen(joint, wrench, setting, OptionalDouble.empty(), 0, OptionalDouble.empty());
    }

    private static Fact chosen(
            String joint, String wrench, String setting, OptionalDouble adapter, double angle, OptionalDouble arm) {
        return new WrenchChosen(joint, wrench, setting, adapter, OptionalDouble.of(angle), arm, "");
    }

    private static List<Alarm> wrenches(Fact chosen) {
        return Told.alarms(new WrenchRule(), BOOK, inPieces(), BIG, SMALL, POUNDS, chosen);
    }

    private static List<Alarm> lubricated(String joint, Lubrication how) {
        return Told.alarms(new DryFigureRule(), BOOK, inPieces(), new Lubricated(joint, how));
    }

    @Test
    void aWrenchBelowItsScaleStopsAndABetterOneIsNamed() {
        assertThat(wrenches(chosen("cover", "big", ""))).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.WRENCH);
            assertThat(alarm.severity()).isEqualTo(Severity.STOP);
            assertThat(alarm.at()).isEqualTo("cover");
            assertThat(alarm.todo()).contains("small");
            assertThat(alarm.figures()).singleElement().asString().contains("40 N·m to 200 N·m");
        });
        assertThat(wrenches(chosen("cover", "small", ""))).isEmpty();
    }

    @Test
    void onAScaleButInItsLowestFifthIsNotTrustedEither() {
        assertThat(wrenches(chosen("light", "small", "4 N.m")))
                .extracting(Alarm::kind)
                .containsExactly(AlarmKind.WRENCH);
        assertThat(wrenches(chosen("light", "pounds", "35 lbf.in")))
                .extracting(Alarm::kind)
                .containsExactly(AlarmKind.WRENCH);
    }

    @Test
    void withoutAFigureTheSettingItselfIsHeldAgainstTheScale() {
        assertThat(wrenches(chosen("bare", "big", "8 N.m"))).hasSize(1);
        assertThat(wrenches(chosen("bare", "big", "60 N.m"))).isEmpty();
        assertThat(wrenches(chosen("bare", "big", ""))).isEmpty();
    }

    @Test
    void aWrenchNobodyToldOfIsNotJudged() {
        assertThat(wrenches(chosen("cover", "borrowed", "9 N.m"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "cover, pounds, 9 lbf.ft",
        "cover, pounds, 9",
        "pounds, small, 7 N.m",
        "pounds, small, 7",
        "cover, small, 6.6 N.m"
    })
    void aRightNumberInAWrongUnitStops(String joint, String wrench, String setting) {
        assertThat(wrenches(chosen(joint, wrench, setting)))
                .extracting(Alarm::kind)
                .containsExactly(AlarmKind.UNIT_MIXED);
    }

    @ParameterizedTest
    @CsvSource({
        "cover, pounds, 6.6 lbf.ft",
        "cover, small, 9 N.m",
        "cover, small, 9.4",
        "cover, small, 5 N.m",
        "cover, small, by feel",
        "pounds, pounds, 7",
        "pounds, small, 9.5 N.m"
    })
    void aRightSettingOrAPassBelowItIsQuiet(String joint, String wrench, String setting) {
        assertThat(wrenches(chosen(joint, wrench, setting))).isEmpty();
    }

    @Test
    void anAdapterThatIsNotReckonedWithStops() {
        assertThat(wrenches(chosen("cover", "small", "9 N.m", OptionalDouble.of(60), 0, OptionalDouble.of(250))))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.kind()).isEqualTo(AlarmKind.ADAPTER);
                    assertThat(alarm.todo()).contains("7.26 N·m");
                    assertThat(alarm.figures()).singleElement().asString().contains("11.2 N·m");
                });
        assertThat(wrenches(chosen("cover", "small", "9 N.m", OptionalDouble.of(60), 0, OptionalDouble.empty())))
                .extracting(Alarm::kind)
                .containsExactly(AlarmKind.ADAPTER);
    }

    @Test
    void anAdapterThatIsReckonedWithOrSquareOrShortIsQuiet() {
        assertThat(wrenches(chosen("cover", "small", "7.3 N.m", OptionalDouble.of(60), 0, OptionalDouble.of(250))))
                .isEmpty();
        assertThat(wrenches(chosen("cover", "small", "9 N.m", OptionalDouble.of(60), 90, OptionalDouble.empty())))
                .isEmpty();
        assertThat(wrenches(chosen("cover", "small", "9 N.m", OptionalDouble.of(10), 0, OptionalDouble.of(250))))
                .isEmpty();
    }

    @Test
    void aDryFigureOnOiledThreadThatTheBoltDoesNotBearStops() {
        assertThat(lubricated("cover", Lubrication.OILED)).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.DRY_FIGURE);
            assertThat(alarm.what()).contains("2 holes");
            assertThat(alarm.todo()).contains("gives the same pull");
            assertThat(alarm.evidence()).containsExactly(2L);
        });
        assertThat(lubricated("cover", Lubrication.GREASED)).hasSize(1);
    }

    @Test
    void whatIsMeantOrBorneIsQuiet() {
        assertThat(lubricated("cover", Lubrication.DRY)).isEmpty();
        assertThat(lubricated("cover", Lubrication.LOCKED)).isEmpty();
        assertThat(lubricated("light", Lubrication.OILED)).isEmpty();
        assertThat(lubricated("bare", Lubrication.OILED)).isEmpty();
    }

    @Test
    void theAlloyThreadMayBeTheOneThatDoesNotBearIt() {
        assertThat(lubricated("shallow", Lubrication.OILED))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.figures()).anyMatch(figure -> figure.contains("strips first")));
    }
}
