package gudgeon.benchmarks.rebuild;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.plan.BestOrder;
import gudgeon.rebuild.plan.Chances;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.plan.Undo;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Folding, alarms, plan, undoing and order of {@link LargeEngine}: what matters is how they grow with the journal. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class RebuildBenchmark {
    /** Longer and longer journals of the same engine. */
    @State(Scope.Benchmark)
    public static class Journal {
        @Param({"1000", "10000", "100000"})
        int entries;

        EngineBook book;
        List<Entry> journal;
        Build build;

        @Setup
        public void fold() {
            book = LargeEngine.book();
            journal = LargeEngine.journal(entries);
            build = Build.of(book).after(journal);
        }
    }

    /** A rebuild that is half done. */
    @State(Scope.Benchmark)
    public static class HalfDone {
        final EngineBook book = LargeEngine.book();
        final Build build = Build.of(book).after(LargeEngine.journal(4000));
        final Instant now = build.entry(build.size()).at();
    }

    @Benchmark
    public Build foldOfAJournal(Journal of) {
        return Build.of(of.book).after(of.journal);
    }

    @Benchmark
    public Build oneEntryMore(Journal of) {
        return of.build.after(new Entry("one-more", Instant.EPOCH, "tablet", of.entries, new Fact.Noted("s1", "")));
    }

    @Benchmark
    public List<Alarm> alarms(Journal of) {
        return Alarms.of(of.build);
    }

    @Benchmark
    public Plan plan(HalfDone half) {
        return Plan.of(half.build, half.now);
    }

    @Benchmark
    public Undo undo(HalfDone half) {
        return Undo.of(half.build, "p0");
    }

    @Benchmark
    public BestOrder bestOrder(HalfDone half) {
        return BestOrder.of(half.book, Chances.usual(), Duration.ofSeconds(5));
    }
}
