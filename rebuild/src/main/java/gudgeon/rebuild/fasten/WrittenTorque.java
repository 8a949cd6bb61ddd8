package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A torque in the unit it was written in.
 *
 * @param value how much, in that unit
 * @param unit the unit
 */
public record WrittenTorque(double value, TorqueUnit unit) {
    private static final Pattern WITH_UNIT = Pattern.compile("[^\\p{L}]*(\\p{L}[\\p{L}·.\\s]*?)\\s*(?:[±+].*)?");
    private static final MathContext THREE_FIGURES = new MathContext(3);

    /**
     * The torque a person wrote.
     *
     * @param bare the unit of a bare number
     * @return empty where the text is no torque
     */
    public static Optional<WrittenTorque> of(String text, TorqueUnit bare) {
        String plain = text.strip();
        Matcher word = WITH_UNIT.matcher(plain);
        if (!word.matches()) {
            return newtonMetres(plain).map(number -> new WrittenTorque(number, bare));
        }
        Optional<TorqueUnit> unit = TorqueUnit.of(word.group(1));
        return unit.flatMap(known -> newtonMetres(plain).map(nm -> new WrittenTorque(known.fromNm(nm), known)));
    }

    private static Optional<Double> newtonMetres(String text) {
        return TypedSize.of(Unit.NEWTON_METRE, text, 1) instanceof TypedSize.Read read && read.value() >= 0
                ? Optional.of(read.value())
                : Optional.empty();
    }

    /** The torque in N·m. */
    public double nm() {
        return unit.toNm(value);
    }

    /** The same torque in another unit. */
    public WrittenTorque in(TorqueUnit other) {
        return new WrittenTorque(other.fromNm(nm()), other);
    }

    /** As a person reads it, to three figures: "9.49 N·m". */
    public String words() {
        return number(value) + " " + unit.symbol();
    }

    /** A torque in N·m as a person reads it. */
    static String newtonMetres(double nm) {
        return new WrittenTorque(nm, TorqueUnit.NEWTON_METRE).words();
    }

    /** A number to three figures, without needless noughts. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(THREE_FIGURES).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
