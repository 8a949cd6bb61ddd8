package gudgeon.bench.print.record;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import gudgeon.bench.print.GapPicture;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.store.photo.Photos;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The record as one page that needs nothing beside it: its photos are part of it. */
public final class RecordPage {
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Photos photos;

    public RecordPage(Photos photos) {
        this.photos = photos;
    }

    /** Writes it into a file that is not there yet, or is empty. */
    public void write(BuildRecord told, Path file, Progress progress) throws IOException {
        List<PhotoShown> shown = new ArrayList<>();
        told.photos().forEach(shot -> shown.add(new PhotoShown(shot, photos)));
        try (Writer page = Files.newBufferedWriter(file)) {
            templates.render(
                    "print/record/page.jte",
                    Map.of("told", told, "drawing", drawing(told), "photos", shown, "progress", progress),
                    new WriterOutput(page));
        }
        progress.done(1);
    }

    static String drawing(BuildRecord told) {
        return told.fit().map(fit -> GapPicture.svg(fit, LengthUnit.MM)).orElse("");
    }
}
