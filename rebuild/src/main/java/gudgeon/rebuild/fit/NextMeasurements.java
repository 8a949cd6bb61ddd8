package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Instrument;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says which size is worth measuring better next. */
final class NextMeasurements {
    private NextMeasurements() {}

    static Optional<NextMeasurement> of(List<Finding> findings, EngineBook book) {
        return findings.stream()
                .filter(finding -> finding.verdict() == Verdict.UNPROVEN
                        && !finding.budget().isEmpty())
                .min(Comparator.comparingDouble(finding -> finding.gap().leastMm() - finding.wantedMm()))
                .map(finding -> of(finding, book));
    }

    private static NextMeasurement of(Finding finding, EngineBook book) {
        Share most = finding.budget().get(0);
        Input input = most.input();
        double u = finding.standardUncertaintyMm();
        double rest = u * u * (1 - most.share());
        double distance = Math.min(
                Math.abs(finding.gap().leastMm() - finding.wantedMm()),
                Math.abs(finding.gap().leastMm()));
        double allowed = distance * distance / (Finding.COVERAGE * Finding.COVERAGE) - rest;
        String lead = "Measure the " + input.label() + " better: it makes " + Math.round(100 * most.share())
                + " % of the doubt of the " + finding.kind().term()
                + (finding.valves().isEmpty() ? "" : " of the " + String.join(" and ", finding.valves())) + ". ";
        if (allowed <= 0 || most.sensitivity() == 0) {
            return new NextMeasurement(
                    input,
                    lead
                            + "That alone does not settle it, since other sizes leave too much doubt; it is still the best first step.");
        }
        double needed = Math.sqrt(allowed) / Math.abs(most.sensitivity());
        return new NextMeasurement(input, lead + instrument(book, input, needed));
    }

    private static String instrument(EngineBook book, Input input, double needed) {
        String wanted = "a standard uncertainty of " + text(needed) + " " + input.unit() + " (now "
                + text(input.quantity().standardUncertainty()) + ")";
        return book.instruments().stream()
                .filter(instrument -> instrument.unit().symbol().equals(input.unit()))
                .filter(instrument -> uncertainty(instrument) <= needed)
                .max(Comparator.comparingDouble(NextMeasurements::uncertainty))
                .map(instrument -> "The " + instrument.id() + " would settle it: " + wanted + " is enough.")
                .orElse("No instrument in the book is fine enough: " + wanted + " is needed.");
    }

    private static double uncertainty(Instrument instrument) {
        return Quantity.read(0, instrument.resolution(), instrument.error()).standardUncertainty();
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
