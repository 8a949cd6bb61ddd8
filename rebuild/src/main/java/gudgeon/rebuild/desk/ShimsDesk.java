package gudgeon.rebuild.desk;

import gudgeon.mechanics.limits.Shims;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers about shims. */
public final class ShimsDesk {
    /** Thinnest shim that is commonly sold: common practice, no source. */
    private static final double THINNEST_SOLD_MM = 0.05;

    private static final String MEASURE =
            "Measure each shim that goes in, and the float again once all is tight: a burr or an old "
                    + "gasket is thicker than a shim.";

    private ShimsDesk() {}

    /**
     * Tells which shims leave an end float as wanted, or what to buy.
     *
     * @param floatMm end float without any of these shims, mm
     * @param leastMm least float wanted, mm
     * @param mostMm most float wanted, mm
     * @param stockMm thicknesses in stock, one for each piece, mm
     */
    public static DeskAnswer answer(double floatMm, double leastMm, double mostMm, List<Double> stockMm) {
        Shims shims;
        try {
            shims = new Shims(floatMm, leastMm, mostMm, stockMm);
        } catch (IllegalArgumentException outside) {
            return new DeskAnswer.Refused(List.of(Sentence.of(String.valueOf(outside.getMessage()))));
        }
        return shims.choice().map(choice -> of(shims, choice)).orElseGet(() -> wanted(shims));
    }

    private static DeskAnswer of(Shims shims, Shims.Choice choice) {
        String heading = choice.shimsMm().isEmpty()
                ? "No shim: the float is within what is wanted as it is, " + DeskFigure.mm(choice.floatMm()) + "."
                : "Put in " + list(choice.shimsMm()) + ": it leaves " + DeskFigure.mm(choice.floatMm()) + " of float.";
        List<DeskFigure> figures = new ArrayList<>(pieces("shim", "shim to put in", choice.shimsMm()));
        figures.add(new DeskFigure("float", "float left", choice.floatMm(), DeskFigure.Unit.MM));
        return told(shims, heading, figures);
    }

    private static DeskAnswer wanted(Shims shims) {
        Optional<Shims.Wanted> wanted = shims.wanted(THINNEST_SOLD_MM);
        if (wanted.isEmpty()) {
            return told(
                    shims,
                    shims.floatMm() < shims.leastMm()
                            ? "No shim helps: there is less float than wanted without any. A part is too long or does not sit home."
                            : "None of the stock does, and one of " + DeskFigure.mm(THINNEST_SOLD_MM)
                                    + " would be too thick.",
                    List.of());
        }
        Shims.Wanted shim = wanted.get();
        List<DeskFigure> figures = new ArrayList<>(List.of(
                new DeskFigure("buyLeast", "thinnest to buy", shim.leastMm(), DeskFigure.Unit.MM),
                new DeskFigure("buyMost", "thickest to buy", shim.mostMm(), DeskFigure.Unit.MM)));
        figures.addAll(pieces("beside", "shim to put beside it", shim.withMm()));
        String beside = shim.withMm().isEmpty() ? "by itself" : "beside " + list(shim.withMm());
        return told(
                shims,
                "None of the stock does. Buy one of " + DeskFigure.mm(shim.leastMm()) + " to "
                        + DeskFigure.mm(shim.mostMm()) + " and put it in " + beside + ".",
                figures);
    }

    /** One figure for each piece, its key counted from 1. */
    private static List<DeskFigure> pieces(String key, String label, List<Double> shimsMm) {
        List<DeskFigure> figures = new ArrayList<>();
        for (double shim : shimsMm) {
            figures.add(new DeskFigure(key + (figures.size() + 1), label, shim, DeskFigure.Unit.MM));
        }
        return figures;
    }

    private static DeskAnswer told(Shims shims, String heading, List<DeskFigure> more) {
        List<DeskFigure> figures = new ArrayList<>(List.of(
                new DeskFigure("floatWithout", "float without shims", shims.floatMm(), DeskFigure.Unit.MM),
                new DeskFigure("wantedLeast", "least float wanted", shims.leastMm(), DeskFigure.Unit.MM),
                new DeskFigure("wantedMost", "most float wanted", shims.mostMm(), DeskFigure.Unit.MM)));
        figures.addAll(more);
        return new DeskAnswer.Told(
                heading,
                figures,
                List.of(),
                List.of("The maker's float comes first.", MEASURE),
                List.of("Every sum of the stock is tried; nearest to the middle, and of those the fewest shims."));
    }

    private static String list(List<Double> shims) {
        return Sentence.list(shims.stream().map(DeskFigure::mm).toList());
    }
}
