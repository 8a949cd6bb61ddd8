package gudgeon.rebuild.record;

import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Tightness;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WitnessMarked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How it goes together: the trial fit of the parts as measured, and how tight it is. */
record Together(Build build) {
    List<Chapter> chapters() {
        return List.of(new Chapter("fit", "Trial fit", fit()), new Chapter("torque", "How tight", torque()));
    }

    private List<Block> fit() {
        List<Block> blocks = new ArrayList<>();
        AsMeasured.of(build).ifPresent(parts -> {
            parts.notes().forEach(note -> blocks.add(new Block.Said(note, List.of())));
            tried(parts).ifPresent(fit -> {
                blocks.add(new Block.Said(fit.sentence(), List.of()));
                for (Finding finding : fit.findings()) {
                    blocks.add(new Block.Said(finding.sentence(), List.of()));
                }
                blocks.add(new Block.Gaps(fit));
            });
        });
        return blocks;
    }

    private static Optional<TrialFit> tried(AsMeasured parts) {
        try {
            return Optional.of(TrialFit.withoutCures(parts.geometry(), parts.choice(), LengthUnit.MM));
        } catch (UnknownChoice impossible) {
            return Optional.empty();
        }
    }

    private List<Block> torque() {
        List<Block> blocks = new ArrayList<>();
        for (JointNow joint : JointNow.all(build)) {
            List<Block.Row> rows = joint.holes().stream()
                    .filter(hole -> !hole.tightened().isEmpty())
                    .map(Together::row)
                    .toList();
            if (!rows.isEmpty()) {
                blocks.add(new Block.Table(
                        joint.book().name(),
                        List.of("Hole", "Fastener", "Set to", "Pass", "Wrench", "Marked across"),
                        rows));
                blocks.add(new Block.Said(Tightness.of(joint).sentence(), List.of()));
            }
        }
        blocks.addAll(Extract.of(build, fact -> fact instanceof TightenedAgain || fact instanceof WitnessMarked));
        return blocks;
    }

    private static Block.Row row(HoleNow hole) {
        Tightened last = hole.tightened().get(hole.tightened().size() - 1).fact();
        return new Block.Row(
                List.of(
                        hole.id(),
                        (hole.thread() + " "
                                        + hole.fastener()
                                                .flatMap(one -> one.length())
                                                .map(length -> "× " + Unit.MM.figure(length.value()))
                                                .orElse(""))
                                .strip(),
                        last.torque().isEmpty() ? "by hand" : last.torque(),
                        String.valueOf(last.pass()),
                        last.wrench().isEmpty() ? "not said" : last.wrench(),
                        hole.marked() ? "yes" : "no"),
                hole.tightened().stream().map(told -> told.number()).toList());
    }
}
