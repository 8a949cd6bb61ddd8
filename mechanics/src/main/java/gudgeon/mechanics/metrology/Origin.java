package gudgeon.mechanics.metrology;

/** Where a doubt comes from. */
public enum Origin {
    /** The step of the instrument's scale. */
    RESOLUTION,
    /** The instrument's permissible error. */
    PERMISSIBLE_ERROR,
    /** The scatter of repeated readings. */
    REPEAT_READINGS,
    /** Part and instrument at another temperature than lengths are stated at. */
    TEMPERATURE,
    /** A doubt stated with the figure. */
    STATED
}
