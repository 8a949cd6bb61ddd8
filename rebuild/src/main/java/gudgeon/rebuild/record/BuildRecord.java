package gudgeon.rebuild.record;

import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.caution.MakerFirst;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Telling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The record of a build: a pure function of it.
 *
 * @param name what the build is called
 * @param cover what stands on the cover, a sentence each
 * @param chapters its chapters in the order of the work; none is empty
 * @param fit the trial fit of the parts as measured, to be drawn; empty where the book has no figures or they do not fit together
 * @param journal every entry of the journal, one line each, in order
 * @param photos its photos, in the order of the entries
 */
public record BuildRecord(
        String name,
        List<String> cover,
        List<Chapter> chapters,
        Optional<TrialFit> fit,
        Chapter journal,
        List<Shot> photos) {
    public BuildRecord {
        cover = List.copyOf(cover);
        chapters = List.copyOf(chapters);
        photos = List.copyOf(photos);
    }

    /**
     * That of a build.
     *
     * @param hash the hash at the end of the journal's chain; empty where the journal is in no chain
     */
    public static BuildRecord of(Build build, String name, String hash, Wanted wanted) {
        Chapters chapters = new Chapters(build, wanted);
        return new BuildRecord(
                name,
                cover(build, hash, wanted),
                chapters.all(),
                fit(build),
                chapters.journal(),
                build.told(Photographed.class).stream()
                        .map(told -> new Shot(
                                told.number(), told.fact().photo(), Telling.of(told.fact(), build.structure())))
                        .toList());
    }

    private static List<String> cover(Build build, String hash, Wanted wanted) {
        List<String> cover = new ArrayList<>();
        cover.add("Engine type: " + build.book().engine().name() + ", "
                + build.book().engine().maker() + ".");
        build.started()
                .filter(started -> !started.engine().isEmpty())
                .ifPresent(started -> cover.add("Engine: " + started.engine() + "."));
        if (build.size() > 0) {
            cover.add("From " + Chapters.day(build.entry(1).at()) + " to "
                    + Chapters.day(build.entry(build.size()).at()) + ", " + build.size()
                    + " entries in its journal. Days are those of Greenwich (UTC).");
        }
        cover.add(
                hash.isEmpty()
                        ? "The journal was read from a file and stands in no chain of hashes."
                        : "Hash of the journal's last entry: " + hash
                                + ". The journal that gives it is the one told here, unchanged.");
        if (!wanted.people()) {
            cover.add("Names of sellers, machinists, signers and devices are left out.");
        }
        if (!wanted.prices()) {
            cover.add("Prices are left out.");
        }
        cover.addAll(MakerFirst.sentences());
        return cover;
    }

    private static Optional<TrialFit> fit(Build build) {
        return AsMeasured.of(build).flatMap(parts -> {
            try {
                return Optional.of(TrialFit.withoutCures(parts.geometry(), parts.choice(), LengthUnit.MM));
            } catch (UnknownChoice impossible) {
                return Optional.empty();
            }
        });
    }
}
