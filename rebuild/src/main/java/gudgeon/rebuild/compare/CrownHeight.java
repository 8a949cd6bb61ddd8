package gudgeon.rebuild.compare;

import gudgeon.mechanics.metrology.Budget;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.Protrusion;
import gudgeon.rebuild.book.Size;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** How high a piston's crown stands at top dead centre, as one size. */
record CrownHeight(Protrusion protrusion) {
    static final String LABEL = "crown height at TDC";

    static CrownHeight of(Geometry book, PistonEntry piston) {
        return new CrownHeight(book.protrusion(piston));
    }

    double mm() {
        return protrusion.mm(Size::value);
    }

    /** As a size without doubt, at a path. */
    Size as(String path) {
        return protrusion.sizes().get(0).renamed(path).as(Quantity.exact(mm()));
    }

    /** The standard uncertainty of the difference from another height; what both rest on cancels. */
    double uncertaintyOfDifference(CrownHeight other) {
        List<Size> sizes = new ArrayList<>();
        Map<String, Integer> place = new HashMap<>();
        for (Protrusion one : List.of(protrusion, other.protrusion)) {
            for (Size size : one.sizes()) {
                if (place.putIfAbsent(size.path(), sizes.size()) == null) {
                    sizes.add(size);
                }
            }
        }
        return Budget.of(sizes.stream().map(Size::quantity).toList(), x -> {
                    ToDoubleFunction<Size> value = size -> {
                        Integer at = place.get(size.path());
                        return at == null ? size.value() : x[at];
                    };
                    return other.protrusion.mm(value) - protrusion.mm(value);
                })
                .standardUncertainty();
    }
}
