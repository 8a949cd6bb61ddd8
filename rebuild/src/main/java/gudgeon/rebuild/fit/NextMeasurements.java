package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Instrument;
import gudgeon.rebuild.book.LiftEntry;
import gudgeon.rebuild.book.ValveEntry;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says which size is worth measuring better next. */
final class NextMeasurements {
    private NextMeasurements() {}

    static Optional<NextMeasurement> of(List<Finding> findings, List<Input> inputs, Geometry book) {
        return findings.stream()
                .filter(finding -> finding.verdict() == Verdict.UNPROVEN)
                .min(Comparator.comparingDouble(finding -> finding.gap().leastMm() - finding.wantedMm()))
                .flatMap(finding -> hangsOnLift(finding)
                        ? lift(finding, inputs, book)
                        : finding.budget().isEmpty() ? Optional.empty() : Optional.of(of(finding, book)));
    }

    /** Whether the lift's unknown shape is what leaves it open, so that no better size would settle it. */
    private static boolean hangsOnLift(Finding finding) {
        double expanded = Finding.COVERAGE * finding.standardUncertaintyMm();
        return finding.leanLeastMm()
                .filter(lean -> Math.abs(lean - finding.gap().leastMm()) > expanded
                        || Verdict.of(lean, expanded, finding.wantedMm())
                                != Verdict.of(finding.gap().leastMm(), expanded, finding.wantedMm()))
                .isPresent();
    }

    private static Optional<NextMeasurement> lift(Finding finding, List<Input> inputs, Geometry book) {
        List<String> banded = book.valves().stream()
                .filter(valve -> valve.lift() instanceof LiftEntry.Events)
                .map(ValveEntry::id)
                .filter(id -> finding.valves().contains(id))
                .toList();
        return inputs.stream()
                .filter(input -> banded.stream().anyMatch(id -> input.path().equals("valves." + id + ".lift.greatest")))
                .findFirst()
                .map(input -> new NextMeasurement(
                        input,
                        "Take the lift of the " + String.join(" and ", banded)
                                + " valve every 5 to 10 degrees with a dial gauge and a degree disc, and write it as a table:"
                                + " from its opening and closing angles alone the lift between them is not known, and that"
                                + " leaves the " + Sentences.name(finding.kind(), finding.valves()) + " open."));
    }

    private static NextMeasurement of(Finding finding, Geometry book) {
        Share most = finding.budget().get(0);
        Input input = most.input();
        double u = finding.standardUncertaintyMm();
        double rest = u * u * (1 - most.share());
        double distance = Math.min(
                Math.abs(finding.gap().leastMm() - finding.wantedMm()),
                Math.abs(finding.gap().leastMm()));
        double allowed = distance * distance / (Finding.COVERAGE * Finding.COVERAGE) - rest;
        String lead = "Measure the " + input.label() + " better: it makes " + Math.round(100 * most.share())
                + " % of the doubt of the " + Sentences.name(finding.kind(), finding.valves()) + ". ";
        if (allowed <= 0) {
            return new NextMeasurement(
                    input,
                    lead
                            + "That alone does not settle it, since other sizes leave too much doubt; it is still the best first step.");
        }
        // by the input's part in the variance, which a kink in the least gap does not hide as it does in the
        // sensitivity
        double needed = Math.sqrt(allowed / most.share()) / u * input.quantity().standardUncertainty();
        return new NextMeasurement(input, lead + instrument(book, input, needed));
    }

    private static String instrument(Geometry book, Input input, double needed) {
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
