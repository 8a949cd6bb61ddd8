package gudgeon.mechanics.bolt;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Units that torque is written in. Exact: 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, 1 kgf = 9.80665 N (NIST SP 811, appendix B.8;
 * from memory).
 */
public enum TorqueUnit {
    NEWTON_METRE("N·m", "1"),
    KILOGRAM_FORCE_METRE("kgf·m", "9.80665"),
    KILOGRAM_FORCE_CENTIMETRE("kgf·cm", "0.0980665"),
    POUND_FORCE_FOOT("lbf·ft", "1.3558179483314004"),
    POUND_FORCE_INCH("lbf·in", "0.1129848290276167");

    private final String symbol;
    private final BigDecimal newtonMetres;

    TorqueUnit(String symbol, String newtonMetres) {
        this.symbol = symbol;
        this.newtonMetres = new BigDecimal(newtonMetres);
    }

    /** The unit of a symbol, written with a middle dot or a point, in any case. */
    public static Optional<TorqueUnit> of(String symbol) {
        String plain = plain(symbol);
        return Arrays.stream(values())
                .filter(unit -> plain(unit.symbol).equals(plain))
                .findFirst();
    }

    /** How it is written. */
    public String symbol() {
        return symbol;
    }

    /** So many of this unit in N·m. */
    public double toNm(double value) {
        return newtonMetres.multiply(BigDecimal.valueOf(value)).doubleValue();
    }

    /** So many N·m in this unit. */
    public double fromNm(double valueNm) {
        return valueNm / newtonMetres.doubleValue();
    }

    private static String plain(String symbol) {
        return symbol.strip().toLowerCase(Locale.ROOT).replaceAll("[·.\\s]", "");
    }
}
