package gudgeon.rebuild.fit;

import gudgeon.rebuild.book.Gasket;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Inches;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.ValveEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A choice found in its book.
 *
 * @param booked the book as written
 * @param book the book with the changed sizes
 * @param piston the piston tried
 * @param gasket the gasket tried
 * @param choice the choice with every part named
 */
record Tried(Geometry booked, Geometry book, PistonEntry piston, Gasket gasket, Choice choice) {
    /**
     * Finds a choice in a book.
     *
     * @throws UnknownChoice if it can't be tried
     */
    static Tried find(Geometry booked, Choice choice) {
        List<String> wrong = new ArrayList<>();
        String pistonId = choice.pistonId().orElse(booked.pistons().get(0).id());
        String gasketId = choice.gasketId().orElse(booked.gaskets().get(0).id());
        if (booked.piston(pistonId).isEmpty()) {
            wrong.add("The book has no piston '" + pistonId + "'; it has "
                    + listed(booked.pistons().stream().map(PistonEntry::id).toList()) + ".");
        }
        if (booked.gasket(gasketId).isEmpty()) {
            wrong.add("The book has no gasket '" + gasketId + "'; it has "
                    + listed(booked.gaskets().stream().map(Gasket::id).toList()) + ".");
        }
        if (choice.teethMoved() != 0 && booked.cam().isEmpty()) {
            wrong.add("The cam can't be moved by teeth: the book does not say how many teeth the cam's sprocket has."
                    + " Add cam: {sprocket-teeth: ...}.");
        }
        booked.cam()
                .filter(cam -> Math.abs((long) choice.teethMoved()) > cam.sprocketTeeth())
                .ifPresent(cam -> wrong.add("The cam's sprocket has " + cam.sprocketTeeth()
                        + " teeth; it can't be moved by " + choice.teethMoved() + "."));
        Map<String, Double> values = changes(booked, choice, wrong);
        if (!wrong.isEmpty()) {
            throw new UnknownChoice(wrong);
        }
        Geometry book = booked.with(values);
        Choice resolved = new Choice(
                Optional.of(pistonId),
                Optional.of(gasketId),
                choice.teethMoved(),
                choice.valveClearanceMm(),
                choice.turned(),
                choice.changed());
        return new Tried(
                booked,
                book,
                book.piston(pistonId).orElseThrow(),
                book.gasket(gasketId).orElseThrow(),
                resolved);
    }

    private static Map<String, Double> changes(Geometry booked, Choice choice, List<String> wrong) {
        Map<String, Size> sizes = booked.sizes();
        Map<String, Double> values = new HashMap<>();
        choice.changed().forEach((path, value) -> {
            if (!sizes.containsKey(path)) {
                wrong.add("The book has no size '" + path + "' to change.");
            } else if (!Double.isFinite(value)) {
                wrong.add("The " + sizes.get(path).label() + " is changed to something that is no number.");
            } else if (Inches.likely(sizes.get(path), value)) {
                wrong.add("The " + sizes.get(path).label() + " is changed from "
                        + LengthUnit.MM.format(sizes.get(path).value())
                        + " to " + LengthUnit.MM.format(value)
                        + ", which looks like inches: write it with its unit, as in "
                        + value + " in.");
            } else {
                values.put(path, value);
            }
        });
        OptionalDouble clearance = choice.valveClearanceMm();
        if (clearance.isPresent()) {
            if (!(clearance.getAsDouble() >= 0 && clearance.getAsDouble() < 5)) {
                wrong.add("A valve clearance is between 0 mm and 5 mm, not " + clearance.getAsDouble() + " mm.");
            }
            for (ValveEntry valve : booked.valves()) {
                values.put(valve.clearance().path(), clearance.getAsDouble());
            }
        }
        return values;
    }

    private static String listed(List<String> ids) {
        return "'" + String.join("', '", ids) + "'";
    }
}
