package gudgeon.mechanics.bolt;

import gudgeon.mechanics.thread.UnknownFastener;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Strength classes of screws and studs: ISO 898-1:2013, table 3, for steel, up to M16 where a class changes there; ISO 3506-1 for
 * stainless steel; SAE J429 for inch bolts (all from memory). Stresses in MPa.
 */
public enum StrengthClass {
    C_4_6("4.6", 225, 240, 400),
    C_4_8("4.8", 310, 340, 420),
    C_5_6("5.6", 280, 300, 500),
    C_5_8("5.8", 380, 420, 520),
    C_6_8("6.8", 440, 480, 600),
    C_8_8("8.8", 580, 640, 800),
    C_9_8("9.8", 650, 720, 900),
    C_10_9("10.9", 830, 940, 1040),
    C_12_9("12.9", 970, 1100, 1220),
    A2_70("A2-70", 450, 450, 700),
    A4_80("A4-80", 600, 600, 800),
    GRADE_2("SAE 2", 379, 393, 510),
    GRADE_5("SAE 5", 586, 634, 827),
    GRADE_8("SAE 8", 827, 896, 1034);

    /** Shear strength over tensile strength of bolt steel, the least that VDI 2230, 5.5.5, gives (from memory). */
    private static final double SHEAR = 0.6;

    private final String designation;
    private final double proofMpa;
    private final double yieldMpa;
    private final double tensileMpa;

    StrengthClass(String designation, double proofMpa, double yieldMpa, double tensileMpa) {
        this.designation = designation;
        this.proofMpa = proofMpa;
        this.yieldMpa = yieldMpa;
        this.tensileMpa = tensileMpa;
    }

    /**
     * The class of a designation.
     *
     * @throws UnknownFastener when there is none, with those there are
     */
    public static StrengthClass of(String designation) {
        return find(designation)
                .orElseThrow(() -> new UnknownFastener("'" + designation.strip()
                        + "' is not a strength class known here; known are "
                        + Arrays.stream(values())
                                .map(StrengthClass::designation)
                                .collect(Collectors.joining(", ")) + "."));
    }

    /** The class of a designation, if there is one. */
    public static Optional<StrengthClass> find(String designation) {
        String plain = designation.strip().replace(',', '.');
        return Arrays.stream(values())
                .filter(one -> one.designation.equalsIgnoreCase(plain))
                .findFirst();
    }

    /** How it is written. */
    public String designation() {
        return designation;
    }

    /** Stress under proof load, MPa. */
    public double proofMpa() {
        return proofMpa;
    }

    /** Least yield or 0.2 % proof strength, MPa. */
    public double yieldMpa() {
        return yieldMpa;
    }

    /** Least tensile strength, MPa. */
    public double tensileMpa() {
        return tensileMpa;
    }

    /** Shear strength of its thread, MPa. */
    public double shearMpa() {
        return SHEAR * tensileMpa;
    }
}
