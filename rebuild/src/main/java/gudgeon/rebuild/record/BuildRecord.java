package gudgeon.rebuild.record;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.caution.MakerFirst;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Telling;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The record of a build. It says what its journal says, so that it can be believed no more and no less.
 *
 * @param name what the person calls the build
 * @param lastHash the last hash of the journal's chain, in hexadecimal; empty where the journal is kept without
 * @param wish what is in it
 * @param chapters its chapters
 * @param photos its photos, in the order of the journal
 * @param entries every entry, struck out or not
 */
public record BuildRecord(
        String name, String lastHash, Wish wish, List<Chapter> chapters, List<Photo> photos, List<Line> entries) {
    public BuildRecord {
        chapters = List.copyOf(chapters);
        photos = List.copyOf(photos);
        entries = List.copyOf(entries);
    }

    /**
     * A photo.
     *
     * @param entry number of its entry
     * @param hash content hash of the picture
     * @param caption what it shows
     */
    public record Photo(long entry, String hash, String caption) {}

    /**
     * An entry.
     *
     * @param number its number, from 1
     * @param at when it was made
     * @param sentence what it says
     * @param struck whether it was corrected, so that it no longer counts
     */
    public record Line(long number, Instant at, String sentence, boolean struck) {}

    /** The record of a build. */
    public static BuildRecord of(Build build, String name, String lastHash, Wish wish) {
        Veil veil = new Veil(build, wish);
        List<Chapter> chapters = Stream.of(
                        new AsItWas(build).chapters(),
                        new Sizes(build).chapters(),
                        new Parts(build, wish).chapters(),
                        new Together(build).chapters(),
                        new Proofs(build).chapters(),
                        new After(build).chapters())
                .flatMap(List::stream)
                .filter(chapter -> !chapter.blocks().isEmpty())
                .map(chapter -> veiled(chapter, veil))
                .toList();
        return new BuildRecord(name, lastHash, wish, chapters, photos(build, veil), lines(build, veil, wish));
    }

    /** What was left out of it, and what it is not; sentences. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (!wish.people()) {
            remarks.add(
                    "Names of people, sellers and devices are left out. What was written as a remark stands as written.");
        }
        if (!wish.prices()) {
            remarks.add("Prices are left out.");
        }
        remarks.addAll(MakerFirst.sentences());
        return remarks;
    }

    private static List<Photo> photos(Build build, Veil veil) {
        return build.told(Photographed.class).stream()
                .filter(told -> !told.fact().photo().isEmpty())
                .map(told -> new Photo(told.number(), told.fact().photo(), veil.over(caption(build, told.fact()))))
                .toList();
    }

    private static String caption(Build build, Photographed photo) {
        String of = photo.on().isEmpty() ? "" : build.structure().name(photo.on());
        return of + (of.isEmpty() || photo.caption().isEmpty() ? "" : ": ") + photo.caption();
    }

    private static List<Line> lines(Build build, Veil veil, Wish wish) {
        List<Line> lines = new ArrayList<>();
        for (Entry entry : build.entries()) {
            long number = lines.size() + 1L;
            lines.add(new Line(
                    number,
                    entry.at(),
                    veil.over(Telling.of(entry.fact(), build.structure()))
                            + (wish.people() ? " Told on " + entry.device() + "." : ""),
                    build.isCorrected(number)));
        }
        return lines;
    }

    private static Chapter veiled(Chapter chapter, Veil veil) {
        return new Chapter(
                chapter.id(),
                chapter.title(),
                chapter.blocks().stream().map(block -> veiled(block, veil)).toList());
    }

    private static Block veiled(Block block, Veil veil) {
        if (block instanceof Block.Said said) {
            return new Block.Said(veil.over(said.sentence()), said.entries());
        }
        if (block instanceof Block.Table table) {
            return new Block.Table(
                    table.title(),
                    table.heads(),
                    table.rows().stream()
                            .map(row -> new Block.Row(
                                    row.cells().stream().map(veil::over).toList(), row.entries()))
                            .toList());
        }
        return Objects.requireNonNull(block);
    }

    /** The chapter of that id. */
    public Optional<Chapter> chapter(String id) {
        return chapters.stream().filter(chapter -> chapter.id().equals(id)).findFirst();
    }
}
