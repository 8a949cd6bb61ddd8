package gudgeon.rebuild.drill;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.AlarmKind;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** A journal that is told in one of many ways: units, decimal marks, order of what may come in any order, one device or two. */
final class Variant {
    private static final double MM_PER_INCH = 25.4;
    private static final int WAYS_TO_WRITE = 5;
    /** So many entries tell that it was started and what it is measured with. */
    private static final int KITTED = 6;

    private final EngineBook book;
    private final Random random;
    private final List<Fact> facts = new ArrayList<>();

    Variant(EngineBook book, Random random) {
        this.book = book;
        this.random = random;
        tell(new Fact.Started("number 7", "", Found.IN_PIECES));
        List<Fact> instruments = new ArrayList<>(List.of(
                kept("micrometer", InstrumentKind.MICROMETER, "0 to 200 mm", "0.001 mm", "0.003 mm"),
                kept("inch micrometer", InstrumentKind.MICROMETER, "0 to 8 in", "0.0001 in", "0.0001 in"),
                kept("bore gauge", InstrumentKind.BORE_GAUGE, "20 to 200 mm", "0.001 mm", "0.003 mm"),
                kept("vernier", InstrumentKind.CALLIPER, "0 to 200 mm", "0.02 mm", "0.03 mm"),
                kept("feelers", InstrumentKind.FEELER_GAUGES, "0.02 to 1 mm", "0.01 mm", "0.005 mm")));
        shuffle(instruments).forEach(this::tell);
    }

    private static Fact kept(String name, InstrumentKind kind, String range, String resolution, String error) {
        return new InstrumentKept(name, kind, range, resolution, error, Optional.empty(), "");
    }

    <T> List<T> shuffle(List<T> all) {
        List<T> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    Variant tell(Fact fact) {
        facts.add(fact);
        return this;
    }

    Variant tellAnyhow(List<Fact> some) {
        shuffle(some).forEach(this::tell);
        return this;
    }

    /** A size as one person or another writes it, by the thousandth of a millimetre or finer. */
    String written(double mm) {
        return switch (random.nextInt(WAYS_TO_WRITE)) {
            case 0 -> String.format(Locale.ROOT, "%.3f mm", mm);
            case 1 -> String.format(Locale.ROOT, "%.3f", mm);
            case 2 -> String.format(Locale.ROOT, "%.3f mm", mm).replace('.', ',');
            case 3 -> String.format(Locale.ROOT, "%.5f in", mm / MM_PER_INCH);
            default -> String.format(Locale.ROOT, "%.2f thou", 1000 * mm / MM_PER_INCH);
        };
    }

    Fact read(String dimension, String part, String at, double mm, String with) {
        return written(dimension, part, at, written(mm), with);
    }

    static Fact written(String dimension, String part, String at, String value, String with) {
        return new ReadingTaken(dimension, part, 1, at, value, with, OptionalDouble.empty(), "");
    }

    /** Number of the entry told last. */
    int told() {
        return facts.size();
    }

    static String key(int number) {
        return "e" + number;
    }

    /** The alarms that stand after so many entries. */
    List<Alarm> after(int entries) {
        return Alarms.of(build(entries));
    }

    boolean stands(AlarmKind kind, String at, int entries) {
        return after(entries).stream()
                .anyMatch(alarm -> alarm.kind() == kind && alarm.at().equals(at));
    }

    /** Those alarms of a kind that ever stand, with the entry at which they do. */
    List<String> ever(AlarmKind kind) {
        List<String> ever = new ArrayList<>();
        for (int entries = KITTED + 1; entries <= told(); entries++) {
            int after = entries;
            after(entries).stream()
                    .filter(alarm -> alarm.kind() == kind)
                    .forEach(alarm -> ever.add(after + ": " + alarm.what() + " " + alarm.figures()));
        }
        return ever;
    }

    Build build(int entries) {
        List<Entry> all = new ArrayList<>();
        boolean two = random.nextBoolean();
        for (int i = 0; i < entries; i++) {
            String device = two && i % 3 == 1 ? "telephone" : "tablet";
            all.add(new Entry(key(i + 1), Instant.EPOCH.plusSeconds(60L * i), device, i, facts.get(i)));
        }
        return Build.of(book).after(all);
    }
}
