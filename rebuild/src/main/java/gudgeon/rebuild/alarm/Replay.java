package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import java.util.ArrayList;
import java.util.List;

/**
 * A journal played entry by entry, and the alarms that come and go.
 *
 * @param turns the entries at which an alarm came, grew worse or went
 * @param build the build at the end
 * @param standing the alarms that stand at the end, worst first
 */
public record Replay(List<Turn> turns, Build build, List<Alarm> standing) {
    public Replay {
        turns = List.copyOf(turns);
        standing = List.copyOf(standing);
    }

    /**
     * An entry at which something came of the alarms.
     *
     * @param number number of the entry, from 1
     * @param raised alarms that came with it, or grew worse
     * @param gone alarms that stood before it and no longer do
     */
    public record Turn(long number, List<Alarm> raised, List<Alarm> gone) {
        public Turn {
            raised = List.copyOf(raised);
            gone = List.copyOf(gone);
        }
    }

    /** Plays a journal over its book. */
    public static Replay of(EngineBook book, List<Entry> entries) {
        return of(book, entries, new Alarms());
    }

    /**
     * Plays a journal over its book.
     *
     * @param alarms may have seen others before, of which it remembers the trial fits
     */
    public static Replay of(EngineBook book, List<Entry> entries, Alarms alarms) {
        Build build = Build.of(book);
        List<Alarm> before = List.of();
        List<Turn> turns = new ArrayList<>();
        for (Entry entry : entries) {
            build = build.after(entry);
            List<Alarm> now = alarms.standing(build);
            Turn turn = new Turn(build.size(), less(now, before, true), less(before, now, false));
            if (!turn.raised().isEmpty() || !turn.gone().isEmpty()) {
                turns.add(turn);
            }
            before = now;
        }
        return new Replay(turns, build, before);
    }

    /** The alarms of one time that do not stand at the other; with {@code worse} also those that were less bad there. */
    private static List<Alarm> less(List<Alarm> of, List<Alarm> other, boolean worse) {
        return of.stream()
                .filter(alarm -> other.stream()
                        .noneMatch(one -> one.isSameAs(alarm)
                                && !(worse && alarm.severity().compareTo(one.severity()) < 0)))
                .toList();
    }
}
