package gudgeon.bench.print.label;

import gudgeon.bench.print.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The label sheet that a person asks for, as written. A common one by its word; or, with a size, one of its own.
 *
 * @param common word of a common sheet; counts only where no size is given
 * @param paper name of the paper
 * @param grid labels across and down, such as "3 x 8"
 * @param size of a label, such as "70 x 37", in mm, or "2.63 x 1 in"
 * @param gap between labels across and down; empty for none
 * @param margin from the sheet's left and top edge to the first label; empty for labels in the sheet's middle
 */
public record SheetWish(String common, String paper, String grid, String size, String gap, String margin) {
    private static final Pattern PAIR =
            Pattern.compile("\\s*(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*[x×]\\s*(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(mm|in)?\\s*");
    private static final double MM_PER_INCH = 25.4;

    /** The sheet, or why there is none. */
    public sealed interface Read {
        /** The sheet. */
        record Sheet(LabelSheet sheet) implements Read {}

        /** What can't be read or does not fit, each a sentence. */
        record Refused(List<String> sentences) implements Read {}
    }

    private record Pair(double across, double down) {
        private boolean isWhole() {
            return across == Math.rint(across) && down == Math.rint(down);
        }
    }

    /** Reads it; all faults at once. */
    public Read read() {
        return size.isBlank() ? readCommon() : readOwn();
    }

    private Read readCommon() {
        return CommonSheet.of(common)
                .<Read>map(found -> new Read.Sheet(found.sheet()))
                .orElseGet(() -> new Read.Refused(
                        List.of("The label sheet '" + common + "' is not known; known are " + CommonSheet.words()
                                + ". For another give its size and how many labels there are across and down.")));
    }

    private Read readOwn() {
        List<String> faults = new ArrayList<>();
        Optional<Paper> on = Paper.of(paper);
        if (on.isEmpty()) {
            faults.add("The paper '" + paper + "' is not known; known are A4, A5 and letter.");
        }
        Optional<Pair> count = pair("The number of labels", grid, "3 x 8", faults);
        if (count.filter(numbers -> !numbers.isWhole()).isPresent()) {
            faults.add("The number of labels '" + grid + "' must be whole numbers across and down, such as 3 x 8.");
        }
        Optional<Pair> label = pair("The size of a label", size, "70 x 37", faults);
        Optional<Pair> between = pair("The gap", gap.isBlank() ? "0 x 0" : gap, "2.5 x 0", faults);
        Optional<Pair> edge = margin.isBlank() ? Optional.empty() : pair("The margin", margin, "4.6 x 15", faults);
        if (!faults.isEmpty()) {
            return new Read.Refused(faults);
        }
        LabelSheet sheet = LabelSheet.centred(
                on.orElseThrow(),
                (int) count.orElseThrow().across(),
                (int) count.orElseThrow().down(),
                label.orElseThrow().across(),
                label.orElseThrow().down(),
                between.orElseThrow().across(),
                between.orElseThrow().down());
        LabelSheet placed = edge.map(at -> sheet.from(at.across(), at.down())).orElse(sheet);
        return placed.faults().isEmpty() ? new Read.Sheet(placed) : new Read.Refused(placed.faults());
    }

    private static Optional<Pair> pair(String what, String written, String example, List<String> faults) {
        Matcher pair = PAIR.matcher(written);
        if (!pair.matches()) {
            faults.add(what + " '" + written + "' can't be read; write across and down, such as " + example + ".");
            return Optional.empty();
        }
        double unit = "in".equals(pair.group(3)) ? MM_PER_INCH : 1;
        return Optional.of(new Pair(number(pair.group(1)) * unit, number(pair.group(2)) * unit));
    }

    private static double number(String written) {
        return Double.parseDouble(written.replace(',', '.'));
    }
}
