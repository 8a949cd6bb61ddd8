package gudgeon.rebuild.book;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the sizes of a book go with each other. What can't be is a fault; what is hard to believe is a doubt. Bounds without
 * a source beside them are common practice, generous on purpose.
 */
final class Plausibility {
    private final Geometry book;
    private final Faults faults;

    Plausibility(Geometry book, Faults faults) {
        this.book = book;
        this.faults = faults;
    }

    void check() {
        crank();
        chamber();
        book.gaskets().forEach(this::gasket);
        book.valves().forEach(this::valve);
        book.pistons().forEach(this::piston);
    }

    private void crank() {
        CrankSizes crank = book.crank();
        Size rod = crank.rod();
        Size stroke = crank.stroke();
        double least = stroke.value() / 2 + Math.abs(crank.pinOffset().value());
        if (known(rod, stroke)) {
            double ratio = rod.value() / stroke.value();
            if (rod.value() <= least) {
                fault(
                        rod,
                        "The rod of " + mm(rod) + " is too short to turn a stroke of " + mm(stroke) + ".",
                        "Measure between the centres of the rod's eyes.");
            } else if (ratio < 1.3 || ratio > 3) {
                doubt(
                        rod,
                        "The rod is " + Words.number(ratio) + " times the stroke, which is unusual.",
                        "Check both; the rod is mostly 1.5 to 2.3 times the stroke.");
            }
        }
        Size bore = book.cylinder().bore();
        if (known(bore, stroke)) {
            double ratio = stroke.value() / bore.value();
            if (ratio < 0.35 || ratio > 2.5) {
                doubt(
                        stroke,
                        "A stroke of " + mm(stroke) + " with a bore of " + mm(bore) + " is unusual.",
                        "Check both for a digit or a unit.");
            }
        }
    }

    private void chamber() {
        Size bore = book.cylinder().bore();
        Size stroke = book.crank().stroke();
        book.head().chamber().filter(chamber -> known(chamber, bore, stroke)).ifPresent(chamber -> {
            double swept = Math.PI / 4 * bore.value() * bore.value() * stroke.value() / 1000;
            if (chamber.value() > swept / 2 || chamber.value() < swept / 50) {
                doubt(
                        chamber,
                        "A chamber of " + Words.number(chamber.value()) + " cm³ hardly goes with a swept volume of "
                                + Words.number(Math.rint(swept * 10) / 10) + " cm³.",
                        "Check it, and that it is in cm³.");
            }
        });
    }

    private void gasket(Gasket gasket) {
        Size bore = book.cylinder().bore();
        if (known(gasket.bore(), bore)) {
            double ratio = gasket.bore().value() / bore.value();
            if (ratio < 1 || ratio > 1.3) {
                doubt(
                        gasket.bore(),
                        "The gasket's hole of " + mm(gasket.bore()) + (ratio < 1 ? " reaches into" : " is far from")
                                + " the bore of " + mm(bore) + ".",
                        "Check that it is the gasket of this engine.");
            }
        }
    }

    private void valve(ValveEntry valve) {
        Size bore = book.cylinder().bore();
        if (known(valve.head(), bore) && valve.head().value() >= bore.value()) {
            fault(
                    valve.head(),
                    "The valve head of " + mm(valve.head()) + " is not smaller than the bore of " + mm(bore) + ".",
                    "Check the valve's head diameter and the bore.");
        }
        if (known(valve.offset(), bore) && valve.offset().value() > bore.value() / 2) {
            fault(
                    valve.offset(),
                    "The valve's middle lies " + mm(valve.offset()) + " from the bore axis, outside the bore.",
                    "Measure from the bore's centre.");
        }
        lift(valve);
    }

    private void lift(ValveEntry valve) {
        Optional<Double> greatest = greatestLift(valve);
        valve.springTravel()
                .filter(Size::isKnown)
                .ifPresent(
                        travel -> greatest.filter(lift -> lift > travel.value())
                                .ifPresent(
                                        lift -> doubt(
                                                travel,
                                                "The valve lifts " + Words.number(lift)
                                                        + " mm, past the spring's travel of " + mm(travel)
                                                        + ": the spring's coils would bind.",
                                                "Check the lift and the travel; if both are right, the spring or its packing is wrong.")));
        if (known(valve.head())
                && greatest.filter(lift -> lift > valve.head().value() / 2).isPresent()) {
            doubt(
                    valve.head(),
                    "A lift of more than half the head's diameter is unusual.",
                    "Check both for a digit or a unit.");
        }
        if (valve.lift() instanceof LiftEntry.Events events && known(events.opens(), events.closes())) {
            double duration = (events.closes().value() - events.opens().value() + 720) % 720;
            if (duration < 120 || duration > 450) {
                doubt(
                        events.opens(),
                        "The valve would be open for " + Words.number(duration) + "° of the crank.",
                        "Check the angles and their letters: btdc, atdc, bbdc, abdc.");
            }
        }
    }

    /** Greatest lift at the valve in mm, where it can be told. */
    private static Optional<Double> greatestLift(ValveEntry valve) {
        if (valve.lift() instanceof LiftEntry.Events events) {
            return Optional.of(events.greatest()).filter(Size::isKnown).map(Size::value);
        }
        if (valve.lift() instanceof LiftEntry.Law law) {
            return Optional.of(law.greatest())
                    .filter(Size::isKnown)
                    .map(size -> atValve(size.value(), law.at(), law.rockerRatio(), valve));
        }
        LiftEntry.Table table = (LiftEntry.Table) valve.lift();
        return table.points().stream()
                .map(LiftEntry.Point::mm)
                .max(Double::compare)
                .map(lift -> atValve(lift, table.at(), table.rockerRatio(), valve));
    }

    private static double atValve(double lift, LiftEntry.At at, Optional<Size> ratio, ValveEntry valve) {
        return at == LiftEntry.At.VALVE
                ? lift
                : lift * ratio.map(Size::value).orElse(1.0) - valve.clearance().value();
    }

    private void piston(PistonEntry piston) {
        Size bore = book.cylinder().bore();
        if (known(piston.land(), bore)) {
            if (piston.land().value() > bore.value()) {
                fault(
                        piston.land(),
                        "The piston's land of " + mm(piston.land()) + " is larger than the bore of " + mm(bore) + ".",
                        "Check both; the piston may be an oversize.");
            } else if (piston.land().value() < 0.9 * bore.value()) {
                doubt(
                        piston.land(),
                        "The piston's land of " + mm(piston.land()) + " is far smaller than the bore of " + mm(bore)
                                + ".",
                        "Check that it is a piston of this engine.");
            }
        }
        if (piston.crown() instanceof CrownEntry.Dome dome) {
            cap("dome", dome.height(), dome.base(), piston.land());
        } else if (piston.crown() instanceof CrownEntry.Dish dish) {
            cap("dish", dish.depth(), dish.rim(), piston.land());
        }
        height(piston);
        piston.pockets().forEach(pocket -> pocket(pocket, piston));
    }

    private void cap(String what, Size height, Size circle, Size land) {
        if (known(height, circle) && height.value() > circle.value() / 2) {
            fault(
                    height,
                    "The " + what + " of " + mm(height) + " is more than half its circle of " + mm(circle) + ".",
                    "A spherical " + what + " can be half its circle at most; check both.");
        }
        if (known(circle, land) && circle.value() > land.value()) {
            fault(
                    circle,
                    "The " + what + "'s circle of " + mm(circle) + " is larger than the land of " + mm(land) + ".",
                    "Check both diameters.");
        }
    }

    private void height(PistonEntry piston) {
        CrankSizes crank = book.crank();
        if (piston.protrusion().isEmpty()
                && crank.protrusion().isEmpty()
                && (crank.deckHeight().isEmpty() || piston.compressionHeight().isEmpty())) {
            faults.fault(
                    piston.land().isKnown()
                            ? piston.land().where()
                            : crank.stroke().where(),
                    "pistons." + piston.id(),
                    "Nothing says how high the crown of the piston " + piston.id() + " stands at top dead centre.",
                    "Add 'protrusion' to the crank or the piston, or 'deck-height' to the crank and"
                            + " 'compression-height' to the piston.");
            return;
        }
        Protrusion protrusion = book.protrusion(piston);
        double limit = Math.max(5, 0.3 * crank.stroke().value());
        double mm = protrusion.mm(Size::value);
        if (protrusion.sizes().stream().allMatch(Size::isKnown)
                && crank.stroke().isKnown()
                && !(Math.abs(mm) <= limit)) {
            doubt(
                    protrusion.sizes().get(protrusion.sizes().size() - 1),
                    "The crown of the piston " + piston.id() + " would stand " + Words.number(Math.abs(mm)) + " mm "
                            + (mm > 0 ? "proud of" : "below") + " the deck at top dead centre.",
                    "Check the sizes that this follows from.");
        }
    }

    private void pocket(PocketEntry pocket, PistonEntry piston) {
        Size bore = book.cylinder().bore();
        if (known(pocket.diameter(), bore) && pocket.diameter().value() >= bore.value()) {
            fault(
                    pocket.diameter(),
                    "The pocket of " + mm(pocket.diameter()) + " is not smaller than the bore of " + mm(bore) + ".",
                    "Check the pocket's diameter.");
        }
        if (known(pocket.offset(), bore) && pocket.offset().value() > bore.value() / 2) {
            fault(
                    pocket.offset(),
                    "The pocket's middle lies " + mm(pocket.offset()) + " from the bore axis, outside the bore.",
                    "Measure from the piston's centre.");
        }
        piston.crownThickness()
                .filter(thick -> known(thick, pocket.depth(), pocket.tilt()))
                .ifPresent(thick -> {
                    double down = pocket.depth().value()
                            * Math.cos(Math.toRadians(pocket.tilt().value()));
                    if (down >= thick.value()) {
                        doubt(
                                pocket.depth(),
                                "The pocket goes " + Words.number(down) + " mm down, through a crown of " + mm(thick)
                                        + ".",
                                "Check both before you trust this piston.");
                    }
                });
        book.valve(pocket.valve()).ifPresent(valve -> against(pocket, valve));
    }

    private void against(PocketEntry pocket, ValveEntry valve) {
        if (known(pocket.diameter(), valve.head())
                && pocket.diameter().value() <= valve.head().value()) {
            doubt(
                    pocket.diameter(),
                    "The pocket of " + mm(pocket.diameter()) + " is no wider than its valve's head of "
                            + mm(valve.head()) + ".",
                    "Check both; such a valve can't go into its pocket.");
        }
        if (known(pocket.azimuth(), valve.azimuth())) {
            double apart = Math.abs(Math.IEEEremainder(
                    pocket.azimuth().value() - valve.azimuth().value(), 360));
            if (apart > 45) {
                doubt(
                        pocket.azimuth(),
                        "The pocket lies " + Words.number(apart) + "° around the bore from its valve.",
                        apart > 135
                                ? "Check which way round the piston was when it was measured."
                                : "Check the azimuth of both.");
            }
        }
    }

    private static boolean known(Size... sizes) {
        return Stream.of(sizes).allMatch(Size::isKnown);
    }

    private static String mm(Size size) {
        return Words.number(size.value()) + " mm";
    }

    private void fault(Size size, String what, String expected) {
        faults.fault(size.where(), size.path(), what, expected);
    }

    private void doubt(Size size, String what, String expected) {
        faults.doubt(size.where(), size.path(), what, expected);
    }
}
