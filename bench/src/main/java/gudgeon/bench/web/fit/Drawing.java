package gudgeon.bench.web.fit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.clearance.Curves;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Valve;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.TrialFit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The shapes and curves that the page's script draws from: what is in the trial fit, in mm and degrees, none of it worked out here. */
final class Drawing {
    private final ObjectMapper json = new ObjectMapper();

    /** The drawing as JSON that can stand inside a page's data block. */
    String json(TrialFit fit, Curves curves, Lengths lengths) {
        TopEnd top = fit.topEnd();
        Map<String, Object> drawing = new LinkedHashMap<>();
        drawing.put(
                "unit",
                Map.of("symbol", lengths.symbol(), "mm", lengths.mm(), "digits", lengths == Lengths.MM ? 2 : 4));
        drawing.put("bore", top.boreDiameterMm());
        drawing.put("gasket", top.gasketMm());
        drawing.put("land", top.crown().landDiameterMm());
        drawing.put("form", form(top.crown().form()));
        drawing.put("pockets", pockets(fit));
        drawing.put("theta", rounded(curves.thetaDeg(), 10));
        drawing.put(
                "crown",
                rounded(
                        Arrays.stream(curves.thetaDeg())
                                .map(top.crank()::crownHeightMm)
                                .toArray(),
                        1000));
        List<Object> valves = new ArrayList<>();
        for (int v = 0; v < top.valves().size(); v++) {
            valves.add(valve(fit.valveIds().get(v), top.valves().get(v), curves, v));
        }
        drawing.put("valves", valves);
        drawing.put("deck", rounded(curves.deckMm(), 1000));
        drawing.put("valveToValve", rounded(curves.valveToValveMm(), 1000));
        drawing.put("findings", fit.findings().stream().map(Drawing::finding).toList());
        try {
            return json.writeValueAsString(drawing).replace("<", "\\u003c");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the drawing could not be written", e);
        }
    }

    private static Map<String, Object> form(CrownForm form) {
        if (form instanceof CrownForm.Dome dome) {
            return Map.of(
                    "kind",
                    "dome",
                    "radius",
                    dome.baseDiameterMm() / 2,
                    "sphere",
                    dome.sphereRadiusMm(),
                    "centre",
                    dome.sphereCentreMm());
        }
        if (form instanceof CrownForm.Dish dish) {
            return Map.of(
                    "kind",
                    "dish",
                    "radius",
                    dish.rimDiameterMm() / 2,
                    "sphere",
                    dish.sphereRadiusMm(),
                    "centre",
                    dish.sphereCentreMm());
        }
        return Map.of("kind", "flat");
    }

    private static List<Object> pockets(TrialFit fit) {
        List<Pocket> pockets = fit.topEnd().crown().pockets();
        // the figures of metal left to the land's edge stand in the order of the pockets
        List<Figure> left = fit.figures().stream()
                .filter(figure -> figure.key().startsWith("metalLeftMmToEdge."))
                .toList();
        List<Object> shapes = new ArrayList<>();
        for (int k = 0; k < pockets.size(); k++) {
            Pocket pocket = pockets.get(k);
            Map<String, Object> shape = new LinkedHashMap<>();
            shape.put("diameter", pocket.diameterMm());
            shape.put("depth", pocket.depthMm());
            shape.put("offset", pocket.offsetMm());
            shape.put("azimuth", pocket.azimuthDeg());
            shape.put("tilt", pocket.tiltDeg());
            if (left.size() == pockets.size() && Double.isFinite(left.get(k).low())) {
                shape.put("toEdge", left.get(k).low());
                shape.put("toEdgeLabel", left.get(k).label());
            }
            shapes.add(shape);
        }
        return shapes;
    }

    private static Map<String, Object> valve(String id, Valve valve, Curves curves, int v) {
        Map<String, Object> shape = new LinkedHashMap<>();
        shape.put("id", id);
        shape.put("head", valve.headDiameterMm());
        shape.put("margin", valve.marginMm());
        shape.put("offset", valve.offsetMm());
        shape.put("azimuth", valve.azimuthDeg());
        shape.put("tilt", valve.tiltDeg());
        shape.put("recess", valve.recessMm());
        shape.put("lift", rounded(curves.liftMm()[v], 1000));
        shape.put("bore", rounded(curves.boreMm()[v], 1000));
        shape.put("valve", rounded(curves.valveMm()[v], 1000));
        shape.put("nearest", rounded(curves.nearestMm()[v], 1000));
        shape.put("side", rounded(curves.sideMm()[v], 1000));
        shape.put("wall", rounded(curves.wallMm()[v], 1000));
        return shape;
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> found = new LinkedHashMap<>();
        found.put("kind", finding.kind().name().toLowerCase(Locale.ROOT));
        found.put("valves", finding.valves());
        found.put("term", finding.kind().term());
        found.put("wanted", finding.wantedMm());
        found.put("verdict", finding.verdict().name().toLowerCase(Locale.ROOT));
        if (Double.isFinite(finding.gap().leastMm())) {
            found.put("least", finding.gap().leastMm());
            found.put("at", finding.gap().atDeg());
            var place = finding.gap().place();
            found.put("place", List.of(place.xMm(), place.yMm(), place.zMm()));
        }
        return found;
    }

    /** Rounded for the wire; null, which JSON has, for NaN, which it has not. */
    private static List<Double> rounded(double[] values, double parts) {
        List<Double> out = new ArrayList<>(values.length);
        for (double value : values) {
            out.add(Double.isFinite(value) ? Double.valueOf(Math.round(value * parts) / parts) : null);
        }
        return out;
    }
}
