package gudgeon.rebuild.reading;

import gudgeon.mechanics.metrology.Doubt;

/**
 * One line of what a figure's doubt is made of.
 *
 * @param what where it comes from, in words
 * @param instrument name of the instrument that it comes from; empty where it comes from none
 * @param role what it does
 * @param doubt how much
 */
public record Component(String what, String instrument, Role role, Doubt doubt) {
    /** What a doubt comes from. */
    public enum Role {
        /** The step of the scale. */
        STEP,
        /** The permissible error of what it was read with. */
        ERROR,
        /** The permissible error of what that was set with. */
        SETTING,
        /** The step of what that was set with. */
        SETTING_STEP,
        /** The scatter of the readings. */
        SCATTER,
        /** The warmth of part and instrument. */
        WARMTH,
        /** Places that differ and stand for one size. */
        PLACES
    }

    /** Whether both are the error of one instrument. */
    boolean isSharedWith(Component other) {
        return isErrorOfInstrument() && other.isErrorOfInstrument() && instrument.equals(other.instrument);
    }

    private boolean isErrorOfInstrument() {
        return role == Role.ERROR || role == Role.SETTING;
    }
}
