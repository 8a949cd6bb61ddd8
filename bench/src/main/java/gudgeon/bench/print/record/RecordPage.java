package gudgeon.bench.print.record;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gudgeon.bench.language.Localization;
import gudgeon.rebuild.record.BuildRecord;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;

/** Writes a record as one page with its pictures in it. */
public final class RecordPage {
    /** Where the pictures go, which are too many to be held at once. */
    private static final String HERE = "<div id=\"photos-here\"></div>";

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);

    /**
     * Writes the page.
     *
     * @throws IOException if the file can't be written
     */
    public void write(BuildRecord record, Pictures pictures, Localization localization, Path file, Progress progress)
            throws IOException {
        StringOutput page = new StringOutput(65_536);
        templates.render("record/alone.jte", Map.of("record", record), page);
        String text = localization.page(page.toString());
        int here = text.indexOf(HERE);
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
                Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            writer.write(text, 0, here);
            int done = 0;
            for (BuildRecord.Photo photo : record.photos()) {
                writer.write("<figure>");
                StringOutput caption = new StringOutput();
                templates.render("record/photo.jte", Map.of("photo", photo), caption);
                writer.write(localization.part(caption.toString()));
                picture(pictures.jpeg(photo.hash()), photo, localization, writer, out);
                writer.write("</figure>\n");
                progress.at(++done / (double) record.photos().size());
            }
            writer.write(text.substring(here + HERE.length()));
        }
        progress.at(1);
    }

    private static void picture(
            Optional<byte[]> jpeg, BuildRecord.Photo photo, Localization localization, Writer writer, OutputStream out)
            throws IOException {
        if (jpeg.isEmpty()) {
            writer.write(localization.part("<p>The photo is not there any more.</p>"));
            return;
        }
        writer.write("<img alt=\"" + localization.text("Photo of entry " + photo.entry())
                + "\" src=\"data:image/jpeg;base64,");
        writer.flush();
        // letters of base 64 only, so nothing in it can end the attribute
        out.write(Base64.getEncoder().encode(jpeg.get()));
        writer.write("\">");
    }
}
