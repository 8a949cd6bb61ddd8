package gudgeon.rebuild.desk;

import gudgeon.mechanics.limits.Fit;
import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.limits.ToleranceClass;
import gudgeon.mechanics.limits.UnknownDesignation;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Answers about fits by designation. */
public final class FitDesk {
    static final String ISO_286 = "Limits: ISO 286-1:2010, tables 1 to 5, as they are rounded there.";

    private FitDesk() {}

    /** Tells the limits of a fit or of one tolerance class, and, where it is asked, how hard and how warm. */
    public static DeskAnswer answer(FitQuestion question) {
        List<String> faults = new ArrayList<>(rangeFaults(question));
        Optional<Material> part = material(question.part().orElse("steel"), "the part", faults);
        Optional<Material> into = question.into().flatMap(name -> material(name, "what it sits in", faults));
        try {
            if (question.designation().contains("/")) {
                Fit fit = Fit.of(question.designation());
                return faults.isEmpty() ? of(question, fit, part.orElseThrow(), into) : new DeskAnswer.Refused(faults);
            }
            ToleranceClass limits = ToleranceClass.of(question.designation());
            if (question.into().isPresent()) {
                faults.add("'" + question.designation()
                        + "' is one tolerance class; warmth and pressure need both, as in 42 N7/h6.");
            }
            return faults.isEmpty() ? of(limits) : new DeskAnswer.Refused(faults);
        } catch (UnknownDesignation unknown) {
            faults.addAll(0, unknown.sentences());
            return new DeskAnswer.Refused(faults);
        }
    }

    private static Optional<Material> material(String name, String of, List<String> faults) {
        Optional<Material> material = Material.named(name);
        if (material.isEmpty()) {
            faults.add("'" + name + "', which " + of + " is made of, is not a material known here; known are "
                    + Sentence.list(Arrays.stream(Material.values())
                            .map(Material::words)
                            .toList()) + ".");
        }
        return material;
    }

    private static List<String> rangeFaults(FitQuestion question) {
        List<String> faults = new ArrayList<>();
        if (!(question.boreOfPartMm() >= 0)) {
            faults.add("The bore of the part is below zero; 0 is a solid part.");
        }
        if (!(question.warmGapMm() >= 0 && question.warmGapMm() <= 1)) {
            faults.add("The gap wanted while it goes in is 0 to 1 mm.");
        }
        if (question.lengthMm().isPresent() != question.friction().isPresent()) {
            faults.add("The force of pressing in needs both the length and the friction; give both or neither.");
        }
        if (question.lengthMm().isPresent() && question.outsideMm().isEmpty()) {
            faults.add("The force of pressing in needs the outside diameter of what it sits in as well.");
        }
        if (question.lengthMm().isPresent() && !(question.lengthMm().getAsDouble() > 0)) {
            faults.add("The length over which they touch is above 0.");
        }
        if (question.friction().isPresent()
                && !(question.friction().getAsDouble() >= 0
                        && question.friction().getAsDouble() <= 1)) {
            faults.add("The coefficient of friction is 0 to 1.");
        }
        if (question.into().isEmpty() && question.outsideMm().isPresent()) {
            faults.add("Pressure and stress need the material of what it sits in, such as aluminium.");
        }
        temperatures(question, faults);
        return faults;
    }

    private static void temperatures(FitQuestion question, List<String> faults) {
        List<Double> temperatures = new ArrayList<>(List.of(question.atCelsius()));
        question.warmestCelsius().ifPresent(temperatures::add);
        question.runningCelsius().ifPresent(temperatures::add);
        if (temperatures.stream().anyMatch(t -> !(t >= -60 && t <= 300))) {
            faults.add("Temperatures are -60 to 300 °C; expansion is not known here beyond that.");
        }
    }

    private static DeskAnswer of(ToleranceClass limits) {
        String kind = limits.isHole() ? "hole" : "shaft";
        return new DeskAnswer.Told(
                limits.designation() + ": a " + kind + " of " + DeskFigure.mm(limits.leastMm()) + " to "
                        + DeskFigure.mm(limits.mostMm()) + ".",
                limitFigures(limits, kind),
                List.of(),
                List.of("The maker's limits come first; sizes are those at 20 °C."),
                List.of(ISO_286));
    }

    private static List<DeskFigure> limitFigures(ToleranceClass limits, String kind) {
        return List.of(
                new DeskFigure(kind + "Least", "smallest " + kind, limits.leastMm(), DeskFigure.Unit.MM),
                new DeskFigure(kind + "Most", "largest " + kind, limits.mostMm(), DeskFigure.Unit.MM));
    }

    private static DeskAnswer of(FitQuestion question, Fit fit, Material part, Optional<Material> into) {
        double least = fit.leastClearanceMicrometres() / 1000;
        double most = fit.mostClearanceMicrometres() / 1000;
        List<DeskFigure> figures = new ArrayList<>(limitFigures(fit.hole(), "hole"));
        figures.addAll(limitFigures(fit.shaft(), "shaft"));
        figures.add(new DeskFigure("leastClearance", "least clearance, below zero tight", least, DeskFigure.Unit.MM));
        figures.add(new DeskFigure("mostClearance", "most clearance, below zero tight", most, DeskFigure.Unit.MM));
        List<String> sources = new ArrayList<>(List.of(ISO_286));
        List<String> sentences = new ArrayList<>();
        List<String> cautions = new ArrayList<>(List.of("The maker's limits come first; sizes are those at 20 °C."));
        if (into.isPresent()) {
            Seat seat = new Seat(question, fit.hole().sizeMm(), -most, -least, part, into.get());
            List<String> faults = seat.faults();
            if (!faults.isEmpty()) {
                return new DeskAnswer.Refused(faults);
            }
            figures.addAll(seat.figures());
            sentences.addAll(seat.sentences());
            cautions.addAll(seat.cautions());
            sources.addAll(seat.sources());
        }
        return new DeskAnswer.Told(
                heading(question.designation(), fit, least, most), figures, sentences, cautions, sources);
    }

    private static String heading(String designation, Fit fit, double least, double most) {
        return designation.strip() + ": "
                + switch (fit.kind()) {
                    case CLEARANCE ->
                        "a clearance fit, " + DeskFigure.mm(least) + " to " + DeskFigure.mm(most) + " loose.";
                    case INTERFERENCE ->
                        "an interference fit, " + DeskFigure.mm(-most) + " to " + DeskFigure.mm(-least) + " tight.";
                    case TRANSITION ->
                        "a transition fit, from " + DeskFigure.mm(-least) + " tight to " + DeskFigure.mm(most)
                                + " loose, as the two parts happen to be. Measure both to know.";
                };
    }
}
