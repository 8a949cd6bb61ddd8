package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk that is full, and one that may only be read: a real one of 3 MB, in memory, mounted by a process for itself alone (user and mount
 * namespaces of Linux), which needs no rights where the system allows it.
 */
class DiskFaultsTest {
    private static final String MOUNT = "mount -t tmpfs -o size=3m tmpfs \"$0\" && exec \"$@\"";

    @TempDir
    Path folder;

    private List<String> onItsOwnDisk(String... command) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of("unshare", "--map-root-user", "--mount", "sh", "-c", MOUNT));
        all.add(Files.createDirectories(folder.resolve("disk")).toString());
        all.addAll(List.of(command));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(all)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        List<String> lines = new ArrayList<>();
        lines.add("ended with " + process.waitFor());
        lines.addAll(Files.readAllLines(said));
        return lines;
    }

    private boolean canMount() throws InterruptedException {
        try {
            return onItsOwnDisk("true").get(0).equals("ended with 0");
        } catch (IOException noSuchCommand) {
            return false;
        }
    }

    @Test
    void aFullDiskKeepsWhatItAcknowledgedSaysSoAndGoesOnOnceThereIsRoom() throws Exception {
        assumeTrue(canMount(), "this system lets nobody mount a small disk of their own");
        List<String> said = onItsOwnDisk(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx128m",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                SmallDisk.class.getName(),
                folder.resolve("disk").toString());
        String all = String.join("\n", said);
        assertThat(said.get(0)).as(all).isEqualTo("ended with 0");
        assertThat(said)
                .as(all)
                .anyMatch(line ->
                        line.matches("entry: The database .* can't be written: the disk is full\\. Nothing of this"
                                + " was kept\\. Make room on the disk and try again\\."))
                .anyMatch(line -> line.matches("photo: The photo could not be kept: .*See that the disk has room.*"))
                .anyMatch(line -> line.matches("backup: .*the disk is full.*"))
                .anyMatch(line -> line.matches("export: .*could not be written.*See that the disk has room\\."))
                .contains("then Sound", "with room Kept", "opened again 1 more, Sound")
                .anyMatch(
                        line -> line.matches("read-only: The data folder .* can't be used: .*Name a folder that you may"
                                + " write with --data\\."))
                .noneMatch(line -> line.contains("Exception") || line.contains("went through"));
    }
}
