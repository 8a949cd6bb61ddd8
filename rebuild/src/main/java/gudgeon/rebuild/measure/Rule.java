package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;

/** By what rules a figure, its doubt and its verdict are worked out, for whoever wants to do it again by hand; sentences. */
public final class Rule {
    private Rule() {}

    /** The rules that a dimension goes by, with their sources. */
    public static List<String> of(Structure structure, Dimension dimension) {
        List<String> rules = new ArrayList<>();
        rules.add(dimension
                .derived()
                .map(derivation -> {
                    List<String> names =
                            derivation.of().stream().map(structure::name).toList();
                    return switch (derivation.as()) {
                        case CLEARANCE, DIFFERENCE ->
                            "Value = " + String.join(" \u2212 ", names)
                                    + ": the least and the greatest that the places read allow. An error of one instrument on both"
                                    + " sides counts once.";
                        case OVALITY ->
                            "Value = greatest \u2212 least of the " + Sentence.list(names)
                                    + " between the axes at one height.";
                        case TAPER ->
                            "Value = greatest \u2212 least of the " + Sentence.list(names)
                                    + " between the heights on one axis.";
                        case WEAR ->
                            "Value = how far the " + Sentence.list(names) + " lies outside what a new part has.";
                    };
                })
                .orElse("Value = mean of the readings at a place with the instrument that leaves the least doubt."));
        rules.add(
                "u = root of the sum of the squares of the lines above (JCGM 100:2008, 5.1.2); U = k u, with k from the t"
                        + " distribution for 95 % (JCGM 100:2008, G.6.4).");
        dimension
                .expect()
                .ifPresent(limits -> rules.add("Allowed: " + limits.words()
                        + ". Proved in or out of limits where the chance of being wrong is at most 5 %, else unproven (JCGM"
                        + " 106:2012, 8.3.2; ISO 14253-1:2017, 5.2)."));
        dimension.standard().ifPresent(range -> rules.add("New: " + range.words() + "."));
        return rules;
    }
}
