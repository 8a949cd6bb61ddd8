package gudgeon.store.archive;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Chain;
import gudgeon.store.shelf.ContentHash;
import gudgeon.store.shelf.Line;
import gudgeon.store.shelf.ShelvedJournal;
import gudgeon.store.shelf.Verified;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Proves all of an archive before anything of it is kept. */
final class Proof {
    private final OpenedArchive archive;
    private final List<String> sentences;

    /**
     * Of an archive.
     *
     * @param sentences takes what is wrong
     */
    Proof(OpenedArchive archive, List<String> sentences) {
        this.archive = archive;
        this.sentences = sentences;
    }

    /**
     * What was proved.
     *
     * @param books texts of all its engine books
     * @param photos how many photos there are
     */
    record Proved(ShelvedJournal journal, List<String> books, int photos) {}

    /** What can be taken in; empty if a sentence says why not. */
    Optional<Proved> prove() {
        Optional<Manifest> manifest =
                archive.text(Names.BUILD.only(), sentences).flatMap(this::manifest);
        Optional<String> journal = archive.text(Names.JOURNAL.only(), sentences);
        Optional<String> hashes = archive.text(Names.HASHES.only(), sentences);
        if (manifest.isEmpty() || journal.isEmpty() || hashes.isEmpty()) {
            return Optional.empty();
        }
        List<Line> lines = lines(manifest.get().id(), journal.get(), hashes.get());
        chain(manifest.get(), lines);
        Contents contents = Contents.of(lines);
        List<String> books = books(contents);
        int photos = photos(contents, manifest.get());
        return sentences.isEmpty()
                ? Optional.of(new Proved(
                        new ShelvedJournal(manifest.get().id(), manifest.get().name(), lines), books, photos))
                : Optional.empty();
    }

    private Optional<Manifest> manifest(String text) {
        Optional<Manifest> manifest = Manifest.of(text);
        if (manifest.isEmpty()) {
            sentences.add("Its build.json can't be used, or a newer Gudgeon wrote it.");
        }
        return manifest;
    }

    private List<Line> lines(String id, String journal, String hashes) {
        List<String> texts = journal.lines().toList();
        List<String> given = hashes.lines().toList();
        if (texts.size() != given.size()) {
            sentences.add("Its journal has " + texts.size() + " entries, but hashes.txt has " + given.size() + ".");
            return List.of();
        }
        List<Line> lines = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        String previous = Chain.beginning(id);
        for (int n = 0; n < texts.size(); n++) {
            Optional<Entry> entry = entry(n + 1, texts.get(n));
            String key = entry.map(Entry::key).orElse("");
            if (entry.isPresent() && !keys.add(key)) {
                sentences.add("Entry " + (n + 1) + " has the key of an earlier one.");
            }
            if (entry.isPresent() && (n == 0) != entry.get().fact() instanceof Started) {
                sentences.add(
                        "Entry " + (n + 1) + ": a journal begins with one entry of type started, and has no other.");
            }
            lines.add(new Line(n + 1, key, texts.get(n), previous, given.get(n)));
            previous = given.get(n);
        }
        return lines;
    }

    private Optional<Entry> entry(int number, String text) {
        Reading reading = EntryJson.read(text);
        if (reading instanceof Reading.Refused refused) {
            refused.sentences().forEach(sentence -> sentences.add("Entry " + number + " can't be read. " + sentence));
        }
        return reading instanceof Reading.Read read ? read.entries().stream().findFirst() : Optional.empty();
    }

    private void chain(Manifest manifest, List<Line> lines) {
        if (sentences.isEmpty()
                && Chain.verify(manifest.id(), lines, manifest.entries(), manifest.head())
                        instanceof Verified.Broken broken) {
            sentences.addAll(broken.sentences());
        }
    }

    private List<String> books(Contents contents) {
        List<String> texts = new ArrayList<>();
        archive.text(Names.BOOK.only(), sentences).ifPresent(text -> {
            texts.add(text);
            hashed(Names.BOOK.only(), text, contents.book());
            if (new EngineBookReader().read(text) instanceof BookReading.Refused refused) {
                refused.faults().stream()
                        .map(Fault::sentence)
                        .forEach(fault -> sentences.add("Its book.yaml: " + fault));
            }
        });
        Set<String> wanted = contents.earlierBooks();
        for (String name : archive.names(Names.EARLIER_BOOK)) {
            if (!wanted.contains(Names.EARLIER_BOOK.hash(name))) {
                sentences.add("Its " + name + " is not named by its journal.");
            }
        }
        for (String hash : wanted) {
            String name = Names.EARLIER_BOOK.named(hash);
            archive.text(name, sentences).ifPresent(text -> {
                texts.add(text);
                hashed(name, text, hash);
            });
        }
        return texts;
    }

    private void hashed(String name, String text, String hash) {
        if (!ContentHash.of(text).equals(hash)) {
            sentences.add("Its " + name + " is not the engine book that its journal names.");
        }
    }

    private int photos(Contents contents, Manifest manifest) {
        List<String> names = archive.names(Names.PHOTO);
        if (names.size() != manifest.photos()) {
            sentences.add("It holds " + names.size() + " photos, but build.json says " + manifest.photos() + ".");
        }
        for (String name : names) {
            String hash = Names.PHOTO.hash(name);
            if (!contents.photos().contains(hash)) {
                sentences.add("Its " + name + " is not named by its journal.");
            } else {
                archive.bytes(name, sentences)
                        .flatMap(bytes -> Photos.against(hash, bytes))
                        .ifPresent(sentences::add);
            }
        }
        return names.size();
    }
}
