package gudgeon.store.drill;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.drill.Expected;
import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A drill told in one way.
 *
 * @param drill the drill
 * @param number which of its variants, from 1; 0 as it is written
 * @param expected the alarm that must come, and when
 * @param fault the journal with the mistake
 * @param sound the journal without
 */
public record Variant(Drill drill, int number, Expected expected, String fault, String sound) {
    static Variant asWritten(Drill drill) {
        return new Variant(drill, 0, drill.expected(), text(drill.fault()), text(drill.sound()));
    }

    static String text(List<Line> lines) {
        return lines.stream().map(line -> line.json() + "\n").collect(Collectors.joining());
    }

    /** Plays the journal with the mistake. */
    public Replay playedFault(Alarms alarms) {
        return played(fault, alarms);
    }

    /** Plays the one without. */
    public Replay playedSound(Alarms alarms) {
        return played(sound, alarms);
    }

    private Replay played(String journal, Alarms alarms) {
        Reading reading = JournalFile.read(journal);
        if (reading instanceof Reading.Refused refused) {
            throw new IllegalStateException(this + " can't be read: " + refused.sentences());
        }
        List<Entry> entries = ((Reading.Read) reading).entries();
        Replay replay = Replay.of(drill.book(), entries, alarms);
        if (!replay.build().unknown().isEmpty()) {
            throw new IllegalStateException(this + " tells of what its book does not have: "
                    + replay.build().unknown());
        }
        return replay;
    }

    @Override
    public String toString() {
        return number == 0 ? drill.name() : drill.name() + ", variant " + number;
    }
}
