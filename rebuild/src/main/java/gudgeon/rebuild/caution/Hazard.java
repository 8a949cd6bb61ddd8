package gudgeon.rebuild.caution;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Kinds of what can hurt. A caution is of the first kind whose words it uses: the order runs from what kills to what cuts, so that one
 * that names two is found under the worse.
 */
public enum Hazard {
    ASBESTOS("Dust, asbestos and blasting", "asbestos|dust|silica|blast|grit|breathe"),
    GAS("Exhaust gas", "exhaust gas"),
    FIRE("Petrol, solvents and fire", "petrol|solvent|spirit|paraffin|vapour|flame|fluids?|chlorinated|compound"),
    AIR("Compressed air", "compressed air|air (can|pressure)|blow|blowing|goggles"),
    SPARK("High tension", "high tension|shock|plug lead"),
    SPRING(
            "Springs and flying parts",
            "springs?|sprung|circlip|collets|fly|flies|chip|splinter|strike|striking|under the press"),
    HEAT("Heat and scalding", "hot|burns?|scalds?|warm|warmed|boils"),
    RUNNING(
            "Running engine and kick-back",
            "running|runs|kick-back|comes round|throws the handle|bursts?|rim|seizing|brakes"),
    CRUSHED(
            "Fingers, sleeves and weight",
            "fingers?|thumb|sleeves|hands?|heavy|hoist|turns?|turned|tip|stand so|spanner|rolls"),
    SHARP("Sharp edges", "sharp|swarf|edges"),
    OIL("Oil on skin and floor", "oil"),
    /** Its words tell no kind. */
    OTHER("Other cautions", "(?!)");

    private final String words;
    private final Pattern signs;

    Hazard(String words, String signs) {
        this.words = words;
        this.signs = Pattern.compile("\\b(" + signs + ")\\b", Pattern.CASE_INSENSITIVE);
    }

    /** The kind as a person reads it, as a heading. */
    public String words() {
        return words;
    }

    /** Its name in data, such as {@code fire}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind of a caution; {@link #OTHER} where none of their words is in it. */
    public static Hazard of(String caution) {
        for (Hazard hazard : values()) {
            if (hazard.signs.matcher(caution).find()) {
                return hazard;
            }
        }
        return OTHER;
    }
}
