package gudgeon.rebuild.source;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount of money in one currency. Never converted into another: what a bank or a card takes for it is not known here.
 *
 * @param amount how much, with as many decimals as the currency has in ISO 4217
 * @param currency the currency, by ISO 4217
 */
public record Money(BigDecimal amount, Currency currency) {
    private static final int LONGEST = 30;
    private static final String NUMBER = "-?\\d[\\d.,'\u00a0\u202f ]*|-?[.,]\\d+";
    private static final Pattern BEFORE = Pattern.compile("(" + NUMBER + ")\\s*([A-Za-z]{2,3}|[€£$¥])");
    private static final Pattern AFTER = Pattern.compile("([A-Za-z]{2,3}|[€£$¥])\\s*(" + NUMBER + ")");
    private static final Pattern BARE = Pattern.compile(NUMBER);

    /** Signs that mean one currency only; the sign of the dollar and of the yen mean several. */
    private static final Map<String, String> SIGNS = Map.of("€", "EUR", "£", "GBP");

    public Money {
        amount = amount.setScale(Math.max(0, currency.getDefaultFractionDigits()), RoundingMode.HALF_UP);
    }

    /** Why a text is no amount of money. */
    public static final class NotMoney extends Exception {
        NotMoney(String sentence) {
            super(sentence);
        }

        /** The reason and what to write instead, a sentence. */
        public String sentence() {
            return String.valueOf(getMessage());
        }
    }

    /**
     * Reads an amount as a person writes it, such as {@code 24.50 EUR}, {@code 24,50 €}, {@code £12} or {@code 1.234,50 EUR}.
     *
     * @throws NotMoney with a sentence that says why the text is none
     */
    public static Money of(String text) throws NotMoney {
        String plain = text.replace('\u2212', '-').strip();
        if (plain.isEmpty()) {
            throw new NotMoney("No price stands here; write one such as 24.50 EUR.");
        }
        Matcher before = BEFORE.matcher(plain);
        if (before.matches()) {
            return read(plain, before.group(1), before.group(2));
        }
        Matcher after = AFTER.matcher(plain);
        if (after.matches()) {
            return read(plain, after.group(2), after.group(1));
        }
        if (BARE.matcher(plain).matches()) {
            throw new NotMoney("The price '" + shortened(plain) + "' has no currency; write one behind it, such as "
                    + shortened(plain) + " EUR.");
        }
        throw new NotMoney("'" + shortened(plain) + "' is not one price in one currency; write one such as 24.50 EUR.");
    }

    private static Money read(String text, String number, String sign) throws NotMoney {
        Currency currency = currency(text, sign);
        BigDecimal amount = number(text, number);
        if (amount.signum() < 0) {
            throw new NotMoney("The price '" + shortened(text) + "' is below zero; write what was paid as it is.");
        }
        if (amount.stripTrailingZeros().scale() > currency.getDefaultFractionDigits()) {
            throw new NotMoney("The price '" + shortened(text) + "' has more decimals than "
                    + currency.getCurrencyCode() + " has; check where the decimals begin.");
        }
        return new Money(amount, currency);
    }

    private static Currency currency(String text, String sign) throws NotMoney {
        String code = SIGNS.getOrDefault(sign, sign.toUpperCase(Locale.ROOT));
        if (code.equals("$") || code.equals("¥")) {
            throw new NotMoney("The sign " + code + " in '" + shortened(text)
                    + "' stands for several currencies; write its three letters, such as "
                    + (code.equals("$") ? "USD or CAD." : "JPY or CNY."));
        }
        return Currency.getAvailableCurrencies().stream()
                .filter(known -> known.getCurrencyCode().equals(code) && known.getDefaultFractionDigits() >= 0)
                .findFirst()
                .orElseThrow(() -> new NotMoney("'" + sign + "' in '" + shortened(text)
                        + "' is no currency; write its three letters by ISO 4217, such as EUR, GBP or SEK."));
    }

    /**
     * A number with either sign before its decimals. Where both stand, or one stands more than once, the last one of another kind
     * parts the decimals; a lone one before exactly three digits could mean either, and is asked about.
     */
    private static BigDecimal number(String text, String written) throws NotMoney {
        String digits = written.replaceAll("['\u00a0\u202f ]", "");
        int comma = digits.lastIndexOf(',');
        int point = digits.lastIndexOf('.');
        char decimal = comma > point ? ',' : '.';
        char thousands = decimal == ',' ? '.' : ',';
        int at = Math.max(comma, point);
        boolean repeated = at >= 0 && digits.indexOf(decimal) < at;
        boolean both = comma >= 0 && point >= 0;
        if (!both && !repeated && digits.matches("-?[1-9]\\d{0,2}[.,]\\d{3}")) {
            throw new NotMoney(
                    "'" + shortened(text) + "' could mean thousands or decimals; write it without the sign between"
                            + " thousands and with two decimals.");
        }
        String grouped = repeated ? String.valueOf(decimal) : String.valueOf(thousands);
        String whole = repeated || at < 0 ? digits : digits.substring(0, at);
        String decimals = repeated || at < 0 ? "" : digits.substring(at + 1);
        boolean fits = (!whole.contains(",") && !whole.contains("."))
                || whole.matches("-?\\d{1,3}(" + Pattern.quote(grouped) + "\\d{3})+");
        if (!fits || !decimals.matches("\\d*") || digits.length() > LONGEST) {
            throw new NotMoney("'" + shortened(text) + "' is not one price; write one such as 1234.50 EUR.");
        }
        String plain = whole.replaceAll("[.,]", "");
        return new BigDecimal((plain.isEmpty() || plain.equals("-") ? plain + "0" : plain) + "." + decimals + "0");
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    }

    /** So many times as much. */
    public Money times(int count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    /** As a person reads it, such as "24.50 EUR". */
    public String words() {
        return amount.toPlainString() + " " + currency.getCurrencyCode();
    }
}
