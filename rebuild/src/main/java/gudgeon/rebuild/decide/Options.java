package gudgeon.rebuild.decide;

import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Laid;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.source.Sum;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The ways to go on that were drawn, side by side with the engine as its parts are now. A pure function of the build.
 *
 * @param rpm the speed of the crank, in turns a minute, at which the pistons' mean speed is given
 * @param now the engine as its parts are now
 * @param options the options, in the order in which they were drawn
 */
public record Options(double rpm, Outcome now, List<Outcome> options) {
    /** A speed to compare at where none was said; it is no limit of any engine. */
    public static final double USUAL_RPM = 5000;

    private static final double FASTEST_RPM = 30_000;

    public Options {
        options = List.copyOf(options);
    }

    /**
     * One line of the table: a figure of all outcomes.
     *
     * @param key the figure's key
     * @param label what a fitter calls it
     * @param cells the figure now and with each option; empty where it is not known
     */
    public record Row(String key, String label, List<Optional<OptionFigure>> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * The options of a build.
     *
     * @param rpm above 0, at most 30,000
     * @param trials remembers the trial fits from one asking to the next
     * @throws IllegalArgumentException if it is not
     */
    public static Options of(Build build, double rpm, Trials trials) {
        if (!isSpeed(rpm)) {
            throw new IllegalArgumentException("a speed is above 0 and at most 30000 turns a minute, got " + rpm);
        }
        Optional<FiguresOf.Answer> before = AsMeasured.of(build).map(parts -> FiguresOf.of(parts, trials, rpm));
        List<Outcome> outcomes = new ArrayList<>();
        for (Option option : Option.of(build)) {
            outcomes.add(outcome(build, option, before, figures -> FiguresOf.of(figures, trials, rpm)));
        }
        return new Options(rpm, asItIs(before), outcomes);
    }

    /** Whether a number can be the speed of a crank, in turns a minute. */
    public static boolean isSpeed(double rpm) {
        return rpm > 0 && rpm <= FASTEST_RPM;
    }

    private static Outcome asItIs(Optional<FiguresOf.Answer> figures) {
        return new Outcome(
                Optional.empty(),
                "as it is",
                List.of(),
                new Bill(Sum.NOTHING, Sum.NOTHING, List.of()),
                new LeadTime(Optional.empty(), List.of()),
                figures.map(FiguresOf.Answer::figures).orElse(List.of()),
                List.of(),
                List.of(),
                figures.map(FiguresOf.Answer::sentences).orElse(List.of()));
    }

    private static Outcome outcome(
            Build build,
            Option option,
            Optional<FiguresOf.Answer> before,
            Function<AsMeasured, FiguresOf.Answer> trial) {
        List<OptionLine> lines = option.lines();
        Applied applied = new Applied(build, lines);
        OptionParts standing = new OptionParts(build);
        List<OptionPart> parts = lines.stream().map(standing::part).toList();
        Optional<AsMeasured> made = applied.figures();
        Optional<FiguresOf.Answer> after = made.map(trial);
        List<String> cautions = new OptionCautions(build.structure(), lines)
                .all(before.orElse(FiguresOf.Answer.NONE), after.orElse(FiguresOf.Answer.NONE));
        return new Outcome(
                Optional.of(option),
                option.name(),
                parts,
                standing.bill(parts),
                new LeadTimes(build.structure(), lines, standing::isInHand).leadTime(),
                after.map(FiguresOf.Answer::figures).orElse(List.of()),
                new Mates(build, applied).all(),
                cautions,
                notes(parts, made, after));
    }

    private static List<String> notes(
            List<OptionPart> parts, Optional<AsMeasured> made, Optional<FiguresOf.Answer> after) {
        List<String> notes = new ArrayList<>();
        parts.forEach(part -> part.fault().ifPresent(notes::add));
        made.ifPresent(figures -> {
            figures.unread().forEach(size -> notes.add(size.sentence()));
            figures.laid().stream().filter(Applied::isByOption).forEach(laid -> known(laid, notes));
        });
        after.ifPresent(figures -> notes.addAll(figures.sentences()));
        if (made.isEmpty()) {
            notes.add("The engine book has no figures of the engine, so capacity, compression and gaps can't be told.");
        }
        return notes;
    }

    /** A part that is only partly known is tried with sizes of another. */
    private static void known(Laid laid, List<String> notes) {
        int said = laid.measured().size();
        int all = said + laid.booked().size();
        if (said < all) {
            notes.add("Of the " + laid.position().name() + " this option says " + said + " of " + all
                    + " sizes. The others are taken from the book: what is tried with them is not proven of the real part before it"
                    + " is measured.");
        }
    }

    /** The figures of all outcomes, line by line. */
    public List<Row> rows() {
        Map<String, String> labels = new LinkedHashMap<>();
        all().forEach(outcome -> outcome.figures().forEach(figure -> labels.putIfAbsent(figure.key(), figure.label())));
        return labels.entrySet().stream()
                .map(each -> new Row(
                        each.getKey(),
                        each.getValue(),
                        all().stream()
                                .map(outcome -> outcome.figure(each.getKey()))
                                .toList()))
                .toList();
    }

    /** The engine as it is, and then each option. */
    public List<Outcome> all() {
        List<Outcome> all = new ArrayList<>();
        all.add(now);
        all.addAll(options);
        return all;
    }

    /** What the comparison takes for granted; sentences. */
    public static List<String> assumptions() {
        return List.of(
                "Days count from the day on which all of an option is ordered. Parts come side by side; a machinist who works to"
                        + " the size of a new part begins when that part is in hand.",
                "A new part has the sizes that are written for it, else those of the family's engine, else those of the book. A"
                        + " part that is worked on keeps its other sizes.",
                "Prices are added up as written, each currency by itself. Postage is not in them.",
                "Gaps and ratios are those of the trial fit, with doubts of about 95 %.");
    }
}
