package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** Desk answers from the command line. */
class DeskCommandsTest {
    private static JsonNode figures(Object... words) throws Exception {
        Terminal said = run(words);
        assertThat(said.code()).as(said.err()).isZero();
        return new ObjectMapper().readTree(said.out()).get("figures");
    }

    @Test
    void aFitIsToldQuotedOrNot() {
        Terminal quoted = run("fit-size", "20 H7/k6");
        assertThat(quoted.code()).isZero();
        assertThat(quoted.out()).contains("largest shaft", "20.015 mm (0.7880 in)", "Source: Limits: ISO 286-1:2010");
        assertThat(run("fit-size", "20", "H7/k6").out()).isEqualTo(quoted.out());
        assertThat(quoted.out().lines()).allMatch(line -> line.length() <= Sheets.COLUMNS);
    }

    @Test
    void optionsReachTheAnswer() throws Exception {
        JsonNode seat = figures(
                "fit-size",
                "42 N7/h6",
                "--into",
                "aluminium",
                "--outside",
                "60",
                "--bore-of-part",
                "30",
                "--length",
                "12",
                "--friction",
                "0.12",
                "--at",
                "-18",
                "--warm-gap",
                "0.02",
                "--warmest",
                "120",
                "--running",
                "90",
                "--json");
        double expected = 20 + (0.033 + 0.02 - 42 * 11.7e-6 * 38) / (42 * 21.5e-6);
        assertThat(seat.at("/warmTo/value").asDouble()).isCloseTo(expected, within(1e-3));
        assertThat(seat.at("/pressForce/unit").asText()).isEqualTo("N");
        assertThat(seat.has("leastTightRunning")).isTrue();
    }

    @Test
    void bearingRingGapAndShimsAnswer() throws Exception {
        assertThat(figures("bearing", "6203", "C3", "--json")
                        .at("/outside/value")
                        .asInt())
                .isEqualTo(40);
        assertThat(run("bearing", "6203 C3").out()).contains("C3: more radial clearance than normal.");
        assertThat(figures("ring-gap", "--bore", "47.5", "--from-gap", "0.20", "--from-bore", "47.0", "--json")
                        .at("/gap/value")
                        .asDouble())
                .isCloseTo(1.7708, within(1e-4));
        String[] dots = {"shims", "--float", "0.62", "--want", "0.10..0.20", "--stock", "0.10,0.10,0.15,0.20,0.30"};
        String[] commas = {"shims", "--float", "0,62", "--want", "0,10..0,20", "--stock", "0,10;0,10;0,15;0,20;0,30"};
        assertThat(run((Object[]) dots).out())
                .contains("Put in 0.300 mm")
                .isEqualTo(run((Object[]) commas).out());
    }

    @Test
    void badInputGetsASentence() {
        assertThat(run("fit-size", "20 H7/w6", "--into", "wood"))
                .returns(2, Terminal::code)
                .returns("", Terminal::out)
                .satisfies(said -> assertThat(said.err().lines()).hasSize(2));
        assertThat(run("bearing", "7203").err()).contains("of no series held here");
        assertThat(run("ring-gap", "--bore", "big").err()).startsWith("--bore 'big': ");
        assertThat(run("shims", "--float", "1", "--want", "0.1").err()).contains("as 0.10..0.20");
        assertThat(run("shims", "--float", "1").code()).isEqualTo(2);
        assertThat(run("fit-size").code()).isEqualTo(2);
    }
}
