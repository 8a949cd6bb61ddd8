package gudgeon.rebuild.fasten;

import gudgeon.mechanics.limits.Material;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a thread is cut in, as a person names it. */
public final class Metal {
    private static final Map<String, Material> NAMES = Map.ofEntries(
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

    private Metal() {}

    /** The material of that name; empty where it is not known. */
    public static Optional<Material> named(String name) {
        return Optional.ofNullable(
                NAMES.get(name.strip().toLowerCase(Locale.ROOT).replace('-', ' ')));
    }

    /** Which names are known, as a sentence lists them. */
    public static String known() {
        return "alloy, aluminium, magnesium, iron, steel, bronze and brass";
    }

    /** A material as a sentence has it. */
    static String words(Material material) {
        return material == Material.GREY_IRON ? "cast iron" : material.name().toLowerCase(Locale.ROOT);
    }

    /** How long a thread must hold, in diameters: common practice, no source. */
    static double engagementInDiameters(Material material) {
        return switch (material) {
            case ALUMINIUM, MAGNESIUM -> 1.5;
            case GREY_IRON, BRONZE, BRASS -> 1.25;
            case STEEL -> 1;
        };
    }
}
