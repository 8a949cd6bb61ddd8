package gudgeon.store.shelf;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The database's tables. */
record Journals(Handle handle) {
    private static final String BUILDS = "SELECT id, name, entries, head FROM build ";
    private static final RowMapper<Shelved> SHELVED = (row, context) ->
            new Shelved(row.getString("id"), row.getString("name"), row.getLong("entries"), row.getString("head"));

    private static final String LINES = "SELECT number, key, line, previous, hash FROM entry WHERE build = ? ";
    private static final RowMapper<Line> LINE = (row, context) -> new Line(
            row.getLong("number"),
            row.getString("key"),
            row.getString("line"),
            row.getString("previous"),
            row.getString("hash"));

    /**
     * A build's row.
     *
     * @param head hash of its last entry
     */
    record Shelved(String id, String name, long entries, String head) {
        /** Whether a line is the journal's last. */
        boolean endsIn(Optional<Line> line) {
            return line.filter(last -> last.number() == entries && last.hash().equals(head))
                    .isPresent();
        }
    }

    List<Shelved> builds() {
        return handle.select(BUILDS + "ORDER BY id").map(SHELVED).list();
    }

    /** How many entries all builds have. */
    long entries() {
        return handle.createQuery("SELECT coalesce(sum(entries), 0) FROM build")
                .mapTo(Long.class)
                .one();
    }

    List<String> ids() {
        return handle.createQuery("SELECT id FROM build ORDER BY id")
                .mapTo(String.class)
                .list();
    }

    /** The ids of the builds that entries are of. */
    List<String> idsOfEntries() {
        return handle.createQuery("SELECT DISTINCT build FROM entry ORDER BY build")
                .mapTo(String.class)
                .list();
    }

    Optional<Shelved> build(String id) {
        return handle.select(BUILDS + "WHERE id = ?", id).map(SHELVED).findOne();
    }

    List<Line> lines(String build) {
        return handle.select(LINES + "ORDER BY number", build).map(LINE).list();
    }

    Optional<Line> numbered(String build, long number) {
        return handle.select(LINES + "AND number = ?", build, number).map(LINE).findOne();
    }

    Optional<Line> keyed(String build, String key) {
        return handle.select(LINES + "AND key = ?", build, key).map(LINE).findOne();
    }

    Optional<String> book(String hash) {
        return handle.select("SELECT text FROM book WHERE hash = ?", hash)
                .mapTo(String.class)
                .findOne();
    }

    List<String> bookHashes() {
        return handle.createQuery("SELECT hash FROM book").mapTo(String.class).list();
    }

    void addBook(String text) {
        handle.execute(
                "INSERT INTO book (hash, text) VALUES (?, ?) ON CONFLICT DO NOTHING", ContentHash.of(text), text);
    }

    void addBuild(String id, String name) {
        handle.execute(
                "INSERT INTO build (id, name, entries, head) VALUES (?, ?, 0, ?)", id, name, Chain.beginning(id));
    }

    /** Adds lines, at least one, that follow those there are. */
    void append(String build, List<Line> lines) {
        for (Line line : lines) {
            handle.execute(
                    "INSERT INTO entry (build, number, key, line, previous, hash) VALUES (?, ?, ?, ?, ?, ?)",
                    build,
                    line.number(),
                    line.key(),
                    line.json(),
                    line.previous(),
                    line.hash());
        }
        Line last = lines.get(lines.size() - 1);
        handle.execute("UPDATE build SET entries = ?, head = ? WHERE id = ?", last.number(), last.hash(), build);
    }
}
