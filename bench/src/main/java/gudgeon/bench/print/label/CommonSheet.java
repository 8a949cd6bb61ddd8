package gudgeon.bench.print.label;

import gudgeon.bench.print.Paper;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Label sheets that are sold everywhere. Their sizes are common practice, printed on the packs; no standard has them. */
public enum CommonSheet {
    A4_24(Paper.A4, 3, 8, 70, 37, 0),
    A4_21(Paper.A4, 3, 7, 63.5, 38.1, 2.5),
    A4_14(Paper.A4, 2, 7, 99.1, 38.1, 2.5),
    LETTER_30(Paper.LETTER, 3, 10, 66.675, 25.4, 3.175),
    LETTER_14(Paper.LETTER, 2, 7, 101.6, 33.8667, 4.7625);

    private final Paper paper;
    private final int columns;
    private final int rows;
    private final double width;
    private final double height;
    private final double gap;

    CommonSheet(Paper paper, int columns, int rows, double width, double height, double gap) {
        this.paper = paper;
        this.columns = columns;
        this.rows = rows;
        this.width = width;
        this.height = height;
        this.gap = gap;
    }

    /** The sheet. */
    public LabelSheet sheet() {
        return LabelSheet.centred(paper, columns, rows, width, height, gap, 0);
    }

    /** The word by which a person asks for it, such as "a4-24". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The sheet of a word, in any case. */
    public static Optional<CommonSheet> of(String word) {
        return Arrays.stream(values())
                .filter(one -> one.word().equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    /** All words, to say what is known. */
    public static String words() {
        return Arrays.stream(values()).map(CommonSheet::word).collect(Collectors.joining(", "));
    }
}
