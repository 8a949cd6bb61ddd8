package gudgeon.fuzz;

import com.code_intelligence.jazzer.api.BugDetectors;
import gudgeon.bench.web.Bench;
import gudgeon.bench.web.NamedBook;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * What follows the address of a page. An input is a path with its query, with the word BUILD for the id of the build there is. No page
 * answers that Gudgeon itself went wrong.
 */
public final class PageTarget {
    private static final int WAIT_MS = 60_000;
    private static final Path FOLDER = Scratch.folder();
    private static final Shelf SHELF = Shelf.open(FOLDER);
    private static final String BUILD = start();
    private static final Bench BENCH = Bench.start(
            SHELF,
            new Photos(FOLDER),
            List.of(new NamedBook("tarn-98", Tarn.book().geometry().orElseThrow())),
            0);

    private PageTarget() {}

    private static String start() {
        Build worn = Tarn.worn();
        String id = SHELF.start("Tarn 98 no. 2043", Tarn.bookText(), Found.IN_PIECES, "bench");
        List<Entry> entries = worn.entries().stream()
                .filter(entry -> !(entry.fact() instanceof Started))
                .toList();
        SHELF.append(id, entries);
        return id;
    }

    /** Called once by the fuzzer: the only connection is the one to the pages themselves. */
    public static void fuzzerInitialize() {
        BugDetectors.allowNetworkConnections((host, port) -> host.equals("localhost") || host.equals("127.0.0.1"));
    }

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        String path = new String(input, StandardCharsets.UTF_8).replace("BUILD", BUILD);
        boolean oneLine = path.chars().allMatch(c -> c > ' ' && c < 0x7f);
        if (!path.startsWith("/") || !oneLine) {
            return;
        }
        String answer = answer(path);
        Promise.kept(
                !answer.startsWith("HTTP/1.1 5"),
                path + " answers: " + answer.lines().findFirst());
        Promise.kept(answer.startsWith("HTTP/1.1 "), path + " is not answered");
    }

    private static String answer(String path) {
        int port = BENCH.address().getPort();
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(WAIT_MS);
            socket.getOutputStream()
                    .write(("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            InputStream stream = socket.getInputStream();
            return new String(stream.readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
