package gudgeon.rebuild.fit;

import gudgeon.mechanics.chamber.Compression;
import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.CrownVolumes;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Valve;
import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.valvetrain.Lift;
import gudgeon.mechanics.valvetrain.TimedLift;
import gudgeon.rebuild.book.CrownEntry;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.PocketEntry;
import gudgeon.rebuild.book.Protrusion;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.ValveEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Makes the top end of a choice from the values of its sizes, so that a figure can be worked out again with any of them moved.
 * Immutable; safe to share between threads.
 */
final class Model {
    private static final String PISTONS = "pistons.";

    private final Tried tried;
    private final Map<String, Integer> place = new HashMap<>();
    private final List<Input> inputs = new ArrayList<>();
    private final List<ValveLift> lifts = new ArrayList<>();
    private final Protrusion protrusion;

    Model(Tried tried) {
        this.tried = tried;
        this.protrusion = tried.book().protrusion(tried.piston());
        double shift = tried.choice().teethMoved() == 0
                ? 0
                : TimedLift.shiftDeg(
                        tried.choice().teethMoved(),
                        tried.book().cam().orElseThrow().sprocketTeeth());
        for (ValveEntry valve : tried.book().valves()) {
            double booked =
                    tried.booked().valve(valve.id()).orElseThrow().clearance().value();
            lifts.add(new ValveLift(valve, booked, shift));
        }
        Map<String, Size> sizes = new LinkedHashMap<>();
        collect(tried.book()).forEach(size -> sizes.putIfAbsent(size.path(), size));
        sizes.values().forEach(size -> {
            place.put(size.path(), inputs.size());
            inputs.add(input(size));
        });
    }

    private Input input(Size size) {
        boolean changed = tried.choice().changed().containsKey(size.path());
        String how = changed ? "Changed by hand for this fit. " + size.howMeasured() : size.howMeasured();
        return new Input(size.path(), label(size), size.unit().symbol(), size.quantity(), how);
    }

    /** Every size that enters this fit, in the order of the book; other pistons and gaskets are left out. */
    private List<Size> collect(Geometry book) {
        List<Size> used = new ArrayList<>();
        book.each(size -> {
            used.add(size);
            return size;
        });
        return used.stream().filter(this::enters).toList();
    }

    /** A size of another piston, which the crown's height may follow from, says whose it is. */
    private String label(Size size) {
        String path = size.path();
        if (!path.startsWith(PISTONS)
                || path.startsWith(PISTONS + tried.piston().id() + ".")) {
            return size.label();
        }
        String other = path.substring(PISTONS.length(), path.indexOf('.', PISTONS.length()));
        return size.label() + " of piston '" + other + "'";
    }

    private boolean enters(Size size) {
        String path = size.path();
        if (protrusion.sizes().stream().anyMatch(height -> height.path().equals(path))) {
            return true;
        }
        boolean ofAnotherPiston = path.startsWith("pistons.")
                && !path.startsWith("pistons." + tried.piston().id() + ".");
        boolean ofAnotherGasket = path.startsWith("gaskets.")
                && !path.startsWith("gaskets." + tried.gasket().id() + ".");
        boolean height =
                path.contains("protrusion") || path.contains("deck-height") || path.contains("compression-height");
        return !ofAnotherPiston && !ofAnotherGasket && !height;
    }

    List<Input> inputs() {
        return List.copyOf(inputs);
    }

    List<Quantity> quantities() {
        return inputs.stream().map(Input::quantity).toList();
    }

    /** The values of all inputs at their best estimates. */
    double[] values() {
        return inputs.stream().mapToDouble(input -> input.quantity().value()).toArray();
    }

    Tried tried() {
        return tried;
    }

    Protrusion protrusion() {
        return protrusion;
    }

    /** Whether some lift's shape is not known, so that lean and full differ. */
    boolean banded() {
        return lifts.stream().anyMatch(ValveLift::banded);
    }

    /** Where an input stands in the list of inputs. */
    Optional<Integer> placeOf(String path) {
        return Optional.ofNullable(place.get(path));
    }

    private ToDoubleFunction<Size> in(double[] x) {
        return size -> {
            Integer at = place.get(size.path());
            return at == null ? size.value() : x[at];
        };
    }

    TopEnd topEnd(double[] x, boolean lean) {
        ToDoubleFunction<Size> of = in(x);
        List<Valve> valves = new ArrayList<>();
        for (int i = 0; i < lifts.size(); i++) {
            ValveEntry entry = tried.book().valves().get(i);
            Lift lift = lifts.get(i).lift(of, lean);
            valves.add(new Valve(
                    of.applyAsDouble(entry.head()),
                    of.applyAsDouble(entry.margin()),
                    of.applyAsDouble(entry.offset()),
                    of.applyAsDouble(entry.azimuth()),
                    of.applyAsDouble(entry.tilt()),
                    of.applyAsDouble(entry.recess()),
                    lift));
        }
        return new TopEnd(
                of.applyAsDouble(tried.book().cylinder().bore()),
                crank(of),
                crown(of),
                of.applyAsDouble(tried.gasket().pressed()),
                valves);
    }

    private Crank crank(ToDoubleFunction<Size> of) {
        return new Crank(
                of.applyAsDouble(tried.book().crank().stroke()) / 2,
                of.applyAsDouble(tried.book().crank().rod()),
                of.applyAsDouble(tried.book().crank().pinOffset()),
                protrusion.mm(of));
    }

    private Crown crown(ToDoubleFunction<Size> of) {
        CrownForm form;
        if (tried.piston().crown() instanceof CrownEntry.Dome dome) {
            form = new CrownForm.Dome(of.applyAsDouble(dome.height()), of.applyAsDouble(dome.base()));
        } else if (tried.piston().crown() instanceof CrownEntry.Dish dish) {
            form = new CrownForm.Dish(of.applyAsDouble(dish.depth()), of.applyAsDouble(dish.rim()));
        } else {
            form = new CrownForm.Flat();
        }
        List<Pocket> pockets = new ArrayList<>();
        for (PocketEntry pocket : tried.piston().pockets()) {
            pockets.add(new Pocket(
                    of.applyAsDouble(pocket.diameter()),
                    of.applyAsDouble(pocket.depth()),
                    of.applyAsDouble(pocket.offset()),
                    of.applyAsDouble(pocket.azimuth()),
                    of.applyAsDouble(pocket.tilt())));
        }
        Crown crown = new Crown(form, of.applyAsDouble(tried.piston().land()), pockets);
        return tried.choice().turned() ? crown.turned() : crown;
    }

    /** The compression of this choice; empty where the book does not give the chamber's volume. */
    Optional<Compression> compression(double[] x) {
        return compression(x, CrownVolumes::of);
    }

    /** The same with the crown's volumes as told, which cost most of it. */
    Optional<Compression> compression(double[] x, Function<Crown, CrownVolumes> volumes) {
        ToDoubleFunction<Size> of = in(x);
        return tried.book()
                .head()
                .chamber()
                .map(chamber -> new Compression(
                        of.applyAsDouble(tried.book().cylinder().bore()),
                        crank(of),
                        volumes.apply(crown(of)),
                        of.applyAsDouble(chamber),
                        of.applyAsDouble(tried.gasket().pressed()),
                        of.applyAsDouble(tried.gasket().bore())));
    }
}
