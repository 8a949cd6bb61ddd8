package gudgeon.rebuild.bore;

import static gudgeon.rebuild.bore.Oversize.mm;

import gudgeon.mechanics.bore.CleansUp;
import gudgeon.mechanics.bore.FinishedBore;
import gudgeon.mechanics.bore.WornBore;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Works out a plan for a bore that was measured. */
final class BorePlanner {
    private final Build build;
    private final BoreDimensions dimensions;
    private final FoundBore found;
    private final WornBore.Least least;

    BorePlanner(Build build, BoreDimensions dimensions, FoundBore found) {
        this.build = build;
        this.dimensions = dimensions;
        this.found = found;
        this.least = found.leastBore();
    }

    BorePlan plan() {
        Optional<Expect> clearance = dimensions.wanted();
        List<Oversize> rows = new PistonsToHave(build, dimensions).against(found, clearance);
        Optional<PistonsToHave.InHand> inHand = PistonsToHave.inHand(build, dimensions);
        Optional<Ask> ask = inHand.flatMap(piston ->
                        piston.skirt().flatMap(skirt -> clearance.map(span -> Ask.of(piston.part(), skirt, span))))
                .filter(asked -> least.with(asked.bore().leastMm()) != CleansUp.NO);
        Optional<Oversize> chosen = ask.map(
                        asked -> Oversize.of(asked.piston(), asked.bore().leastMm(), least))
                .or(() ->
                        rows.stream().filter(Oversize::isProved).min(Comparator.comparingDouble(Oversize::finishedMm)));
        boolean none = rows.stream().allMatch(row -> row.cleansUp() == CleansUp.NO);
        return new BorePlan(
                sentence(ask, chosen, rows),
                found(),
                rows,
                ask,
                chosen.map(row -> AfterBoring.of(build, dimensions, found, finished(ask, row)))
                        .orElse(List.of()),
                unproven(clearance, inHand, chosen, ask),
                none && !rows.isEmpty() ? BorePlan.SLEEVE : BorePlan.CAUTIONS);
    }

    private static FinishedBore finished(Optional<Ask> ask, Oversize chosen) {
        return ask.map(Ask::bore).orElse(new FinishedBore(chosen.finishedMm(), chosen.finishedMm(), false));
    }

    private String sentence(Optional<Ask> ask, Optional<Oversize> chosen, List<Oversize> rows) {
        if (ask.isPresent()) {
            return ask.get().work();
        }
        if (chosen.isPresent()) {
            return "The least piston to be had that is proved to clean up is "
                    + chosen.get().name() + ", a bore of about "
                    + mm(chosen.get().finishedMm())
                    + ". Have the piston in hand and measured before the barrel goes off.";
        }
        if (rows.isEmpty()) {
            return "The book has no oversizes and no piston was offered, so nothing can be chosen; the least bore that can clean up is "
                    + mm(least.evenWear().value()) + ".";
        }
        return rows.stream().allMatch(row -> row.cleansUp() == CleansUp.NO)
                ? "No piston to be had cleans this bore up: a sleeve or another barrel is needed."
                : "No piston to be had is proved to clean this bore up.";
    }

    private List<String> found() {
        List<String> sentences = new ArrayList<>();
        sentences.add(place("Largest", found.worst()));
        sentences.add(place("Least", found.least()));
        sentences.add(
                found.overMm() > 0
                        ? "It was bored to " + mm(found.overMm()) + " over before; worn from "
                                + mm(found.worn().unwornMm().value()) + "."
                        : "Worn from " + mm(found.worn().unwornMm().value()) + ".");
        dimensions
                .bore()
                .expect()
                .filter(limits -> limits.holds(found.worst().size().value()))
                .ifPresent(limits -> sentences.add("It lies within the book's service limits of " + limits.words()
                        + ", so wear alone does not ask for boring."));
        sentences.add("With " + mm(FoundBore.ALLOWANCE_MM.value())
                + " a side for boring and honing (common practice, no source), the least clean bore is "
                + mm(least.evenWear().value()) + " if wear is the same on both sides, "
                + mm(least.shiftedCentre().value()) + " on a centre moved towards wear on one side, "
                + mm(least.oldCentre().value()) + " on the old centre.");
        return sentences;
    }

    private String place(String which, Gauged reading) {
        return which + " reading: " + mm(reading.size().value())
                + (reading.at().isEmpty() ? "." : ", " + reading.at() + ".");
    }

    private List<String> unproven(
            Optional<Expect> clearance,
            Optional<PistonsToHave.InHand> inHand,
            Optional<Oversize> chosen,
            Optional<Ask> ask) {
        List<String> sentences = new ArrayList<>();
        if (clearance.isEmpty()) {
            sentences.add("The book has no range for the "
                    + dimensions.clearance().name() + ", so no finished size can be said. Put in the maker's.");
        }
        if (inHand.isEmpty()) {
            sentences.add("No new piston is in hand: a finished size can be asked for only once it is measured.");
        } else if (inHand.get().skirt().isEmpty()) {
            sentences.add("The piston '" + inHand.get().part() + "' is in hand and not measured: measure its skirt.");
        }
        if (!found.doubtKnown()) {
            sentences.add("Nobody said what the bore was measured with, so each reading is taken to be good to "
                    + mm(Gauged.UNKNOWN) + " only.");
        }
        if (!found.scored()) {
            sentences.add(
                    "No depth of scores was recorded, so none is counted. A nail that catches says there is one.");
        }
        chosen.filter(row -> !row.isProved()).ifPresent(row -> sentences.add(row.sentence()));
        ask.filter(asked -> !asked.bore().proved())
                .ifPresent(
                        asked -> sentences.add(
                                "The doubt of the piston's size is as large as the clearance allowed: measure the piston with a better instrument."));
        if (dimensions.bore().places().axes().size() < 2) {
            sentences.add(
                    "The book has the bore measured in no two directions, so wear is feared to be the worst in both.");
        }
        return sentences;
    }
}
