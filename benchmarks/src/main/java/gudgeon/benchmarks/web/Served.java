package gudgeon.benchmarks.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A server in a process of its own, which ends with {@link #close}. */
record Served(Process process, URI address) implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");

    /** Gudgeon as a person starts it, with the builds of a data folder. */
    static Served gudgeon(Path data) throws IOException {
        return start(List.of("./gudgeon", "serve", "--port", "0", "--data", data.toString()));
    }

    /** The rival, started as the script starts Gudgeon. */
    static Served bare() throws IOException {
        return start(List.of(
                "java",
                "-XX:TieredStopAtLevel=4",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-Dfile.encoding=UTF-8",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                BareServer.class.getName()));
    }

    private static Served start(List<String> command) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader out = process.inputReader();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                return new Served(process, URI.create(address.group()));
            }
        }
        throw new IOException("it did not start: " + String.join(" ", command));
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }
}
