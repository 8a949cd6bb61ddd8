package gudgeon.rebuild.desk;

import gudgeon.mechanics.limits.Interference;
import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.limits.WarmSeat;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A part of a fit in what it sits in: how warm it must be to go in, how hard it is pressed, whether it stays tight.
 *
 * @param question what was asked
 * @param sizeMm nominal size, mm
 * @param leastTightMm least interference, mm; below zero loose
 * @param mostTightMm greatest interference, mm
 * @param part what the part is made of
 * @param into what it sits in is made of
 */
record Seat(
        FitQuestion question, double sizeMm, double leastTightMm, double mostTightMm, Material part, Material into) {
    private static final double WARMEST_IN_WORK = 300;
    private static final double FREEZER_CELSIUS = -18;
    private static final double LARGEST_SHARE = 0.1;
    private static final String BURNS =
            "Warm it evenly and whole, in an oven or on a hot plate, never with a flame: hot metal burns, "
                    + "so wear dry, thick gloves. No petrol, solvent or oily rag near; wash and dry it first; take seals, plastic and plugs "
                    + "out before.";
    private static final String COLD =
            "Cold metal burns the skin too, and draws water: wear dry gloves, and oil the part once it is in.";
    private static final String MAGNESIUM = "Magnesium burns fiercely: no flame, no grinding dust and no chips near.";
    private static final String WARMEST =
            "The temperature not to pass is the maker's to say. Without his word most rolling bearings are "
                    + "kept below 120 °C, sealed ones below 100 °C (common practice, no source).";

    /** What of the question doesn't go with this size. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        if (!(question.boreOfPartMm() < sizeMm)) {
            faults.add("The bore of the part, " + DeskFigure.mm(question.boreOfPartMm())
                    + ", is not smaller than the part, " + DeskFigure.mm(sizeMm) + ".");
        }
        if (!(mostTightMm < sizeMm * LARGEST_SHARE)) {
            faults.add(
                    "An interference of a tenth of the size or more is beyond what parts stand; check the designation.");
        }
        question.outsideMm().ifPresent(outside -> {
            if (!(outside > sizeMm)) {
                faults.add("What it sits in is " + DeskFigure.mm(outside) + " outside, not larger than the part, "
                        + DeskFigure.mm(sizeMm) + ".");
            }
        });
        return faults;
    }

    private WarmSeat warm() {
        return new WarmSeat(sizeMm, part, into);
    }

    private boolean everTight() {
        return mostTightMm > 0;
    }

    /** How warm what it sits in must be, so that the tightest goes in. */
    private double wantedCelsius() {
        return warm().aroundCelsius(mostTightMm, question.warmGapMm(), question.atCelsius());
    }

    private boolean tooWarm() {
        return question.warmestCelsius().isPresent()
                && wantedCelsius() > question.warmestCelsius().getAsDouble();
    }

    /** How warm it is made: never past what it must not pass. */
    private double warmTo() {
        return tooWarm() ? question.warmestCelsius().orElseThrow() : wantedCelsius();
    }

    private Interference at(double tightMm) {
        return new Interference(
                sizeMm, tightMm, question.boreOfPartMm(), question.outsideMm().orElseThrow(), part, into);
    }

    List<DeskFigure> figures() {
        List<DeskFigure> figures = new ArrayList<>();
        if (everTight()) {
            if (wantedCelsius() > question.atCelsius()) {
                figures.add(new DeskFigure(
                        "warmTo", "warm the " + into.words() + " to", warmTo(), DeskFigure.Unit.CELSIUS));
            }
            if (tooWarm()) {
                figures.add(new DeskFigure("coolTo", "and cool the part to", coolCelsius(), DeskFigure.Unit.CELSIUS));
            }
            if (question.outsideMm().isPresent()) {
                pressures(figures);
            }
        }
        question.runningCelsius().ifPresent(running -> {
            figures.add(new DeskFigure(
                    "leastTightRunning",
                    "least interference at " + DeskFigure.celsius(running) + ", below zero loose",
                    warm().interferenceMm(leastTightMm, running, running),
                    DeskFigure.Unit.MM));
            figures.add(new DeskFigure(
                    "mostTightRunning",
                    "greatest interference at " + DeskFigure.celsius(running) + ", below zero loose",
                    warm().interferenceMm(mostTightMm, running, running),
                    DeskFigure.Unit.MM));
        });
        return figures;
    }

    private void pressures(List<DeskFigure> figures) {
        Interference tightest = at(mostTightMm);
        figures.add(new DeskFigure("pressure", "greatest pressure", tightest.pressureMPa(), DeskFigure.Unit.MPA));
        figures.add(new DeskFigure(
                "hoopInto",
                "hoop stress in the " + into.words() + ", pulling",
                tightest.hoopAroundMPa(),
                DeskFigure.Unit.MPA));
        figures.add(new DeskFigure(
                "hoopPart",
                "hoop stress in the part, below zero squeezed",
                tightest.hoopPartMPa(),
                DeskFigure.Unit.MPA));
        if (question.boreOfPartMm() > 0) {
            figures.add(new DeskFigure(
                    "boreCloses", "the part's bore closes by", tightest.boreClosesMm(), DeskFigure.Unit.MM));
        }
        if (question.lengthMm().isPresent() && question.friction().isPresent()) {
            figures.add(new DeskFigure(
                    "pressForce",
                    "force to press it in cold",
                    tightest.pressForceN(
                            question.lengthMm().getAsDouble(),
                            question.friction().getAsDouble()),
                    DeskFigure.Unit.NEWTON));
        }
    }

    private double coolCelsius() {
        return warm().partCelsius(
                        mostTightMm,
                        question.warmGapMm(),
                        question.warmestCelsius().orElseThrow());
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(everTight() ? entering() : "It is never tight, so it goes in by hand without warmth.");
        question.runningCelsius().ifPresent(running -> sentences.add(running(running)));
        OptionalDouble loose = warm().looseAtCelsius(mostTightMm);
        if (everTight()
                && loose.isPresent()
                && loose.getAsDouble() <= WARMEST_IN_WORK
                && question.runningCelsius().isEmpty()) {
            sentences.add("With both equally warm, even the tightest is loose from "
                    + DeskFigure.celsius(loose.getAsDouble()) + " up; ask with the temperature in work.");
        }
        return sentences;
    }

    private String entering() {
        String in = "For the tightest, with the part at " + DeskFigure.celsius(question.atCelsius()) + " and a gap of "
                + DeskFigure.mm(question.warmGapMm()) + ", the " + into.words() + " wants ";
        if (wantedCelsius() <= question.atCelsius()) {
            return in + "no warmth.";
        }
        if (!tooWarm()) {
            return in + DeskFigure.celsius(wantedCelsius()) + ".";
        }
        return in + DeskFigure.celsius(wantedCelsius()) + ", which is more than the "
                + DeskFigure.celsius(question.warmestCelsius().orElseThrow())
                + " that it must not pass. Don't warm it further: cool the part to " + DeskFigure.celsius(coolCelsius())
                + " as well, or go in with a smaller gap."
                + (coolCelsius() < FREEZER_CELSIUS
                        ? " That is colder than a household freezer gives, about " + DeskFigure.celsius(FREEZER_CELSIUS)
                                + " (common practice, no source); leave it to a machinist."
                        : "");
    }

    private String running(double running) {
        double least = warm().interferenceMm(leastTightMm, running, running);
        double most = warm().interferenceMm(mostTightMm, running, running);
        String at = "With both at " + DeskFigure.celsius(running) + " ";
        if (least > 0) {
            return at + "it stays tight.";
        }
        return most > 0
                ? at + "it may be loose and turn in its seat: whether it does is told by measuring both parts."
                : at + "it is loose, even at its tightest, unless something else holds it.";
    }

    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (everTight()) {
            cautions.add(BURNS);
            if (into == Material.MAGNESIUM || part == Material.MAGNESIUM) {
                cautions.add(MAGNESIUM);
            }
            if (question.warmestCelsius().isEmpty()) {
                cautions.add(WARMEST);
            }
            if (tooWarm() || question.atCelsius() < 0) {
                cautions.add(COLD);
            }
            cautions.add(
                    "Where force is used, push on the ring that is tight, squarely, with eyes and hands guarded: a hardened "
                            + "ring that is struck can send splinters.");
        }
        return cautions;
    }

    List<String> sources() {
        List<String> sources = new ArrayList<>();
        if (question.outsideMm().isPresent()) {
            sources.add(
                    "Pressure and stress: thick cylinders by Lame, Shigley's Mechanical Engineering Design, 9th ed., eq. 3-56. "
                            + "A boss is taken as an even ring.");
        }
        sources.add(
                "Elasticity: the same book, table A-5. Expansion: Callister and Rethwisch, Fundamentals of Materials Science and "
                        + "Engineering, 3rd ed., table B.6. An alloy's own figure may differ by a tenth.");
        return sources;
    }
}
