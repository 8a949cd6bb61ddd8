package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** Torque, wrench and conversion at the command line, without a build. */
class TorqueCommandTest {
    private static JsonNode json(String... arguments) throws Exception {
        return new ObjectMapper().readTree(run((Object[]) arguments).out());
    }

    @Test
    void saysHowTightAndWhatGivesWayFirst() throws Exception {
        Terminal answer =
                run("torque", "M6", "--class", "8.8", "--oiled", "--into", "alloy", "--depth", "12", "--washer");
        assertThat(answer.code()).isZero();
        assertThat(answer.out())
                .contains("worked out; the maker's manual comes first")
                .contains("the bolt is used to the full");
        JsonNode shallow = json("torque", "M6", "--into", "alloy", "--depth", "6", "--washer", "--json");
        assertThat(shallow.get("weakest").asText()).isEqualTo("thread");
        JsonNode bare = json("torque", "M6", "--into", "alloy", "--depth", "12", "--json");
        assertThat(bare.get("weakest").asText()).isEqualTo("bearing");
        assertThat(bare.get("sentences").toString())
                .contains("The metal under the head sets it")
                .contains("With a hard washer under the head it may be 7.6")
                .doesNotContain("pressed into");
    }

    /** VDI 2230 has about 22.8 N·m for M8x1 of class 8.8 at a friction of 0.10, so less at 0.08 and more at 0.14. */
    @Test
    void frictionDecidesTheFigure() throws Exception {
        assertThat(json("torque", "M8x1", "--json").get("mostNm").asDouble()).isBetween(18.0, 22.0);
        assertThat(json("torque", "M8x1", "--dry", "--json").get("mostNm").asDouble())
                .isEqualTo(29.2, within(0.9));
    }

    @Test
    void aGivenTorqueIsChecked() {
        Terminal dry = run("torque", "M6", "9 N.m", "--dry", "--into", "alloy", "--depth", "12", "--washer");
        assertThat(dry.code()).isZero();
        assertThat(dry.out()).contains("in hand");
        Terminal oiled = run("torque", "M6", "80 lbf.in", "--oiled");
        assertThat(oiled.code()).isEqualTo(1);
        assertThat(oiled.out()).contains("At the usual friction it leaves").contains("safe whatever the friction");
        assertThat(run("torque", "M6", "14 N.m", "--oiled").out()).contains("too much at the usual friction");
    }

    /** The wall chart of many a shop has 9 to 10 N·m for an M6 in cast alloy; a bare head is what then settles, not what breaks. */
    @Test
    void aBareHeadInSoftAlloyIsToldBesideTheVerdict() throws Exception {
        Terminal bare = run("torque", "M6", "9 N.m", "--dry", "--into", "alloy", "--depth", "12");
        assertThat(bare.code()).isEqualTo(1);
        assertThat(bare.out())
                .contains("in hand before the bolt is used to the full")
                .contains("A bare hexagon head may be pressed into soft aluminium")
                .contains("put a hard washer under it");
        JsonNode answer = json("torque", "M6", "9 N.m", "--dry", "--into", "alloy", "--depth", "12", "--json");
        assertThat(answer.get("outcome").asText()).isEqualTo("in-hand");
        assertThat(answer.get("pressedInFromNm").asDouble()).isBetween(6.0, 9.0);
    }

    @Test
    void allThatCannotBeUsedIsSaidAtOnce() {
        Terminal answer = run("torque", "M6.5", "ten", "--class", "9.1", "--into", "cheese", "--depth", "-3");
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err())
                .contains("'M6.5' is not a thread")
                .contains("'9.1' is not a strength class")
                .contains("'cheese' is not a metal")
                .contains("The depth '-3'")
                .contains("The torque 'ten'");
    }

    @Test
    void aThousandNewtonMetresOnAnM5TearIt() {
        Terminal answer = run("torque", "M5", "1000 N.m");
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err()).contains("in two whatever the friction").doesNotContain("Exception");
    }

    @Test
    void aWrenchIsTrustedOrNot() throws Exception {
        assertThat(run("wrench", "20 to 200 N.m", "9 N.m").code()).isEqualTo(1);
        assertThat(run("wrench", "20 to 200 N.m", "9 N.m").out()).contains("from 40 N·m to 200 N·m");
        JsonNode answer = json("wrench", "3-20 lbf.ft", "9 N.m", "--adapter", "60", "--arm", "10 in", "--json");
        assertThat(answer.get("settingNm").asDouble()).isEqualTo(9 * 254.0 / 314.0, within(1e-9));
        assertThat(answer.get("trusted").asBoolean()).isTrue();
        assertThat(answer.get("setting").asText()).endsWith("lbf·ft");
    }

    @Test
    void nobodyIsToldToSetAWrenchBeyondItsScale() {
        assertThat(run("wrench", "5 to 25 N.m", "1000 N.m").out())
                .contains("would have to be set to 1000 N·m", "more than its scale has")
                .doesNotContain("Set the");
    }

    @Test
    void anAdapterNeedsTheArm() {
        Terminal answer = run("wrench", "25 to 5 N.m", "soft", "--adapter", "60");
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err())
                .contains("The range")
                .contains("The torque 'soft'")
                .contains("length of the wrench");
        assertThat(run("wrench", "5 to 25 N.m", "9 N.m", "--adapter", "60", "--angle", "180", "--arm", "50")
                        .err())
                .contains("turns nothing");
    }

    @Test
    void convertsExactly() throws Exception {
        assertThat(run("convert", "7 lbf·ft", "N·m").out()).contains("7 lbf·ft = 9.49 N·m");
        assertThat(json("convert", "7 lbf.ft", "N.m", "--json").get("N·m").asDouble())
                .isEqualTo(7 * 4.4482216152605 * 0.3048, within(1e-12));
        assertThat(run("convert", "10 N.m").out().lines()).hasSize(5);
        assertThat(run("convert", "7 lbf.ft", "furlong").code()).isEqualTo(2);
        assertThat(run("convert", "seven").err()).contains("is not a torque");
    }
}
