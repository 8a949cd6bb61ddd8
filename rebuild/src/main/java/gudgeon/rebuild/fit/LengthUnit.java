package gudgeon.rebuild.fit;

import java.util.Locale;

/** The unit in which sentences give lengths. */
public enum LengthUnit {
    MM {
        @Override
        public String format(double mm) {
            return text(mm, 2) + " mm";
        }
    },
    INCH {
        @Override
        public String format(double mm) {
            return text(mm / MM_PER_INCH, 4) + " in";
        }
    };

    /** Exact since the international inch of 1959. */
    private static final double MM_PER_INCH = 25.4;

    /** A length with its unit, from mm. */
    public abstract String format(double mm);

    private static String text(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        // no minus before nothing
        return text.matches("-0\\.0*") ? text.substring(1) : text;
    }

    /** An angle in degrees, to a tenth. */
    static String degrees(double deg) {
        return text(deg, 1) + "°";
    }
}
