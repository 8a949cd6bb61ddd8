package gudgeon.fuzz;

import gudgeon.store.shelf.Chain;
import gudgeon.store.shelf.ContentHash;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipOutputStream;

/**
 * The files of an archive as one input: each begins with a line {@code === name}. Where none is called build.json, the journal is
 * sealed: {@code BOOKHASH} in it becomes the hash of book.yaml, and hashes.txt and build.json are made as they must be.
 */
final class Members {
    private static final String MARK = "=== ";

    private Members() {}

    static boolean isZip(byte[] input) {
        return input.length > 1 && input[0] == 'P' && input[1] == 'K';
    }

    /** The files as a zip file. */
    static byte[] packed(byte[] input) throws IOException {
        Map<String, String> files = files(new String(input, StandardCharsets.ISO_8859_1));
        if (!files.containsKey("build.json")) {
            seal(files);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                put(zip, file.getKey(), file.getValue().getBytes(StandardCharsets.ISO_8859_1));
            }
        }
        return bytes.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        try {
            zip.putNextEntry(new ZipEntry(name));
        } catch (ZipException | IllegalArgumentException notAName) {
            return;
        }
        zip.write(content);
        zip.closeEntry();
    }

    private static Map<String, String> files(String input) {
        Map<String, String> files = new LinkedHashMap<>();
        for (String part : ("\n" + input).split("\n" + MARK, -1)) {
            int end = part.indexOf('\n');
            if (end >= 0) {
                files.put(part.substring(0, end), part.substring(end + 1));
            }
        }
        return files;
    }

    private static void seal(Map<String, String> files) {
        String id = "tarn-fuzz";
        String book = utf8(files.getOrDefault("book.yaml", ""));
        String journal = utf8(files.getOrDefault("journal.jsonl", "")).replace("BOOKHASH", ContentHash.of(book));
        StringBuilder hashes = new StringBuilder();
        String head = Chain.beginning(id);
        List<String> lines = journal.lines().toList();
        for (String line : lines) {
            head = ContentHash.of(head + line);
            hashes.append(head).append('\n');
        }
        long photos = files.keySet().stream()
                .filter(name -> name.startsWith("photos/"))
                .count();
        files.put("journal.jsonl", latin1(journal));
        files.put("hashes.txt", hashes.toString());
        files.put(
                "build.json",
                "{\"archive\":1,\"id\":\"" + id + "\",\"name\":\"Tarn\",\"entries\":" + lines.size() + ",\"head\":\""
                        + head + "\",\"photos\":" + photos + "}");
    }

    private static String utf8(String latin1) {
        return new String(latin1.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
    }

    private static String latin1(String utf8) {
        return new String(utf8.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    }
}
