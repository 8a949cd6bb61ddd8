package gudgeon.store.archive;

import gudgeon.store.disk.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * An archive's files, none of which is ever unpacked to a place that the archive names. No more is read of a file than its kind may
 * have, whatever the archive claims.
 */
final class OpenedArchive implements AutoCloseable {
    private static final long MOST_BYTES = 4L << 30;
    private static final int MOST_FILES = 20_000;

    private final ZipFile zip;
    private final Map<String, ZipEntry> files = new LinkedHashMap<>();

    private OpenedArchive(ZipFile zip) {
        this.zip = zip;
    }

    /**
     * Opens an archive and looks at the names in it.
     *
     * @param sentences takes what is wrong with them
     * @throws IOException if it is no zip file or can't be read
     */
    static OpenedArchive open(Path file, List<String> sentences) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException("it has more than 4 GB");
        }
        OpenedArchive archive = new OpenedArchive(new ZipFile(file.toFile(), StandardCharsets.UTF_8));
        archive.list(sentences);
        return archive;
    }

    private void list(List<String> sentences) {
        if (zip.size() > MOST_FILES) {
            sentences.add("It holds " + zip.size() + " files, more than a build has.");
            return;
        }
        for (ZipEntry entry : Collections.list(zip.entries())) {
            if (Names.of(entry.getName()).isEmpty()) {
                sentences.add("It holds '" + shown(entry.getName()) + "', which is no file of an archive.");
            } else if (files.put(entry.getName(), entry) != null) {
                sentences.add("It holds " + entry.getName() + " twice.");
            }
        }
    }

    private static String shown(String name) {
        return name.substring(0, Math.min(80, name.length())).replaceAll("\\p{Cntrl}", "?");
    }

    /** The names of the files of a kind. */
    List<String> names(Names kind) {
        return files.keySet().stream()
                .filter(name -> Names.of(name).equals(Optional.of(kind)))
                .toList();
    }

    /** The bytes of a file; empty, with a sentence, if it is not there, can't be unpacked or is too big. */
    Optional<byte[]> bytes(String name, List<String> sentences) {
        ZipEntry entry = files.get(name);
        if (entry == null) {
            sentences.add("It lacks " + name + ".");
            return Optional.empty();
        }
        int most = Names.of(name).map(Names::mostBytes).orElse(0);
        try (InputStream stream = zip.getInputStream(entry)) {
            byte[] bytes = stream.readNBytes(most + 1);
            if (bytes.length > most) {
                sentences.add("Its " + name + " unpacks to more than " + most + " bytes.");
                return Optional.empty();
            }
            return Optional.of(bytes);
        } catch (IOException broken) {
            sentences.add("Its " + name + " can't be unpacked: " + Reason.of(broken) + ".");
            return Optional.empty();
        }
    }

    /** The same as text in UTF-8. */
    Optional<String> text(String name, List<String> sentences) {
        return bytes(name, sentences).flatMap(bytes -> {
            try {
                return Optional.of(StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString());
            } catch (CharacterCodingException notText) {
                sentences.add("Its " + name + " is not text in UTF-8.");
                return Optional.empty();
            }
        });
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
