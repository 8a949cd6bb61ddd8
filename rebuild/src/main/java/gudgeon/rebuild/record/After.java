package gudgeon.rebuild.record;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.caution.Cautions;
import gudgeon.rebuild.journal.Fact.TimeSpent;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Proving.StopTouched;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How it was timed, started and run in, how long it all took, and what can hurt. */
record After(Build build) {
    List<Chapter> chapters() {
        return List.of(
                new Chapter("sealing", "How it seals", Extract.of(build, fact -> fact instanceof Finding.OfSealing)),
                new Chapter("timing", "Timing", Extract.of(build, After::isOfTiming)),
                new Chapter("start", "First start", Extract.of(build, After::isOfStart)),
                new Chapter("running-in", "Running in", runningIn()),
                new Chapter("hours", "Hours", hours()),
                new Chapter("cautions", "Cautions", cautions()));
    }

    private static boolean isOfTiming(Object fact) {
        return fact instanceof StopTouched || fact instanceof LobeRead || fact instanceof IgnitionRead;
    }

    private static boolean isOfStart(Object fact) {
        return fact instanceof StartItemSeen || fact instanceof StartSigned;
    }

    private List<Block> runningIn() {
        List<Block> blocks =
                new ArrayList<>(Extract.of(build, fact -> fact instanceof RanIn || fact instanceof FluidChanged));
        int minutes = build.told(RanIn.class).stream()
                .mapToInt(told -> told.fact().minutes())
                .sum();
        if (minutes > 0) {
            blocks.add(new Block.Said("Together " + Amount.time(minutes) + ".", List.of()));
        }
        return blocks;
    }

    private List<Block> hours() {
        Map<String, List<Told<TimeSpent>>> by = new LinkedHashMap<>();
        build.told(TimeSpent.class)
                .forEach(told -> by.computeIfAbsent(told.fact().on(), any -> new ArrayList<>())
                        .add(told));
        if (by.isEmpty()) {
            return List.of();
        }
        List<Block.Row> rows = new ArrayList<>();
        by.forEach((on, told) -> rows.add(new Block.Row(
                List.of(
                        on.isEmpty()
                                ? "the build as a whole"
                                : build.structure().name(on),
                        Amount.time(told.stream()
                                .mapToLong(one -> one.fact().minutes())
                                .sum())),
                told.stream().map(Told::number).toList())));
        return List.of(
                new Block.Table("", List.of("Work", "Time"), rows),
                new Block.Said("Together " + Amount.time(build.minutesSpent()) + ".", List.of()));
    }

    private List<Block> cautions() {
        return Cautions.of(build.structure()).groups().stream()
                .map(group -> (Block) new Block.Table(
                        group.hazard().words(),
                        List.of("Caution", "At"),
                        group.cautions().stream()
                                .map(one ->
                                        new Block.Row(List.of(one.text(), String.join("; ", one.names())), List.of()))
                                .toList()))
                .toList();
    }
}
