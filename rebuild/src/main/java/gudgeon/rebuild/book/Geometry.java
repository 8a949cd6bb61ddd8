package gudgeon.rebuild.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The figures of one type of engine from which a fit can be tried.
 *
 * @param engine which engine
 * @param instruments what was measured with
 * @param cylinder the barrel
 * @param crank crank and rod
 * @param head the head
 * @param gaskets head gaskets to choose from, one or more, the usual one first
 * @param cam the cam's drive, if stated
 * @param valves the valves, one or more
 * @param pistons pistons to choose from, one or more, the one now fitted first
 * @param wanted the least gaps wanted
 */
public record Geometry(
        Engine engine,
        List<Instrument> instruments,
        Cylinder cylinder,
        CrankSizes crank,
        Head head,
        List<Gasket> gaskets,
        Optional<CamDrive> cam,
        List<ValveEntry> valves,
        List<PistonEntry> pistons,
        WantedGaps wanted) {
    public Geometry {
        instruments = List.copyOf(instruments);
        gaskets = List.copyOf(gaskets);
        valves = List.copyOf(valves);
        pistons = List.copyOf(pistons);
    }

    /** The piston of that id. */
    public Optional<PistonEntry> piston(String id) {
        return pistons.stream().filter(piston -> piston.id().equals(id)).findFirst();
    }

    /** The gasket of that id. */
    public Optional<Gasket> gasket(String id) {
        return gaskets.stream().filter(gasket -> gasket.id().equals(id)).findFirst();
    }

    /** The valve of that id. */
    public Optional<ValveEntry> valve(String id) {
        return valves.stream().filter(valve -> valve.id().equals(id)).findFirst();
    }

    /** Every size by its path, in the order of the book. */
    public Map<String, Size> sizes() {
        Map<String, Size> sizes = new LinkedHashMap<>();
        each(size -> {
            sizes.put(size.path(), size);
            return size;
        });
        return Collections.unmodifiableMap(sizes);
    }

    /** The size of that path. */
    public Optional<Size> size(String path) {
        return Optional.ofNullable(sizes().get(path));
    }

    /**
     * The book with one size of another value and the same doubts.
     *
     * @throws IllegalArgumentException if no size has that path
     */
    public Geometry with(String path, double value) {
        return with(Map.of(path, value));
    }

    /**
     * The book with the sizes named of other values and the same doubts.
     *
     * @param values in each size's unit, by its path
     * @throws IllegalArgumentException if no size has one of the paths
     */
    public Geometry with(Map<String, Double> values) {
        Map<String, Size> known = sizes();
        for (String path : values.keySet()) {
            if (!known.containsKey(path)) {
                throw new IllegalArgumentException("the book has no size " + path);
            }
        }
        return each(size -> {
            Double value = values.get(size.path());
            return value == null ? size : size.at(value);
        });
    }

    /** The same book with every size changed. */
    public Geometry each(UnaryOperator<Size> change) {
        return new Geometry(
                engine,
                instruments,
                cylinder.each(change),
                crank.each(change),
                head.each(change),
                gaskets.stream().map(gasket -> gasket.each(change)).toList(),
                cam,
                valves.stream().map(valve -> valve.each(change)).toList(),
                pistons.stream().map(piston -> piston.each(change)).toList(),
                wanted);
    }

    /** What the height of a piston's crown above the deck follows from. */
    public Protrusion protrusion(PistonEntry piston) {
        if (piston.protrusion().isPresent()) {
            return new Protrusion.Measured(piston.protrusion().get());
        }
        if (crank.deckHeight().isPresent() && piston.compressionHeight().isPresent()) {
            return new Protrusion.Stacked(
                    crank, crank.deckHeight().get(), piston.compressionHeight().get());
        }
        Size measured = crank.protrusion()
                .orElseThrow(() -> new IllegalStateException("the crown height of " + piston.id() + " is not known"));
        PistonEntry fitted = pistons.get(0);
        if (fitted.id().equals(piston.id())
                || fitted.compressionHeight().isEmpty()
                || piston.compressionHeight().isEmpty()) {
            return new Protrusion.Measured(measured);
        }
        return new Protrusion.Exchanged(
                measured,
                fitted.compressionHeight().get(),
                piston.compressionHeight().get());
    }
}
