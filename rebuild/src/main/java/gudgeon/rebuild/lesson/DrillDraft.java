package gudgeon.rebuild.lesson;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Telling;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/** A mistake of a build made into a drill, so that it is caught in the next one: the journal up to where it showed, and its twin. */
public sealed interface DrillDraft {
    /**
     * It can be one.
     *
     * @param fault the journal with the mistake, as far as the entry that shows it
     * @param sound the same without: in the place of each mistaken entry what was told of the same thing later, if anything
     * @param shown what the entry says that shows it
     * @param alarm the alarm that tells the two apart
     */
    record Drafted(List<Entry> fault, List<Entry> sound, String shown, Alarm alarm) implements DrillDraft {
        public Drafted {
            fault = List.copyOf(fault);
            sound = List.copyOf(sound);
        }
    }

    /**
     * It can't.
     *
     * @param sentences why, and what to do
     */
    record Refused(List<String> sentences) implements DrillDraft {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * The drill of a mistake.
     *
     * @param shown number of the entry at which it showed
     * @param mistakes numbers of the entries that were the mistake
     */
    static DrillDraft of(Build build, long shown, Collection<Long> mistakes) {
        List<String> refusals = new ArrayList<>();
        if (shown < 1 || shown > build.size()) {
            refusals.add("Entry " + shown + " is not in the journal, which has " + build.size() + ".");
        }
        if (mistakes.isEmpty()) {
            refusals.add(
                    "It is not said which entries were the mistake. Name one or more, none after the one that shows it.");
        }
        mistakes.stream()
                .filter(number -> number < 1 || number > shown)
                .forEach(number -> refusals.add(
                        "Entry " + number + " comes after the one that shows the mistake, or is not in the journal."));
        return refusals.isEmpty() ? compared(build, shown, mistakes) : new Refused(refusals);
    }

    private static DrillDraft compared(Build build, long shown, Collection<Long> mistakes) {
        List<Fact> fault = new ArrayList<>();
        List<Fact> sound = new ArrayList<>();
        LongStream.rangeClosed(1, shown)
                .forEach(number -> build.fact(number).ifPresent(fact -> {
                    fault.add(fact);
                    if (mistakes.contains(number)) {
                        later(build, number, fact).ifPresent(sound::add);
                    } else {
                        sound.add(fact);
                    }
                }));
        List<Alarm> silent = Alarms.of(Build.of(build.book()).asIf(sound));
        Optional<Alarm> telling = Alarms.of(Build.of(build.book()).asIf(fault)).stream()
                .filter(alarm -> silent.stream().noneMatch(other -> same(alarm, other)))
                .findFirst();
        if (telling.isEmpty()) {
            return new Refused(
                    List.of(
                            "No alarm stands with the mistake that does not stand without it: it is not caught yet."
                                    + " Look whether these entries are the mistake; if they are, tell those who write Gudgeon of it."));
        }
        if (!silent.isEmpty()) {
            return new Refused(List.of("Without these entries an alarm stands all the same: "
                    + silent.get(0).what() + " Name its entries as well."));
        }
        String words = Telling.of(fault.get(fault.size() - 1), build.structure());
        return new Drafted(entries(fault), entries(sound), words, telling.get());
    }

    private static boolean same(Alarm one, Alarm other) {
        return one.kind() == other.kind() && one.at().equals(other.at());
    }

    /** What was told of the same thing in the same way after it. */
    private static Optional<Fact> later(Build build, long number, Fact wrong) {
        return LongStream.rangeClosed(number + 1, build.size())
                .boxed()
                .flatMap(after -> build.fact(after).stream())
                .filter(fact ->
                        fact.getClass() == wrong.getClass() && fact.about().equals(wrong.about()))
                .filter(fact -> !fact.equals(wrong))
                .findFirst();
    }

    /** Nobody's device and no true time: a drill is told to others. */
    private static List<Entry> entries(List<Fact> facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            int number = entries.size();
            entries.add(new Entry(
                    "e" + (number + 1),
                    Instant.parse("2026-01-01T09:00:00Z").plusSeconds(60L * number),
                    "bench",
                    number,
                    fact));
        }
        return entries;
    }
}
