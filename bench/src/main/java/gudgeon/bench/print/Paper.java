package gudgeon.bench.print;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Sheets that a printer takes: ISO 216 for A4 and A5, ANSI/ASME Y14.1 size A for letter. */
public enum Paper {
    A4(210, 297),
    A5(148, 210),
    LETTER(215.9, 279.4);

    private final double shortMm;
    private final double longMm;

    Paper(double shortMm, double longMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** The paper of a name, in any case. */
    public static Optional<Paper> of(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.word().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** The word as a person reads and types it. */
    public String word() {
        return this == LETTER ? name().toLowerCase(Locale.ROOT) : name();
    }

    /** The sheet with its short side across. */
    public Sheet upright() {
        return new Sheet(shortMm, longMm);
    }

    /** The sheet with its long side across. */
    public Sheet onItsSide() {
        return new Sheet(longMm, shortMm);
    }

    /**
     * A sheet as it lies before the reader.
     *
     * @param widthMm across, mm
     * @param heightMm from top to bottom, mm
     */
    public record Sheet(double widthMm, double heightMm) {}
}
