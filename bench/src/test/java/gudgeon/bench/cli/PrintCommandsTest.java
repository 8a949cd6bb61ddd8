package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Card and torque sheet from the command line. */
class PrintCommandsTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98}
            joints:
              - id: cover
                name: clutch cover
                torque: 9 N.m ± 1
                lubricated: dry
                passes: 2
                again: after the first heat
                outline: [[0, 0], [82, 0], [82, 60], [0, 60]]
                holes:
                  - {id: h1, at: [6.0, 8.5], thread: M6, length: 40, into: aluminium, class: "8.8"}
                  - {id: h2, at: [75.9, 8.5], thread: M6, length: 25, into: aluminium, class: "8.8", torque: 7 N.m}
                  - {id: h3, at: [75.9, 52.3], thread: M6, length: 25, into: aluminium, class: "8.8"}
              - {id: bare, name: sump plug}
            steps:
              - {id: close, name: close it}
            """;

    @TempDir
    Path folder;

    private String book() throws IOException {
        return Files.writeString(folder.resolve("book.yaml"), BOOK).toString();
    }

    private String journal() throws IOException {
        return Files.writeString(
                        folder.resolve("journal.jsonl"),
                        "{\"type\": \"wrench-kept\", \"version\": 1, \"wrench\": \"small click wrench\", \"range\": \"20 to 120 lbf.in\"}\n"
                                + "{\"type\": \"tightened\", \"version\": 1, \"joint\": \"cover\", \"hole\": \"h3\", \"pass\": 1, \"torque\": \"4.5 N.m\","
                                + " \"wrench\": \"small click wrench\"}\n")
                .toString();
    }

    private static String text(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void writesACard() throws IOException {
        Path file = folder.resolve("card.pdf");
        Terminal printed = run("print-card", "--book", book(), "--paper", "A5", "cover", file);
        assertThat(printed.code()).as(printed.err()).isZero();
        assertThat(printed.out()).contains("measure its line of 100 mm");
        assertThat(text(file)).contains("Tarn 98: Clutch cover", "M6 × 40");
        assertThat(run("print-card", "--book", book(), "cover", file).err()).contains("is there already");
    }

    @Test
    void writesATorqueSheet() throws IOException {
        Path file = folder.resolve("torque.pdf");
        Terminal printed = run("print-torque", "--book", book(), "--journal", journal(), file);
        assertThat(printed.code()).as(printed.err()).isZero();
        assertThat(text(file))
                .contains("The maker's manual comes first", "Clutch cover", "Threads: dry, as the book has it.")
                .contains("9 N·m, the maker's", "7 N·m, the maker's")
                // 9 N·m over 0.11298483 N·m and 7 over the same, by hand
                .contains("79.7 lbf·in on the small click wrench", "62 lbf·in on the small click wrench")
                .contains("pass 2, to full torque", "Tighten again after the first heat.")
                .contains("Sump plug", "No torque in the book: the maker's manual has it.")
                .contains("×");
    }

    @Test
    void writesLabels() throws IOException {
        Path file = folder.resolve("labels.pdf");
        String book = Path.of("..", "examples", "tarn-98.yaml").toString();
        String journal = Path.of("..", "examples", "tarn-98.jsonl").toString();
        Terminal printed =
                run("print-labels", "--book", book, "--journal", journal, "--sheet", "letter-30", "--first", "5", file);
        assertThat(printed.code()).as(printed.err()).isZero();
        assertThat(printed.out())
                .contains(
                        "20 labels on 1 sheet: letter, 3 × 10 labels", "The codes hold only the name of bag and build");
        // as the demo's journal has it: bag 3 holds the carburettor and its O-ring
        assertThat(text(file)).contains("Bag 3 2026-10-03 carburettor O-ring of");
        Path empty = folder.resolve("empty.pdf");
        Terminal more = run(
                "print-labels",
                "--book",
                book,
                "--empty",
                "2",
                "--address",
                "http://192.168.1.20:8080",
                "--trial",
                "--paper",
                "A4",
                "--labels",
                "2 x 7",
                "--size",
                "99.1 x 38.1",
                "--gap",
                "2.5 x 0",
                empty);
        assertThat(more.code()).as(more.err()).isZero();
        assertThat(more.out()).contains("a build that is not on the shelf has no pages");
        assertThat(text(empty)).contains("Bag 1", "Bag 2", "This line is 100 mm");
    }

    @Test
    void labelsThatDoNotFitAreRefused() throws IOException {
        String file = folder.resolve("none.pdf").toString();
        Terminal small =
                run("print-labels", "--book", book(), "--empty", "3", "--size", "20 x 10", "--labels", "3 x 8", file);
        assertThat(small.code()).isEqualTo(2);
        assertThat(small.err()).contains("A label of 20 × 10 mm is too small to be read");
        assertThat(run("print-labels", "--book", book(), "--empty", "3", "--first", "25", file)
                        .err())
                .contains("The first free label must be from 1 to 24, not 25.");
        assertThat(run("print-labels", "--book", book(), "--empty", "3", "--address", "here", file)
                        .err())
                .contains("'here' is no address of a bench");
        assertThat(run("print-labels", "--book", book(), "--empty", "900", file).err())
                .contains("--empty must be from 1 to 500");
        assertThat(run("print-labels", "--book", book(), file).err()).contains("There is nothing to label");
        assertThat(Files.exists(Path.of(file))).isFalse();
    }

    @Test
    void whatCanNotBePrintedIsRefusedWithASentence() throws IOException {
        String book = book();
        Path file = folder.resolve("none.pdf");
        assertThat(run("print-card", "--book", book, "nothing", file).err())
                .contains("There is no joint 'nothing'; the book has cover, bare.");
        assertThat(run("print-card", "--book", book, "bare", file).err())
                .contains("Sump plug has no hole with a place");
        assertThat(run("print-card", "--book", book, "--paper", "A9", "cover", file)
                        .err())
                .contains("--paper 'A9' is not known");
        assertThat(run("print-torque", "--book", book, folder.resolve("no").resolve("t.pdf"))
                        .err())
                .contains("can't be written");
        assertThat(Files.exists(file)).isFalse();
    }
}
