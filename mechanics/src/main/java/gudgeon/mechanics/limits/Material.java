package gudgeon.mechanics.limits;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What parts and the places they sit in are made of. Elasticity and Poisson's ratio: Budynas and Nisbett, Shigley's Mechanical
 * Engineering Design, 9th ed., table A-5, "Physical constants of materials". Expansion near room temperature: Callister and
 * Rethwisch, Fundamentals of Materials Science and Engineering, 3rd ed., table B.6, of the grade named. An alloy's own figure may
 * differ by a tenth.
 */
public enum Material {
    /** Carbon steel; expansion of AISI 1020. Bearing rings are of a steel that is near it. */
    STEEL(207, 0.292, 11.7),
    /** Grey cast iron; expansion of G3000. */
    GREY_IRON(100, 0.211, 11.4),
    /** Aluminium casting alloy; expansion of 356.0. */
    ALUMINIUM(71, 0.334, 21.5),
    /** Magnesium casting alloy; expansion of AZ91D. */
    MAGNESIUM(44.8, 0.350, 26.0),
    /** Bronze: elasticity of phosphor bronze, expansion of bearing bronze C93200. */
    BRONZE(111, 0.349, 18.0),
    /** Brass; expansion of C26000. */
    BRASS(106, 0.324, 19.9);

    private final double elasticityGPa;
    private final double poisson;
    private final double expansionMicrometresPerMetre;

    Material(double elasticityGPa, double poisson, double expansionMicrometresPerMetre) {
        this.elasticityGPa = elasticityGPa;
        this.poisson = poisson;
        this.expansionMicrometresPerMetre = expansionMicrometresPerMetre;
    }

    /** What it is called: "grey iron". */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The material of a name such as "grey iron" or "Aluminium"; empty where none is called so. */
    public static Optional<Material> named(String name) {
        String words = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(material -> material.words().equals(words))
                .findFirst();
    }

    /** Modulus of elasticity, MPa. */
    public double elasticityMPa() {
        return 1000 * elasticityGPa;
    }

    /** Poisson's ratio. */
    public double poisson() {
        return poisson;
    }

    /** Linear expansion per degree, 1/K. */
    public double expansionPerK() {
        return expansionMicrometresPerMetre * 1e-6;
    }
}
