package gudgeon.rebuild.drill;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Replay;

/**
 * The alarm that a mistake must raise.
 *
 * @param kind key of its kind
 * @param at where it must stand
 * @param due number of the entry at which it must stand at the latest
 */
public record Expected(String kind, String at, long due) {
    /** The same alarm, due at another entry. */
    public Expected dueAt(long other) {
        return new Expected(kind, at, other);
    }

    /** What became of the mistake in a replay: caught if the alarm stands when its time is up, late if it comes after. */
    public Outcome outcome(Replay replay) {
        boolean standing = false;
        boolean after = false;
        for (Replay.Turn turn : replay.turns()) {
            boolean raised = turn.raised().stream().anyMatch(this::is);
            if (turn.number() <= due) {
                standing = raised || (standing && turn.gone().stream().noneMatch(this::is));
            } else {
                after |= raised;
            }
        }
        return standing ? Outcome.CAUGHT : after ? Outcome.LATE : Outcome.MISSED;
    }

    private boolean is(Alarm alarm) {
        return alarm.kind().key().equals(kind) && alarm.at().equals(at);
    }
}
