package gudgeon.mechanics.thread;

import gudgeon.mechanics.limits.Material;

/**
 * What a metal bears in a thread and under a head. Pressure: VDI 2230:2003, table A9, read from a fastener supplier's transcription
 * of it; shear: 0.6 of the tensile strength in the same table, the ratio for steel and aluminium from memory, 0.68 for grey iron.
 * Of each kind of metal the weaker grade is held, for nobody knows what an old casting is: a result is on the safe side. The
 * pressure of the better grade says from where on it is sure.
 *
 * @param shearMpa shear strength, MPa
 * @param pressureMpa pressure under a head above which the weaker grade settles, MPa
 * @param surePressureMpa the same of the better grade, MPa
 */
public record MetalStrength(double shearMpa, double pressureMpa, double surePressureMpa) {
    /** That of a kind of metal. */
    public static MetalStrength of(Material material) {
        return switch (material) {
            // S235, tensile strength 340 MPa; S355
            case STEEL -> new MetalStrength(204, 490, 760);
            // EN-GJL-150; EN-GJL-250
            case GREY_IRON -> new MetalStrength(102, 600, 900);
            // AlSi9Cu3 as cast in a chill, 180 MPa; AlSi7Mg cast in a chill and aged
            case ALUMINIUM -> new MetalStrength(108, 220, 380);
            // MgAl9 as cast in a chill, 200 MPa; MgAl9 die-cast
            case MAGNESIUM -> new MetalStrength(120, 140, 220);
            // cast phosphor bronze of 250 MPa and soft brass of 300 MPa, from memory; their pressures are common
            // practice
            case BRONZE -> new MetalStrength(150, 250, 250);
            case BRASS -> new MetalStrength(180, 250, 250);
        };
    }
}
