package gudgeon.bench.print.label;

import gudgeon.bench.print.Lettering;
import gudgeon.rebuild.bag.BagLabel;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Labels laid out on sheets.
 *
 * @param sheet the sheet
 * @param address what their codes hold
 * @param pages what is on each sheet
 * @param trial whether the labels' outlines are drawn, for a trial on plain paper
 */
public record LabelPages(LabelSheet sheet, BagAddress address, List<List<OnSheet>> pages, boolean trial) {
    public LabelPages {
        pages = List.copyOf(pages);
    }

    /** A label on a sheet: its number there from 0, and what is on it. */
    public record OnSheet(int slot, BagLabel label, Placed placed) {}

    /** Labels on sheets, or why not. */
    public sealed interface Asked {
        /** They can be printed. */
        record Ready(LabelPages pages) implements Asked {}

        /** They can't: why, each a sentence. */
        record Refused(List<String> sentences) implements Asked {}
    }

    /**
     * Lays labels out.
     *
     * @param first the first free label of a sheet that was begun, from 1
     */
    public static Asked of(List<BagLabel> labels, LabelSheet sheet, int first, BagAddress address, boolean trial) {
        List<String> faults = new ArrayList<>(sheet.faults());
        if (faults.isEmpty() && (first < 1 || first > sheet.count())) {
            faults.add("The first free label must be from 1 to " + sheet.count() + ", not " + first + ".");
        }
        if (labels.isEmpty()) {
            faults.add("There is nothing to label: nothing that was taken off lies about. Take something off first,"
                    + " or ask for empty labels.");
        }
        if (!faults.isEmpty()) {
            return new Asked.Refused(faults);
        }
        LabelLayout layout = new LabelLayout(new Lettering(), address, sheet);
        List<List<OnSheet>> pages = new ArrayList<>();
        int slot = first - 1;
        List<OnSheet> page = new ArrayList<>();
        for (BagLabel label : labels) {
            if (slot == sheet.count()) {
                pages.add(List.copyOf(page));
                page.clear();
                slot = 0;
            }
            page.add(new OnSheet(slot, label, layout.of(label)));
            slot++;
        }
        pages.add(List.copyOf(page));
        return new Asked.Ready(new LabelPages(sheet, address, pages, trial));
    }

    /** What the codes hold, and which labels have none. */
    public List<String> sentences() {
        List<String> without = pages.stream()
                .flatMap(List::stream)
                .filter(one -> one.placed().code().isEmpty())
                .map(one -> one.label().title())
                .toList();
        return without.isEmpty()
                ? List.of(address.sentence())
                : List.of(
                        address.sentence(),
                        "Without a code, which would be too fine to be read: " + Sentence.list(without)
                                + ". Shorten the name or the address, or take larger labels.");
    }

    /** Whether the margin above the labels has room for a line of text. */
    public boolean hasHead() {
        return sheet.top() >= 10;
    }

    /** Whether the margin below them has. */
    public boolean hasFoot() {
        return sheet.paper().upright().heightMm() - sheet.topOf(sheet.count() - 1) - sheet.height() >= 10;
    }

    /** Where a label's own place on the sheet is, as a style. */
    public String place(OnSheet one) {
        return String.format(
                Locale.ROOT,
                "left: %.4fmm; top: %.4fmm; width: %.4fmm; height: %.4fmm",
                sheet.leftOf(one.slot()),
                sheet.topOf(one.slot()),
                sheet.width(),
                sheet.height());
    }

    /** A length in mm as styles and drawings have it. */
    public static String mm(double length) {
        return String.format(Locale.ROOT, "%.4f", length);
    }

    /** A length in mm in the unit of drawings, of which an inch has 96; whole, so that nothing rounds it behind our back. */
    public static long px(double length) {
        return (long) Math.floor(length / 25.4 * 96);
    }
}
