package gudgeon.bench.cli;

import gudgeon.bench.print.Paper;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import picocli.CommandLine.Option;

/** Where something printed goes, and on which paper. */
final class PaperFile {
    @Option(names = "--paper", paramLabel = "PAPER", description = "A4, A5 or letter; without this, A4")
    private String paper = "A4";

    /** The paper that was asked for. */
    Paper paper() {
        return Paper.of(paper)
                .orElseThrow(() -> new Unusable("--paper '" + paper + "' is not known; known are A4, A5 and letter."));
    }

    /** Refuses a file that is there already. */
    static void refuseIfThere(Path file) {
        if (Files.exists(file)) {
            throw new Unusable(file + " is there already; name another file, or remove it first.");
        }
    }

    /** Writes a file that is not there yet. */
    static void write(Path file, byte[] content) {
        try {
            Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException there) {
            throw new Unusable(file + " is there already; name another file, or remove it first.");
        } catch (IOException unwritable) {
            throw new Unusable(
                    file + " can't be written: " + unwritable.getMessage() + ". Check that its folder is there.");
        }
    }
}
