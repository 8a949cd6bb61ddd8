package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Found;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Starts {@link Appender}s. Their classes are archived once (class data sharing), so that many of them start in half the time; that
 * takes a class path of jars only, so folders of classes are packed first.
 */
final class Child {
    private final Path folder;
    private final String classPath;

    private Child(Path folder, String classPath) {
        this.folder = folder;
        this.classPath = classPath;
    }

    /** Packs what a child needs into a folder, and archives it by a run that ends by itself. */
    static Child packedIn(Path folder) throws IOException, InterruptedException {
        Child child = new Child(folder, jarsOnly(folder));
        Path data = folder.resolve("first");
        String id;
        try (Shelf shelf = Shelf.open(data)) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
        }
        List<String> command =
                child.command("-XX:ArchiveClassesAtExit=" + folder.resolve("classes.jsa"), data, id, "first");
        command.add("10");
        Process run = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("first.txt").toFile())
                .start();
        if (run.waitFor() != 0) {
            throw new IOException("the first child failed: " + Files.readString(folder.resolve("first.txt")));
        }
        return child;
    }

    /** Starts one that writes until it is killed. */
    Process start(Path data, String id, String keys) throws IOException {
        return new ProcessBuilder(command("-XX:SharedArchiveFile=" + folder.resolve("classes.jsa"), data, id, keys))
                .redirectError(data.resolve("errors.txt").toFile())
                .start();
    }

    private List<String> command(String sharing, Path data, String id, String keys) {
        return new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                sharing,
                "-Xshare:auto",
                "-Xlog:disable",
                "-Xmx64m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath,
                Appender.class.getName(),
                data.toString(),
                id,
                keys));
    }

    private static String jarsOnly(Path folder) throws IOException {
        String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<Path> parts = Stream.of(all.split(System.getProperty("path.separator"), -1))
                .filter(part -> !part.isEmpty())
                .map(Path::of)
                .toList();
        Path packed = folder.resolve("classes.jar");
        Set<String> names = new HashSet<>();
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(packed))) {
            for (Path part : parts) {
                if (Files.isDirectory(part)) {
                    pack(part, jar, names);
                }
            }
        }
        return Stream.concat(Stream.of(packed), parts.stream().filter(Files::isRegularFile))
                .map(Path::toString)
                .collect(Collectors.joining(System.getProperty("path.separator")));
    }

    private static void pack(Path from, JarOutputStream jar, Set<String> names) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.filter(Files::isRegularFile).sorted().forEach(file -> {
                String name = from.relativize(file).toString().replace('\\', '/');
                if (names.add(name)) {
                    put(jar, name, file);
                }
            });
        }
    }

    private static void put(JarOutputStream jar, String name, Path file) {
        try {
            jar.putNextEntry(new JarEntry(name));
            Files.copy(file, jar);
            jar.closeEntry();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
