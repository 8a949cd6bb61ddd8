package gudgeon.rebuild.compare;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.QuickFit;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Works out what a change of the first piston does to gaps, compression and metal left. */
final class Effects {
    /** Less than this is not worth a line, in mm and in units of the compression ratio. */
    private static final double LEAST = 0.005;
    /** Not an id that a book can have, so that the piston tried is never taken for one of the book's. */
    private static final String TRIED = "(tried)";

    private static final String TRIED_PREFIX = "pistons." + TRIED + ".";

    private final Geometry book;
    private final PistonEntry first;
    private final Choice choice;
    private final LengthUnit unit;
    private final Map<String, Outcome> before;

    private record Outcome(String label, String unit, double value) {}

    Effects(Geometry book, PistonEntry first, Choice choice, LengthUnit unit) {
        this.book = book;
        this.first = first;
        this.choice = choice;
        this.unit = unit;
        this.before = outcomes(like(first));
    }

    /** A piston like one of the book's, standing as high, to be changed and tried. */
    PistonEntry like(PistonEntry piston) {
        String prefix = "pistons." + piston.id() + ".";
        PistonEntry own = piston.each(size -> size.renamed(size.path().replace(prefix, TRIED_PREFIX)));
        return new PistonEntry(
                TRIED,
                own.from(),
                own.note(),
                own.crown(),
                own.land(),
                own.compressionHeight(),
                Optional.of(CrownHeight.of(book, piston).as(TRIED_PREFIX + "protrusion")),
                own.groove(),
                own.crownThickness(),
                own.pockets());
    }

    PistonEntry first() {
        return like(first);
    }

    /** What a changed piston does, largest first. */
    List<Effect> of(PistonEntry changed) {
        Map<String, Outcome> after = outcomes(changed);
        List<Effect> effects = new ArrayList<>();
        before.forEach((key, was) -> {
            Outcome is = after.get(key);
            if (is != null && Math.abs(is.value() - was.value()) >= LEAST) {
                effects.add(new Effect(was.label(), was.unit(), was.value(), is.value(), sentence(was, is)));
            }
        });
        effects.sort(Comparator.comparingDouble((Effect effect) -> -Math.abs(effect.after() - effect.before())));
        return effects;
    }

    private Map<String, Outcome> outcomes(PistonEntry piston) {
        List<PistonEntry> pistons = new ArrayList<>(book.pistons());
        pistons.add(piston);
        Geometry with = new Geometry(
                book.engine(),
                book.instruments(),
                book.cylinder(),
                book.crank(),
                book.head(),
                book.gaskets(),
                book.cam(),
                book.valves(),
                pistons,
                book.wanted());
        QuickFit fit = QuickFit.of(
                with,
                new Choice(
                        Optional.of(piston.id()),
                        choice.gasketId(),
                        choice.teethMoved(),
                        choice.valveClearanceMm(),
                        choice.turned(),
                        Map.of()));
        Map<String, Outcome> outcomes = new LinkedHashMap<>();
        fit.gaps()
                .forEach(gap -> outcomes.put(
                        gap.kind() + gap.valves().toString(), new Outcome(gap.label(), "mm", gap.leastMm())));
        fit.figures().stream()
                .filter(figure ->
                        figure.key().equals("compressionRatio") || figure.key().startsWith("metalLeft"))
                .forEach(
                        figure -> outcomes.put(figure.key(), new Outcome(figure.label(), figure.unit(), figure.low())));
        return outcomes;
    }

    private String sentence(Outcome was, Outcome is) {
        String label = Sentence.capital(was.label());
        if (!was.unit().equals("mm")) {
            return label + ": " + String.format(Locale.ROOT, "%.2f", was.value()) + " becomes "
                    + String.format(Locale.ROOT, "%.2f", is.value()) + ".";
        }
        return label + ": " + unit.format(was.value()) + " becomes " + unit.format(is.value())
                + (was.value() >= 0 && is.value() < 0 ? ", which is metal through metal." : ".");
    }
}
