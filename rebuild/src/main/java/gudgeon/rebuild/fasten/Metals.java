package gudgeon.rebuild.fasten;

import gudgeon.mechanics.limits.Material;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The metals that threads are cut in, by the words a person has for them. */
public final class Metals {
    private static final Map<String, Material> WORDS = Map.ofEntries(
            Map.entry("aluminium", Material.ALUMINIUM),
            Map.entry("aluminum", Material.ALUMINIUM),
            Map.entry("alloy", Material.ALUMINIUM),
            Map.entry("light alloy", Material.ALUMINIUM),
            Map.entry("magnesium", Material.MAGNESIUM),
            Map.entry("iron", Material.GREY_IRON),
            Map.entry("cast iron", Material.GREY_IRON),
            Map.entry("grey iron", Material.GREY_IRON),
            Map.entry("steel", Material.STEEL),
            Map.entry("bronze", Material.BRONZE),
            Map.entry("brass", Material.BRASS));

    private Metals() {}

    /** The metal of a word, if one is meant. */
    public static Optional<Material> of(String word) {
        return Optional.ofNullable(WORDS.get(word.strip().toLowerCase(Locale.ROOT)));
    }

    /** Which words are known, as a sentence lists them. */
    public static String known() {
        return "alloy, aluminium, magnesium, iron, steel, bronze and brass";
    }

    /** A metal as a sentence has it. */
    public static String words(Material material) {
        return switch (material) {
            case STEEL -> "steel";
            case GREY_IRON -> "cast iron";
            case ALUMINIUM -> "aluminium";
            case MAGNESIUM -> "magnesium";
            case BRONZE -> "bronze";
            case BRASS -> "brass";
        };
    }
}
