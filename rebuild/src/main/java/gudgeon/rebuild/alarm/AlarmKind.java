package gudgeon.rebuild.alarm;

import java.util.Locale;

/** The kinds of trouble. */
public enum AlarmKind {
    VALVE_TOUCHES("valve touches"),
    DECK_GAP("crown too near the head"),
    COMPRESSION("compression changed"),
    PISTON_TURNED("piston turned"),
    TURNED("turned the wrong way round"),
    NOTHING_COMPARED("nothing compared"),
    DIFFERS("differs from the old part"),
    CAM_TIMING("cam timing"),
    WENT_TIGHT("went tight"),
    GASKET_THICKNESS("gasket of another thickness"),
    PART_MISSING("part missing"),
    SEAL_MISSING("seal missing"),
    HOLD_POINT("hold point passed over"),
    USED_AGAIN("used again"),
    BLASTED("blasted and not proved clean"),
    READING("reading out of limits"),
    UNREAD("size that does not count"),
    SLIP("reading hard to believe"),
    UNPROVEN("passed and not proved"),
    MEASURED_OUT("kept though out of limits"),
    FAILED_CHECK("past a failed check"),
    OUT_OF_TURN("check out of turn"),
    NOT_LISTED("destroyed and not on the list"),
    COIL_BIND("coils bind"),
    RING_GAP("ring gap too small"),
    OVERSIZE("oversize does not clean up"),
    BORED_EARLY("bored without the piston"),
    FAMILY("does not go with the rest"),
    HEAT("not put in as the fit asks"),
    SHORT("short or not as ordered"),
    WRENCH("wrench not to be trusted for this"),
    UNIT_MIXED("torque in a wrong unit"),
    DRY_FIGURE("torque meant for another thread"),
    ADAPTER("adapter not reckoned with"),
    FASTENER_TOO_LONG("fastener too long"),
    FASTENER_TOO_SHORT("fastener too short"),
    FASTENERS_SWAPPED("two lengths mixed up"),
    PULLED_DOWN("pulled down unevenly"),
    NOT_AGAIN("not tightened again"),
    UNSIGNED("started unsigned"),
    RAN_ON("ran on"),
    TWO_ANSWERS("two answers");

    private final String words;

    AlarmKind(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }

    /** Whether it tells that the engine was started or run before its time, and so follows from a list of what is open. */
    public boolean isOfTheStart() {
        return this == UNSIGNED || this == RAN_ON;
    }

    /** Its name in data, such as {@code part-missing}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
