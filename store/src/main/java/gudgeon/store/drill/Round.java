package gudgeon.store.drill;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.drill.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All drills played once as they are written and in a number of variants.
 *
 * @param rows one for each fault, in the order of their numbers
 * @param seed which variants
 */
public record Round(List<Row> rows, long seed) {
    public Round {
        rows = List.copyOf(rows);
    }

    /**
     * What became of one fault of the list.
     *
     * @param of its number, or the name of its folder
     * @param drills its drills
     * @param variants how many were played beyond them
     * @param played what became of each, those as they are written too
     */
    public record Row(String of, List<Drill> drills, int variants, List<Played> played) {
        public Row {
            drills = List.copyOf(drills);
            played = List.copyOf(played);
        }

        /** How many came to this. */
        public long count(Outcome outcome) {
            return played.stream().filter(one -> one.outcome() == outcome).count();
        }

        /** How many twins raised an alarm. */
        public long falseAlarms() {
            return played.stream().filter(one -> !one.falseAlarms().isEmpty()).count();
        }

        /** The names of the engines it was made on. */
        public List<String> engines() {
            return drills.stream()
                    .map(drill -> drill.book().engine().name())
                    .distinct()
                    .toList();
        }
    }

    /**
     * What became of one.
     *
     * @param variant what was played
     * @param outcome what became of the mistake
     * @param falseAlarms what its twin raised
     */
    public record Played(Variant variant, Outcome outcome, List<String> falseAlarms) {
        public Played {
            falseAlarms = List.copyOf(falseAlarms);
        }

        /** Plays both its journals. */
        static Played of(Variant variant, Alarms alarms) {
            List<String> falseAlarms = variant.playedSound(alarms).turns().stream()
                    .flatMap(turn -> turn.raised().stream().map(alarm -> told(turn.number(), alarm)))
                    .toList();
            return new Played(variant, variant.expected().outcome(variant.playedFault(alarms)), falseAlarms);
        }

        private static String told(long entry, Alarm alarm) {
            return "entry " + entry + ": " + alarm.kind().key() + " at " + alarm.at() + ". " + alarm.what();
        }

        /** Whether it is as it should be. */
        public boolean isGood() {
            return outcome == Outcome.CAUGHT && falseAlarms.isEmpty();
        }
    }

    /**
     * Plays them.
     *
     * @param variants how many of each fault, shared among its drills
     */
    public static Round of(Collection<Drill> drills, int variants, long seed) {
        Map<String, List<Drill>> faults = drills.stream()
                .sorted(Comparator.comparing(Drill::name))
                .collect(Collectors.groupingBy(Drill::of, LinkedHashMap::new, Collectors.toList()));
        IdentityHashMap<EngineBook, Alarms> alarms = new IdentityHashMap<>();
        drills.forEach(drill -> alarms.put(drill.book(), new Alarms()));
        List<Row> rows = new ArrayList<>();
        faults.forEach((of, ofFault) -> rows.add(row(of, ofFault, variants, seed, alarms)));
        return new Round(rows, seed);
    }

    private static Row row(
            String of, List<Drill> drills, int variants, long seed, IdentityHashMap<EngineBook, Alarms> alarms) {
        Stream<Variant> varied = IntStream.range(0, variants)
                .mapToObj(i -> drills.get(i % drills.size()).variant(seed, 1 + i / drills.size()));
        List<Played> played = Stream.concat(drills.stream().map(Drill::asWritten), varied).toList().parallelStream()
                .map(variant -> Played.of(
                        variant,
                        Objects.requireNonNull(alarms.get(variant.drill().book()))))
                .toList();
        return new Row(of, drills, variants, played);
    }

    /** All that is not as it should be. */
    public List<Played> bad() {
        return rows.stream()
                .flatMap(row -> row.played().stream())
                .filter(played -> !played.isGood())
                .toList();
    }
}
