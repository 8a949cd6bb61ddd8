package gudgeon.rebuild.book;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size as a person writes it: {@code 21.0 mm ± 0.02}, {@code 21,0 +/- 0,02}, {@code 1/2 in}, {@code 8 thou},
 * {@code 9.8 cm3}, {@code 21.0 with calliper}. Conversions are exact: 1 in = 25.4 mm.
 *
 * @param value in {@code unit} where one is written, else as written
 * @param unit the unit, converted to one of those that sizes are held in; empty for a bare number
 * @param halfWidth what stands after ±, in the same unit
 * @param instrument the word after "with"
 */
record SizeText(double value, Optional<Unit> unit, Optional<Double> halfWidth, Optional<String> instrument) {
    private static final int LONGEST = 120;
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(?:\\d{1,9}(?:[.,]\\d{0,12})?|[.,]\\d{1,12})");
    private static final Pattern FRACTION = Pattern.compile("([+-]?)(?:(\\d{1,6})\\s+)?(\\d{1,6})/(\\d{1,6})");
    private static final Pattern WITH = Pattern.compile("\\swith\\s+(\\S+)$");
    private static final Pattern NUMBER_THEN_WORD = Pattern.compile("[+-]?\\d[\\d.,/]*\\s*([^\\d.,/\\s].*)");

    /** A unit that may be written, and how many of the one it is held in it makes. */
    private record Scale(String written, Unit unit, BigDecimal factor) {
        Scale(String written, Unit unit, String factor) {
            this(written, unit, new BigDecimal(factor));
        }
    }

    /** Longest first, so that "cu in" is not taken for "in". */
    private static final List<Scale> SCALES = List.of(
                    new Scale("mm", Unit.MM, "1"),
                    new Scale("cm", Unit.MM, "10"),
                    new Scale("µm", Unit.MM, "0.001"),
                    new Scale("um", Unit.MM, "0.001"),
                    new Scale("in", Unit.MM, "25.4"),
                    new Scale("inch", Unit.MM, "25.4"),
                    new Scale("inches", Unit.MM, "25.4"),
                    new Scale("\"", Unit.MM, "25.4"),
                    new Scale("thou", Unit.MM, "0.0254"),
                    new Scale("°", Unit.DEGREES, "1"),
                    new Scale("deg", Unit.DEGREES, "1"),
                    new Scale("degrees", Unit.DEGREES, "1"),
                    new Scale("cm3", Unit.CM3, "1"),
                    new Scale("cm³", Unit.CM3, "1"),
                    new Scale("cc", Unit.CM3, "1"),
                    new Scale("ml", Unit.CM3, "1"),
                    new Scale("in3", Unit.CM3, "16.387064"),
                    new Scale("in³", Unit.CM3, "16.387064"),
                    new Scale("cu in", Unit.CM3, "16.387064"),
                    new Scale("kpa", Unit.KPA, "1"),
                    new Scale("bar", Unit.KPA, "100"),
                    new Scale("psi", Unit.KPA, "6.894757293168"),
                    new Scale("n", Unit.NEWTON, "1"),
                    new Scale("lbf", Unit.NEWTON, "4.4482216152605"),
                    new Scale("kgf", Unit.NEWTON, "9.80665"),
                    new Scale("n·m", Unit.NEWTON_METRE, "1"),
                    new Scale("n.m", Unit.NEWTON_METRE, "1"),
                    new Scale("nm", Unit.NEWTON_METRE, "1"),
                    new Scale("kgf·m", Unit.NEWTON_METRE, "9.80665"),
                    new Scale("kgf.m", Unit.NEWTON_METRE, "9.80665"),
                    new Scale("kgf·cm", Unit.NEWTON_METRE, "0.0980665"),
                    new Scale("kgf.cm", Unit.NEWTON_METRE, "0.0980665"),
                    // 1 lbf is 4.4482216152605 N and 1 ft 0.3048 m, both exactly
                    new Scale("lbf·ft", Unit.NEWTON_METRE, "1.3558179483314004"),
                    new Scale("lbf.ft", Unit.NEWTON_METRE, "1.3558179483314004"),
                    new Scale("lbf·in", Unit.NEWTON_METRE, "0.1129848290276167"),
                    new Scale("lbf.in", Unit.NEWTON_METRE, "0.1129848290276167"),
                    new Scale("°c", Unit.CELSIUS, "1"),
                    new Scale("degc", Unit.CELSIUS, "1"),
                    new Scale("%", Unit.PERCENT, "1"))
            .stream()
            .sorted(Comparator.comparingInt((Scale scale) -> -scale.written().length()))
            .toList();

    /** Why a text is not a size. */
    static final class NotASize extends Exception {
        NotASize(String sentence) {
            super(sentence);
        }

        /** The reason, a sentence. */
        String sentence() {
            return String.valueOf(getMessage());
        }
    }

    /** A number with the unit written behind it, if any. */
    private record Measure(BigDecimal number, Optional<Scale> scale) {
        double in(Optional<Scale> otherwise) {
            return scale.or(() -> otherwise)
                    .map(s -> number.multiply(s.factor()))
                    .orElse(number)
                    .doubleValue();
        }
    }

    /**
     * Reads a size.
     *
     * @throws NotASize with a sentence that says why the text is none
     */
    static SizeText of(String text) throws NotASize {
        String plain = plain(text);
        if (plain.isEmpty()) {
            throw new NotASize("Nothing stands here.");
        }
        if (plain.length() > LONGEST) {
            throw notASize(text);
        }
        Matcher with = WITH.matcher(plain);
        Optional<String> instrument = with.find() ? Optional.of(with.group(1)) : Optional.empty();
        String[] parts = (instrument.isPresent() ? plain.substring(0, with.start()) : plain).split("±", -1);
        if (parts.length > 2) {
            throw notASize(text);
        }
        Measure value = measure(parts[0].strip());
        if (parts.length == 1) {
            return new SizeText(
                    value.in(Optional.empty()), value.scale().map(Scale::unit), Optional.empty(), instrument);
        }
        Measure doubt = measure(parts[1].strip());
        Optional<Scale> scale = value.scale().or(doubt::scale);
        if (doubt.number().signum() < 0) {
            throw new NotASize("The doubt after ± in '" + Words.shortened(text) + "' is below zero.");
        }
        if (doubt.scale().isPresent()
                && scale.isPresent()
                && doubt.scale().get().unit() != scale.get().unit()) {
            throw new NotASize("Value and doubt in '" + Words.shortened(text) + "' are in units of different kinds.");
        }
        return new SizeText(value.in(scale), scale.map(Scale::unit), Optional.of(doubt.in(scale)), instrument);
    }

    private static Measure measure(String text) throws NotASize {
        String small = text.toLowerCase(Locale.ROOT);
        for (Scale scale : SCALES) {
            if (small.endsWith(scale.written())) {
                String before = text.substring(
                                0, text.length() - scale.written().length())
                        .strip();
                return new Measure(number(before), Optional.of(scale));
            }
        }
        Matcher word = NUMBER_THEN_WORD.matcher(text);
        if (word.matches() && !DECIMAL.matcher(digitsMeant(text)).matches()) {
            throw new NotASize(
                    "'" + Words.shortened(word.group(1))
                            + "' is not a unit known here; known are mm, cm, µm, in, thou, deg, cm3, cc, ml, in3, kPa, bar, psi, N, lbf, kgf, N.m, kgf.m, lbf.ft, lbf.in, degC and %.");
        }
        return new Measure(number(text), Optional.empty());
    }

    /**
     * Reads a plain number: decimal point or comma, or a fraction.
     *
     * @throws NotASize with a sentence that says why the text is none
     */
    static BigDecimal number(String written) throws NotASize {
        Matcher fraction = FRACTION.matcher(written);
        if (fraction.matches()) {
            BigDecimal below = new BigDecimal(fraction.group(4));
            if (below.signum() == 0) {
                throw new NotASize("'" + Words.shortened(written) + "' divides by zero.");
            }
            BigDecimal part = new BigDecimal(fraction.group(3)).divide(below, MathContext.DECIMAL128);
            BigDecimal whole = fraction.group(2) == null ? BigDecimal.ZERO : new BigDecimal(fraction.group(2));
            BigDecimal sum = whole.add(part);
            return fraction.group(1).equals("-") ? sum.negate() : sum;
        }
        if (DECIMAL.matcher(written).matches()) {
            return new BigDecimal(written.replace(',', '.').replace("+", ""));
        }
        String meant = digitsMeant(written);
        if (!meant.equals(written) && DECIMAL.matcher(meant).matches()) {
            throw new NotASize("'" + Words.shortened(written) + "' has a letter where a digit should be; " + meant
                    + " was perhaps meant.");
        }
        if (written.contains(",") && written.contains(".")) {
            throw new NotASize("'" + Words.shortened(written)
                    + "' has both a comma and a point; write only the one before the decimals.");
        }
        throw new NotASize(
                written.isEmpty() ? "A number is missing." : "'" + Words.shortened(written) + "' is not a number.");
    }

    private static NotASize notASize(String text) {
        return new NotASize("'" + Words.shortened(text) + "' is not a size.");
    }

    /** The letters that are most often typed or read for digits, put right. */
    private static String digitsMeant(String written) {
        return written.replace('O', '0')
                .replace('o', '0')
                .replace('l', '1')
                .replace('I', '1')
                .replace('S', '5');
    }

    /** One sign for each of ±, minus, inch, micro and space. */
    private static String plain(String text) {
        return text.replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u00A0', ' ')
                .replace('\u202F', ' ')
                .replace('\u2033', '"')
                .replace('\u03BC', 'µ')
                .replaceAll("\\+\\s?/\\s?-|\\+-", "±")
                .strip();
    }
}
