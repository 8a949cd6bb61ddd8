package gudgeon.rebuild.fasten;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.Locale;

/**
 * Fasteners to buy.
 *
 * @param thread their thread
 * @param lengthsMm standard lengths that would do for all of the holes, mm, shortest first; none where none does
 * @param holes for which holes, one each
 */
public record Purchase(String thread, List<Double> lengthsMm, List<String> holes) {
    public Purchase {
        lengthsMm = List.copyOf(lengthsMm);
        holes = List.copyOf(holes);
    }

    /** What to buy, a sentence. */
    public String sentence() {
        String where = Sentence.list(holes);
        String thread = this.thread.isEmpty() ? "a thread that nobody measured yet" : this.thread;
        if (lengthsMm.isEmpty()) {
            return "Wanting for " + where + ": " + Amount.of(holes.size(), "fastener") + " of " + thread
                    + "; what length is right is not known, or none of the standard ones is.";
        }
        return "Buy " + holes.size() + " of " + thread + ", "
                + String.join(" or ", lengthsMm.stream().map(Purchase::plain).toList())
                + " mm long, for " + where + ".";
    }

    private static String plain(double mm) {
        return mm == Math.rint(mm) ? String.valueOf(Math.round(mm)) : String.format(Locale.ROOT, "%.1f", mm);
    }
}
