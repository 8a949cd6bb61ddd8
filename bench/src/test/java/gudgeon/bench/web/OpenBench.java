package gudgeon.bench.web;

import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Path;
import java.util.List;

/** A shelf in a folder, served, with a person before a browser. */
final class OpenBench implements AutoCloseable {
    final Shelf shelf;
    final Browser browser;
    final Visit person;
    private final Bench bench;

    OpenBench(Path folder) {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        browser = new Browser();
        person = new Visit(browser, shelf, bench.address());
    }

    @Override
    public void close() {
        browser.close();
        bench.close();
        shelf.close();
    }
}
