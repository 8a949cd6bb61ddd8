package gudgeon.mechanics.metrology;

/** The distribution that a doubt is taken to have; each is symmetric about the best estimate. */
public enum Distribution {
    NORMAL,
    /** Equally likely anywhere between two bounds (JCGM 101:2008, 6.4.2). */
    RECTANGULAR,
    /** Likeliest in the middle of two bounds, falling evenly to nothing at each (JCGM 101:2008, 6.4.5). */
    TRIANGULAR
}
