package gudgeon.bench.cli;

import gudgeon.bench.web.Bench;
import gudgeon.bench.web.NamedBook;
import gudgeon.bench.web.device.Network;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine;

/** Serves books until the process is ended. */
final class Serving {
    private static final String DEMO = "/demo/tarn-98.yaml";

    private Serving() {}

    static NamedBook demo() {
        try (InputStream stream = Serving.class.getResourceAsStream(DEMO)) {
            if (stream == null) {
                throw new IllegalStateException("the demo's book is not on the class path");
            }
            BookReading reading = new EngineBookReader().read(stream);
            if (reading instanceof BookReading.Read read) {
                return new NamedBook("tarn-98", read.book().geometry().orElseThrow());
            }
            throw new IllegalStateException("the demo's book can't be read: " + Books.sentences(reading.faults()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static void run(
            CommandLine command,
            Shelf shelf,
            Photos photos,
            List<NamedBook> books,
            int port,
            Optional<Network> network) {
        if (port < 0 || port > 65535) {
            throw new Unusable("A port is a number from 0 to 65535, not " + port + ".");
        }
        try (Bench bench = Bench.start(shelf, photos, books, port, network)) {
            shelf.shownAt(bench.address());
            command.getOut()
                    .println("Gudgeon is at " + bench.address() + " on this machine"
                            + (network.isEmpty() ? " only" : "") + ". Stop it with Ctrl+C.");
            network.map(reached -> LocalNetwork.sentences(reached, bench))
                    .ifPresent(sentences -> sentences.forEach(command.getOut()::println));
            new CountDownLatch(1).await();
        } catch (JavalinBindException taken) {
            throw new Unusable(
                    "Port " + port + " is taken by another program; name another with --port, or 0 for any free one.");
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
