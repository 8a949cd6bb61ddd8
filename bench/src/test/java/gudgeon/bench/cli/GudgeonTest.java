package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GudgeonTest {
    private static final String TARN = "../examples/tarn-98.yaml";

    @TempDir
    Path folder;

    private Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void theOriginalPistonClears() {
        Terminal fit = run("fit", TARN);
        assertThat(fit.code()).isZero();
        assertThat(fit.out())
                .contains("everything clears")
                .contains("exhaust bore gap")
                .doesNotContain("What would cure");
    }

    @Test
    void thePatternPistonIsRefusedWithReasonAndCures() {
        Terminal fit = run("fit", TARN, "--piston", "pattern");
        assertThat(fit.code()).isEqualTo(1);
        assertThat(fit.out())
                .contains("The exhaust valve and the crown touch")
                .contains("go tight")
                .contains("TOUCHES")
                .contains("What would cure it")
                .contains("The exhaust pocket cut deeper");
    }

    @Test
    void inchesAreInches() {
        assertThat(run("fit", TARN, "--inch").out()).contains(" in ").doesNotContain(" mm");
    }

    @Test
    void theJsonHasWhatIsDocumented() throws Exception {
        Terminal fit = run("fit", TARN, "--piston", "pattern", "--json");
        assertThat(fit.code()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(fit.out());
        JsonNode bore = json.at("/valves/exhaust/boreGap");
        for (String key : List.of(
                "leastMm",
                "atDeg",
                "xMm",
                "yMm",
                "zMm",
                "standardUncertaintyMm",
                "wantedMm",
                "touchesFromDeg",
                "touchesToDeg")) {
            assertThat(bore.path(key).isNumber()).as(key).isTrue();
        }
        assertThat(bore.path("verdict").asText()).isEqualTo("touches");
        assertThat(json.at("/valves/inlet/sideGap/verdict").asText()).isEqualTo("clears");
        assertThat(json.at("/tightForwardDeg").asDouble()).isBetween(330.0, 360.0);
        assertThat(json.at("/compressionRatio").asDouble()).isBetween(8.0, 10.0);
        assertThat(json.at("/sweptCm3").asDouble()).isCloseTo(98.2, within(0.1));
        assertThat(json.at("/deckGap/leastMm").isNumber()).isTrue();
        assertThat(json.at("/wallGap/leastMm").isNumber()).isTrue();
        assertThat(json.at("/valveToValve/leastMm").isNumber()).isTrue();
        double shares = 0;
        for (JsonNode share : json.at("/budget")) {
            shares += share.path("share").asDouble();
        }
        assertThat(shares).isCloseTo(1, within(1e-6));
        assertThat(fit.out()).doesNotContain("NaN").doesNotContain("Infinity");
        String documented = Files.readString(Path.of("../docs/fit-json.md"));
        json.fieldNames().forEachRemaining(key -> assertThat(documented).contains("`" + key + "`"));
        bore.fieldNames().forEachRemaining(key -> assertThat(documented).contains("`" + key + "`"));
    }

    @Test
    void thePictureStandsAlone() throws Exception {
        Path picture = folder.resolve("gaps.svg");
        assertThat(run("fit", TARN, "--svg", picture.toString()).code()).isZero();
        assertThat(picture)
                .content()
                .startsWith("<svg")
                .contains("<title")
                .contains("mm")
                .contains("360°")
                .doesNotContain("NaN");
    }

    @Test
    void aPistonTheBookLacksIsSaidWithThoseItHas() {
        Terminal fit = run("fit", TARN, "--piston", "forged", "--gasket", "copper");
        assertThat(fit.code()).isEqualTo(2);
        assertThat(fit.err())
                .contains("no piston 'forged'")
                .contains("'original', 'pattern'")
                .contains("no gasket 'copper'");
    }

    @Test
    void everyMisuseIsASentence() throws Exception {
        Path empty = file("empty.yaml", "");
        Path binary = Files.write(folder.resolve("binary.yaml"), new byte[] {0, 1, 2, (byte) 0xff, 0});
        for (String[] args : new String[][] {
            {"fit"},
            {"fit", "nothing.yaml"},
            {"fit", folder.toString()},
            {"fit", empty.toString()},
            {"fit", binary.toString()},
            {"fit", TARN, "--teeth", "one"},
            {"fit", TARN, "--teeth", "2147483647"},
            {"fit", TARN, "--valve-clearance", "wide"},
            {"fit", TARN, "--valve-clearance", "-1"},
            {"fit", TARN, "--colour"},
            {"fit", TARN, "--svg", "/no/such/folder/x.svg"},
            {"compare", TARN, "--piston", "original"},
            {"compare", TARN, "--piston", "original", "--piston", "forged"},
            {"serve", "--port", "70000"},
            {"polish"}
        }) {
            Terminal outcome = run((Object[]) args);
            assertThat(outcome.code()).as(String.join(" ", args)).isEqualTo(2);
            assertThat(outcome.err()).as(String.join(" ", args)).isNotBlank();
        }
    }

    @Test
    void aSlipOfTheKeyboardIsSaidInPlainWords() {
        assertThat(run("fit", TARN, "--teeth", "one").err())
                .contains("'--teeth': 'one' is not a whole number that can be used.")
                .doesNotContain(" int");
        assertThat(run("fit", TARN, "--teeth", "99999999999").err()).contains("not a whole number that can be used.");
        assertThat(run("polish").err()).contains("'polish' is not a command; known are fit, ");
        assertThat(run("check", TARN, "mine.yaml").err()).contains("'mine.yaml' is one argument too many.");
        assertThat(run("fit", TARN, "--colour").err()).contains("Unknown option: '--colour'.");
    }

    @Test
    void aBookIsCheckedForEverythingAtOnce() throws Exception {
        String broken = Files.readString(Path.of(TARN))
                .replaceFirst("bore: \\{readings[^\\n]*", "bore: 1.97")
                .replaceFirst("rod: [^\\n,}]*", "rod: ninety");
        Terminal check = run("check", file("broken.yaml", broken).toString());
        assertThat(check.code()).isEqualTo(2);
        assertThat(check.out()).contains("cylinder.bore").contains("crank.rod").contains("Line ");
        assertThat(run("check", TARN).code()).isZero();
    }

    @Test
    void twoPistonsStandSideBySide() {
        Terminal compare = run("compare", TARN, "--piston", "original", "--piston", "pattern");
        assertThat(compare.code()).isZero();
        assertThat(compare.out())
                .contains("exhaust pocket depth")
                .contains("different")
                .contains("bore gap");
    }

    @Test
    void teethMoveTheCam() {
        assertThat(run("fit", TARN, "--teeth", "1").code()).isEqualTo(1);
        assertThat(run("fit", TARN, "--teeth", "1").out()).contains("1 tooth late");
        assertThat(run("fit", TARN, "--turned").out())
                .contains("turned by half a turn")
                .contains("Turn the piston the right way round");
    }
}
