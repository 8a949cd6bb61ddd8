package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.sentence.Amount;

/** A verdict as sentences. */
record VerdictWords(Verdict verdict) {
    private static final double ONE_IN_A_HUNDRED = 0.01;

    String sentence() {
        return switch (verdict.outcome()) {
            case NOT_MEASURED -> "The " + name() + " is not measured yet" + unread() + ".";
            case NO_LIMITS -> "The " + name() + " is " + size() + "; the book has no limit for it." + condition();
            case IN_LIMITS -> found() + " The chance that it is not is " + chance(verdict.wrong()) + "." + condition();
            case OUT_OF_LIMITS ->
                found() + " The chance that it is in limits after all is " + chance(verdict.wrong()) + ".";
            case UNPROVEN -> found() + " " + whyUnproven();
        };
    }

    private String whyUnproven() {
        if (verdict.chances().isEmpty()) {
            return "Nobody said what it was read with, so it proves nothing.";
        }
        if (verdict.waitsForPlaces()) {
            return "What was read is in limits, but "
                    + Amount.of(verdict.evaluated().missing(), "place")
                    + (verdict.evaluated().missing() == 1 ? " was" : " were")
                    + " not read yet, and the worst place decides.";
        }
        return "Going by the bare value would be wrong with a chance of " + chance(verdict.wrong()) + ".";
    }

    private String found() {
        return "The " + name() + " is " + verdict.outcome().words() + ": " + size() + ", where "
                + verdict.dimension().expect().map(Expect::words).orElse("nothing") + " is allowed.";
    }

    /** Value, doubt and place of the figure that decides. */
    private String size() {
        return verdict.worst().map(this::size).orElse("unknown");
    }

    private String size(Figure worst) {
        Unit unit = verdict.dimension().unit();
        String value = worst.doubtKnown() ? unit.figure(worst.value(), worst.expanded()) : unit.figure(worst.value());
        String piece = verdict.dimension().pieces() > 1 ? "piece " + worst.piece() : "";
        String where = piece + (piece.isEmpty() || worst.at().isEmpty() ? "" : ", ") + worst.at();
        return value + (where.isEmpty() ? "" : " (" + where + ")");
    }

    private String condition() {
        return verdict.condition() == Condition.NOT_SAID
                ? ""
                : " It is " + verdict.condition().words() + ".";
    }

    private String unread() {
        int bad = verdict.evaluated().unread().size();
        return bad == 0 ? "" : ": " + Amount.of(bad, "reading") + " can't be used";
    }

    private String name() {
        return verdict.dimension().name();
    }

    private static String chance(double chance) {
        return chance < ONE_IN_A_HUNDRED ? "below 1 %" : Math.round(100 * chance) + " %";
    }
}
