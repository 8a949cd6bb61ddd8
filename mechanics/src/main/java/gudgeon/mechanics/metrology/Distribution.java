package gudgeon.mechanics.metrology;

/** The distribution that a doubt is taken to have. */
public enum Distribution {
    NORMAL,
    /** Equally likely anywhere between two bounds. */
    RECTANGULAR,
    TRIANGULAR
}
