package gudgeon.bench.web.record;

import gudgeon.bench.language.Localization;
import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.record.Pictures;
import gudgeon.bench.print.record.Progress;
import gudgeon.bench.print.record.RecordPage;
import gudgeon.bench.print.record.RecordPrint;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.store.photo.Photos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Makes records one after the other, each into a file that goes when Gudgeon ends; of each build the last one is kept. */
final class Records {
    private static final Logger LOG = LoggerFactory.getLogger(Records.class);

    private final Pictures pictures;
    private final Paper paper = Paper.A4;
    private final Pdf pdf = new Pdf();
    private final RecordPage page = new RecordPage();
    private final Map<String, Making> makings = new ConcurrentHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "records");
        thread.setDaemon(true);
        return thread;
    });

    Records(Photos photos) {
        pictures = hash -> photos.noLongerThan(hash, Pictures.LONGEST);
    }

    /** The record of a build that was asked for last. */
    Optional<Making> of(String build) {
        return Optional.ofNullable(makings.get(build));
    }

    /** Begins a record in the language of a localization, unless one of that build is under way. */
    synchronized void begin(String build, BuildRecord record, Making.Kind kind, Localization localization) {
        if (of(build).filter(Making::isUnderWay).isEmpty()) {
            of(build).flatMap(Making::file).ifPresent(Records::delete);
            makings.put(build, new Making(kind, record.wish(), record.entries().size(), 0, Optional.empty(), ""));
            worker.execute(() -> make(build, record, kind, localization));
        }
    }

    private void make(String build, BuildRecord record, Making.Kind kind, Localization localization) {
        Optional<Path> begun = Optional.empty();
        try {
            Path file = Files.createTempFile("gudgeon-record", "." + kind.ending());
            begun = Optional.of(file);
            file.toFile().deleteOnExit();
            Progress progress = share -> makings.computeIfPresent(build, (id, making) -> making.at(share));
            if (kind == Making.Kind.PDF) {
                new RecordPrint(pdf.in(localization)).write(record, pictures, paper, file, progress);
            } else {
                page.write(record, pictures, localization, file, progress);
            }
            makings.computeIfPresent(build, (id, making) -> making.done(file));
        } catch (IOException | RuntimeException fault) {
            LOG.error("While making the record of {}", build, fault);
            begun.ifPresent(Records::delete);
            makings.computeIfPresent(
                    build,
                    (id, making) -> making.failed(
                            "The record could not be made. See that the disk has room, and ask for it again."));
        }
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException held) {
            // some systems keep a file that is being sent; it goes when Gudgeon ends
            LOG.debug("{} stays until the end", file, held);
        }
    }
}
