package gudgeon.bench.print.record;

import gudgeon.bench.language.Localization;
import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.rebuild.record.Wish;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Prints a record of as many copies of a photo as are asked for, in a process whose memory is too small for their sum. */
final class ManyPhotos {
    private ManyPhotos() {}

    public static void main(String[] args) throws IOException {
        byte[] jpeg = Files.readAllBytes(Path.of(args[0]));
        int count = Integer.parseInt(args[1]);
        BuildRecord record = new BuildRecord(
                "Tarn 98",
                "",
                Wish.USUAL,
                List.of(),
                IntStream.range(0, count)
                        .mapToObj(n -> new BuildRecord.Photo(n + 1, "0".repeat(64), "view " + n))
                        .toList(),
                List.of());
        new RecordPrint(new Pdf())
                .write(record, hash -> Optional.of(jpeg.clone()), Paper.A4, Path.of(args[2]), Progress.NONE);
        new RecordPage()
                .write(
                        record,
                        hash -> Optional.of(jpeg.clone()),
                        Localization.ENGLISH,
                        Path.of(args[3]),
                        Progress.NONE);
    }
}
