package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Trial fits, the last ones remembered: a page asks for the same few again and again, and each follows from its figures alone. */
public final class Trials {
    private static final int REMEMBERED = 32;

    private record Asked(Geometry geometry, Choice choice) {}

    /**
     * What came of one.
     *
     * @param fit the fit; empty where the sizes can't go together
     * @param why why not, sentences
     */
    record Tried(Optional<TrialFit> fit, List<String> why) {}

    private final Map<Asked, Tried> known = new LinkedHashMap<>(REMEMBERED, 0.75f, true);

    Tried of(AsMeasured parts) {
        Asked asked = new Asked(parts.geometry(), parts.choice());
        synchronized (known) {
            Tried before = known.get(asked);
            if (before != null) {
                return before;
            }
        }
        Tried tried = tried(asked);
        synchronized (known) {
            known.put(asked, tried);
            if (known.size() > REMEMBERED) {
                known.remove(known.keySet().iterator().next());
            }
        }
        return tried;
    }

    private static Tried tried(Asked asked) {
        try {
            TrialFit fit = TrialFit.withoutCures(asked.geometry(), asked.choice(), LengthUnit.MM);
            return new Tried(Optional.of(fit), List.of());
        } catch (UnknownChoice impossible) {
            return new Tried(Optional.empty(), impossible.sentences());
        }
    }
}
