package gudgeon.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Each line of the threat model has tests that stand for it, and the document shows the lines as they are. */
class SecurityTableTest {
    private static final Path DOCUMENT = Path.of("..", "docs", "security.md");
    private static final String BEGIN = "<!-- table: made by SecurityTableTest of threats.yaml -->\n";
    private static final String END = "<!-- end of table -->";

    private record Threat(String who, String what, String defence, List<String> tests) {
        private String line() {
            return "| " + String.join(" | ", who, what, defence) + " | "
                    + tests.stream().map(test -> "`" + test + "`").collect(Collectors.joining(" ")) + " |\n";
        }
    }

    private static List<Threat> threats() throws IOException {
        try (InputStream stream = SecurityTableTest.class.getResourceAsStream("/threats.yaml")) {
            Object read = new Load(LoadSettings.builder().build()).loadFromInputStream(Objects.requireNonNull(stream));
            return ((List<?>) read).stream().map(one -> threat((Map<?, ?>) one)).toList();
        }
    }

    private static Threat threat(Map<?, ?> one) {
        return new Threat(
                String.valueOf(one.get("who")),
                String.valueOf(one.get("what")),
                String.valueOf(one.get("defence")),
                ((List<?>) Objects.requireNonNull(one.get("tests")))
                        .stream().map(String::valueOf).toList());
    }

    @Test
    void everyThreatHasATestThatIsThere() throws IOException {
        List<Path> sources;
        try (Stream<Path> files = Files.walk(Path.of(".."))) {
            sources = files.filter(file -> file.toString().contains("src/test/java")
                            && file.toString().endsWith("Test.java"))
                    .toList();
        }
        for (Threat threat : threats()) {
            assertThat(threat.tests()).as(threat.what()).isNotEmpty();
            for (String test : threat.tests()) {
                String file = test.replaceFirst("\\..*", "") + ".java";
                String method = test.replaceFirst(".*\\.", "");
                List<Path> found =
                        sources.stream().filter(source -> source.endsWith(file)).toList();
                assertThat(found).as(test).hasSize(1);
                assertThat(Files.readString(found.get(0)))
                        .as(test)
                        .containsPattern("@(Test|ParameterizedTest|Property)\\b[^;{}]*(\\{[^}]*}[^;{}]*)*void " + method
                                + "\\(");
            }
        }
    }

    @Test
    void theDocumentShowsTheThreatsAsTheyAre() throws IOException {
        String document = Files.readString(DOCUMENT);
        int from = document.indexOf(BEGIN) + BEGIN.length();
        int to = document.indexOf(END);
        assertThat(document).contains(BEGIN, END);
        String table = "| who | what they do | what stands against it | tests |\n| --- | --- | --- | --- |\n"
                + threats().stream().map(Threat::line).collect(Collectors.joining());
        if ("security".equals(System.getProperty("remake"))) {
            Files.writeString(DOCUMENT, document.substring(0, from) + table + document.substring(to));
        } else {
            assertThat(document.substring(from, to)).isEqualTo(table);
        }
    }
}
