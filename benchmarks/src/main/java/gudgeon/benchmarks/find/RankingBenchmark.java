package gudgeon.benchmarks.find;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.find.Hunt;
import gudgeon.rebuild.find.Ranking;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Recurs;
import gudgeon.rebuild.journal.Trouble;
import gudgeon.rebuild.journal.Turning;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All suspects of a tight spot ranked on the invented engine, beside one bare trial fit of it. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@State(Scope.Benchmark)
public class RankingBenchmark {
    private static final String HUNT = "tight";

    private static final EngineBook BOOK = read();

    private final Build build = Build.of(BOOK)
            .asIf(List.of(
                    new Fact.Started("98-1", "", Found.TOGETHER),
                    new HuntOpened(HUNT, Trouble.TIGHT_SPOT, ""),
                    new TightFelt(HUNT, Turning.FORWARD, 338, 3, true, Recurs.EVERY_SECOND_TURN, ""),
                    new TightFelt(HUNT, Turning.BACKWARD, 364, 3, true, Recurs.NOT_SAID, "")));

    private static EngineBook read() {
        try {
            BookReading reading = new EngineBookReader().read(Files.readString(Path.of("examples", "tarn-98.yaml")));
            return ((BookReading.Read) reading).book();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The suspects of two angles felt, with the worth of every test left. */
    @Benchmark
    public Ranking allSuspects() {
        return Ranking.of(build, Hunt.of(build, HUNT).orElseThrow());
    }

    /** One trial fit without cures. */
    @Benchmark
    public TrialFit bareTrialFit() {
        return TrialFit.withoutCures(BOOK.geometry().orElseThrow(), Choice.asBooked(), LengthUnit.MM);
    }
}
