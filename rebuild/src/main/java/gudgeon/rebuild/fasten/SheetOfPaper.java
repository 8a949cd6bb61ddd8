package gudgeon.rebuild.fasten;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sheet that lies beside a joint in its photo, as it lies there.
 *
 * @param name what a person calls it
 * @param widthMm from left to right, in mm, more than 0
 * @param heightMm from bottom to top, in mm, more than 0
 */
public record SheetOfPaper(String name, double widthMm, double heightMm) {
    /** Sheets that lie about in a workshop: ISO 216 for A4 and A5, ANSI/ASME Y14.1 for letter. */
    private static final List<SheetOfPaper> USUAL = List.of(
            new SheetOfPaper("A4 upright", 210, 297),
            new SheetOfPaper("A4 on its side", 297, 210),
            new SheetOfPaper("A5 upright", 148, 210),
            new SheetOfPaper("A5 on its side", 210, 148),
            new SheetOfPaper("letter upright", 215.9, 279.4),
            new SheetOfPaper("letter on its side", 279.4, 215.9));

    private static final Pattern TYPED =
            Pattern.compile("([\\d.,]{1,8})\\s*(?:mm)?\\s*[x×*]\\s*([\\d.,]{1,8})\\s*(?:mm)?");
    private static final double LEAST_MM = 20;
    private static final double MOST_MM = 2000;

    /** The sheets that a person can choose. */
    public static List<SheetOfPaper> usual() {
        return USUAL;
    }

    /** A sheet by its name, or by its sizes: "297 x 210 mm", from left to right first. Empty where it is neither. */
    public static Optional<SheetOfPaper> of(String text) {
        Matcher typed = TYPED.matcher(text.strip().toLowerCase(Locale.ROOT));
        return USUAL.stream()
                .filter(sheet -> sheet.name.equalsIgnoreCase(text.strip()))
                .findFirst()
                .or(() -> typed.matches() ? sized(typed.group(1), typed.group(2)) : Optional.empty());
    }

    private static Optional<SheetOfPaper> sized(String width, String height) {
        try {
            double across = Double.parseDouble(width.replace(',', '.'));
            double up = Double.parseDouble(height.replace(',', '.'));
            boolean usable = Math.min(across, up) >= LEAST_MM && Math.max(across, up) <= MOST_MM;
            return usable
                    ? Optional.of(new SheetOfPaper("sheet of " + width + " × " + height + " mm", across, up))
                    : Optional.empty();
        } catch (NumberFormatException notOne) {
            return Optional.empty();
        }
    }
}
