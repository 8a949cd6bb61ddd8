package gudgeon.benchmarks.rebuild;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Check.How;
import gudgeon.rebuild.book.Engine;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.Where;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Way;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * An engine of 2,000 positions, 1,000 steps and 500 checks, and journals of any length of its rebuild. Ten steps make a unit, each
 * but the first covers what the one before fitted; the last of a unit needs that of the unit before. Every second step is held by a
 * check of what it covers.
 */
final class LargeEngine {
    private static final int STEPS = 1000;
    private static final int UNIT = 10;
    private static final Where NOWHERE = new Where(1, 1);
    private static final Instant BEGINNING = Instant.parse("2026-03-02T08:00:00Z");

    private LargeEngine() {}

    static EngineBook book() {
        List<Position> positions =
                IntStream.range(0, 2 * STEPS).mapToObj(LargeEngine::position).toList();
        List<Step> steps = IntStream.range(0, STEPS).mapToObj(LargeEngine::step).toList();
        List<Check> checks = IntStream.range(0, STEPS)
                .filter(s -> s % 2 == 1)
                .mapToObj(LargeEngine::check)
                .toList();
        return new EngineBook(
                new Engine("Tarn 98", "Merrow & Tull", "many times over"),
                Optional.empty(),
                new Structure(positions, List.of(), steps, checks, List.of(), List.of()));
    }

    private static Position position(int p) {
        boolean singleUse = p % 7 == 0;
        boolean critical = p % 11 == 0;
        List<String> compare = critical ? List.of("length") : List.of();
        return new Position(
                "p" + p,
                "part " + p,
                1,
                List.of(),
                singleUse,
                critical,
                "",
                compare,
                "",
                Optional.empty(),
                Optional.empty(),
                "",
                List.of(),
                "",
                NOWHERE);
    }

    private static List<String> fits(int s) {
        return List.of("p" + 2 * s, "p" + (2 * s + 1));
    }

    private static Step step(int s) {
        boolean first = s % UNIT == 0;
        boolean last = s % UNIT == UNIT - 1;
        return new Step(
                "s" + s,
                "step " + s,
                List.of(),
                fits(s),
                List.of(),
                last && s > UNIT ? List.of("s" + (s - UNIT)) : List.of(),
                first ? List.of() : fits(s - 1),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                15,
                s % 50 == 0 ? 60 : 0,
                List.of(),
                NOWHERE);
    }

    private static Check check(int s) {
        return new Check(
                "c" + s,
                "check " + s,
                How.TRIED,
                List.of(),
                fits(s - 1),
                fits(s - 1),
                List.of(),
                List.of(),
                List.of(),
                true,
                List.of("s" + s),
                Optional.empty(),
                "",
                List.of(),
                5,
                List.of(),
                NOWHERE);
    }

    /** A journal of so many entries: the engine is built step by step, every twentieth step undone and done again; then once more. */
    static List<Entry> journal(int entries) {
        List<Entry> journal = new ArrayList<>();
        add(journal, new Fact.Started("98-1", "", Found.IN_PIECES));
        for (int s = 0; journal.size() < entries; s = (s + 1) % STEPS) {
            if (s % 2 == 1) {
                add(journal, new Fact.CheckPassed("c" + s, "", ""));
            }
            built(journal, s);
            if (s % 20 == 19) {
                add(journal, new Fact.Undone("s" + s, "looked at again", List.of()));
                built(journal, s);
            }
        }
        return List.copyOf(journal.subList(0, entries));
    }

    private static void built(List<Entry> journal, int s) {
        add(journal, new Fact.StepBegun("s" + s));
        for (String position : fits(s)) {
            add(journal, new Fact.Fitted(position, "", 1, Way.NOT_SAID, ""));
        }
        add(journal, new Fact.Measured("p" + 2 * s, "", Map.of("length", "12.3")));
        add(journal, new Fact.StepDone("s" + s, ""));
        add(journal, new Fact.TimeSpent("s" + s, 15));
        add(journal, new Fact.Noted("s" + s, "as expected"));
    }

    private static void add(List<Entry> journal, Fact fact) {
        int number = journal.size();
        journal.add(new Entry("k" + number, BEGINNING.plusSeconds(60L * number), "tablet", number, fact));
    }
}
