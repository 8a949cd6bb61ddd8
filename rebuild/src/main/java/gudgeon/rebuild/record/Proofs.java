package gudgeon.rebuild.record;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.CheckWaived;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was proved, what was passed over, and what went wrong on the way. */
record Proofs(Build build) {
    List<Chapter> chapters() {
        return List.of(
                new Chapter("checks", "Checks", checks()),
                new Chapter("faults", "Faults, and what they cost", faults()));
    }

    private List<Block> checks() {
        List<Block.Row> rows = build.structure().checks().stream()
                .flatMap(check -> row(check).stream())
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new Block.Table("", List.of("Check", "Stands", "Read", "Said", "Done"), rows));
    }

    private Optional<Block.Row> row(Check check) {
        List<Long> told = told(check.id());
        if (told.isEmpty()) {
            return Optional.empty();
        }
        CheckState state = build.check(check.id());
        return Optional.of(new Block.Row(
                List.of(
                        check.name() + (check.isHoldPoint() ? " (hold point)" : ""),
                        state.status().words(),
                        state.reading().isEmpty() ? "–" : state.reading(),
                        state.remark().isEmpty() ? "–" : state.remark(),
                        told.size() == 1 ? "once" : told.size() + " times"),
                told));
    }

    private List<Long> told(String check) {
        return build.about(check).stream()
                .filter(number -> build.fact(number)
                        .filter(fact -> fact instanceof CheckPassed
                                || fact instanceof CheckFailed
                                || fact instanceof CheckWaived)
                        .isPresent())
                .sorted()
                .toList();
    }

    private List<Block> faults() {
        List<Block> blocks = new ArrayList<>(Extract.of(
                build,
                fact -> fact instanceof Fact.FaultFound
                        || fact instanceof CheckFailed
                        || fact instanceof Fact.WentTight
                        || fact instanceof Finding.OfHunt
                        || fact instanceof Fact.Undone));
        List<String> bought = build.told(Fact.Undone.class).stream()
                .flatMap(told -> told.fact().toBuy().stream())
                .map(position -> build.structure().name(position))
                .distinct()
                .toList();
        if (!bought.isEmpty()) {
            blocks.add(new Block.Said("To be bought again for it: " + Sentence.list(bought) + ".", List.of()));
        }
        long again = build.told(Fact.Undone.class).size();
        if (again > 0) {
            blocks.add(new Block.Said(Amount.of(again, "step") + " had to be undone.", List.of()));
        }
        return blocks;
    }
}
