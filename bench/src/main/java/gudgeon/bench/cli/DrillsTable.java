package gudgeon.bench.cli;

import gudgeon.rebuild.drill.Outcome;
import gudgeon.store.drill.Drill;
import gudgeon.store.drill.Round;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** What became of each mistake of a round of drills, as a table in Markdown. */
final class DrillsTable {
    private DrillsTable() {}

    /**
     * The table.
     *
     * @param variants how many variants of each were asked for
     */
    static String text(Round round, int variants) {
        String rows = round.rows().stream().map(DrillsTable::row).collect(Collectors.joining());
        return String.format("""
                # The fault drill

                Each mistake below sends a rebuilt engine back to pieces. It is made in journals, as [drills](drills.md) are, on several engines, and each has a twin
                without it. Every drill is played as it is written and in variants that a generator tells otherwise: other sizes, another order, other names, units, devices
                and times, notes between. A mistake is *caught* when the alarm of the right kind stands at the right place at the earliest entry that shows it, *late* when it
                comes after it, *missed* when it never comes. *False* counts the twins that raise any alarm at all.

                Made by `./gudgeon drills --variants %d --seed %d --table docs/fault-drill.md`; a test holds it to what the program does.

                | # | the mistake | engines | drills | variants | caught | late | missed | false |
                | --- | --- | --- | ---: | ---: | ---: | ---: | ---: | ---: |
                """, variants, round.seed()) + rows + total(round);
    }

    private static String row(Round.Row row) {
        return line(
                row.of(),
                row.drills().stream().map(Drill::mistake).distinct().collect(Collectors.joining(" ")),
                String.join(", ", row.engines()),
                List.of(
                        (long) row.drills().size(),
                        (long) row.variants(),
                        row.count(Outcome.CAUGHT),
                        row.count(Outcome.LATE),
                        row.count(Outcome.MISSED),
                        row.falseAlarms()));
    }

    private static String total(Round round) {
        return line(
                "",
                "all",
                "",
                List.of(
                        sum(round, row -> row.drills().size()),
                        sum(round, Round.Row::variants),
                        sum(round, row -> row.count(Outcome.CAUGHT)),
                        sum(round, row -> row.count(Outcome.LATE)),
                        sum(round, row -> row.count(Outcome.MISSED)),
                        sum(round, Round.Row::falseAlarms)));
    }

    private static long sum(Round round, ToLongFunction<Round.Row> of) {
        return round.rows().stream().mapToLong(of).sum();
    }

    private static String line(String of, String mistake, String engines, List<Long> counts) {
        return "| " + of + " | " + mistake.replace("|", "\\|") + " | " + engines.replace("|", "\\|") + " | "
                + counts.stream().map(String::valueOf).collect(Collectors.joining(" | ")) + " |\n";
    }
}
