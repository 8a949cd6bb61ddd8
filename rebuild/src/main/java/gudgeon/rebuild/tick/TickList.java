package gudgeon.rebuild.tick;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.caution.MakerFirst;
import gudgeon.rebuild.measure.Sheet;
import gudgeon.rebuild.sheet.Act;
import gudgeon.rebuild.sheet.AssemblySheet;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import gudgeon.rebuild.start.StartItem;
import gudgeon.rebuild.start.StartList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A list to be printed and ticked by pen.
 *
 * @param title what it is
 * @param opening sentences before it
 * @param groups its lines, by what they are of; none is empty
 */
public record TickList(String title, List<String> opening, List<Group> groups) {
    public TickList {
        opening = List.copyOf(opening);
        groups = List.copyOf(groups);
    }

    /**
     * Lines under one heading.
     *
     * @param heading may be empty
     */
    public record Group(String heading, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line.
     *
     * @param done whether it is done already, so that its box comes out ticked
     * @param stop whether work stops here until it is done
     * @param words what it is
     * @param more what there is to know of it, sentences
     * @param cautions what can hurt, sentences
     * @param blanks how many fields to write a reading into
     */
    public record Line(boolean done, boolean stop, String words, List<String> more, List<String> cautions, int blanks) {
        public Line {
            more = List.copyOf(more);
            cautions = List.copyOf(cautions);
        }
    }

    /** The lists there are. */
    public enum Kind {
        STEPS("steps", "Steps and checks"),
        MEASURING("measuring", "Measuring sheet"),
        ORDER("order", "To order"),
        FIRST_START("first-start", "Before the first start");

        private final String word;
        private final String title;

        Kind(String word, String title) {
            this.word = word;
            this.title = title;
        }

        /** Its name in addresses and on the command line. */
        public String word() {
            return word;
        }

        /** Its title. */
        public String title() {
            return title;
        }

        /** The one of that name. */
        public static Optional<Kind> of(String word) {
            return Stream.of(values()).filter(kind -> kind.word.equals(word)).findFirst();
        }
    }

    /**
     * A list of a build.
     *
     * @param today the day by which an order is late
     */
    public static TickList of(Kind kind, Build build, LocalDate today) {
        return switch (kind) {
            case STEPS -> steps(build);
            case MEASURING -> measuring(build);
            case ORDER -> order(PartsList.of(build, today));
            case FIRST_START -> firstStart(build);
        };
    }

    private static TickList steps(Build build) {
        AssemblySheet sheet = AssemblySheet.of(build.book());
        List<Line> lines = sheet.acts().stream().map(act -> line(build, act)).toList();
        return list(Kind.STEPS, sheet.opening(), List.of(new Group("", lines)));
    }

    private static Line line(Build build, Act act) {
        boolean step = act.kind() == Act.Kind.STEP;
        boolean done =
                step ? build.step(act.id()).stands() : build.check(act.id()).status() == CheckState.Status.PASSED;
        List<String> more = act.passages().stream()
                .map(passage -> passage.heading() + ": " + String.join(" ", passage.lines()))
                .toList();
        return new Line(
                done,
                act.kind() == Act.Kind.HOLD_POINT,
                act.number() + ". " + act.name()
                        + (step ? "" : " (" + act.kind().words() + ")"),
                more,
                act.cautions(),
                0);
    }

    private static TickList measuring(Build build) {
        Map<String, List<Line>> byPart = new LinkedHashMap<>();
        for (Sheet.Row row : Sheet.of(build).rows()) {
            byPart.computeIfAbsent(build.structure().name(row.dimension().of()), part -> new ArrayList<>())
                    .add(line(row));
        }
        return list(
                Kind.MEASURING,
                List.of("Part, gauge and standard of one warmth. Three readings each; write down with what."),
                byPart.entrySet().stream()
                        .map(part -> new Group(part.getKey(), part.getValue()))
                        .toList());
    }

    private static Line line(Sheet.Row row) {
        Dimension dimension = row.dimension();
        List<String> more = Stream.of(
                        row.where(),
                        dimension
                                .expect()
                                .map(span -> "allowed " + span.words())
                                .orElse(""),
                        dimension
                                .standard()
                                .map(Expect::words)
                                .map(span -> "new " + span)
                                .orElse(""),
                        dimension.with().isEmpty() ? "" : "with " + dimension.with())
                .filter(text -> !text.isEmpty())
                .toList();
        return new Line(
                !row.isMissing(),
                false,
                dimension.name() + ", " + dimension.unit().symbol(),
                List.of(String.join("; ", more)),
                List.of(),
                3);
    }

    private static TickList order(PartsList parts) {
        List<Line> open = parts.toOrder().stream().map(TickList::line).toList();
        List<Line> coming = parts.lines().stream()
                .filter(line -> line.ordered() > 0)
                .map(line -> new Line(false, false, line.ordered() + " × " + line.name(), List.of(), List.of(), 0))
                .toList();
        return list(
                Kind.ORDER,
                List.of(parts.sentence()),
                List.of(new Group("To order", open), new Group("On its way", coming)));
    }

    private static Line line(PartsLine line) {
        List<String> offers = line.offers().stream()
                .map(offer -> "offered" + (offer.from().isEmpty() ? "" : " by " + offer.from())
                        + offer.price().map(price -> ", " + price.words()).orElse(""))
                .toList();
        return new Line(
                false,
                false,
                line.toOrder() + " × " + line.name(),
                Stream.concat(Stream.of(line.sentence()), offers.stream()).toList(),
                List.of(),
                0);
    }

    private static TickList firstStart(Build build) {
        StartList start = StartList.of(build, Alarms.of(build));
        List<String> opening = new ArrayList<>(List.of(start.sentence()));
        opening.addAll(MakerFirst.sentences());
        List<Group> groups = Stream.of(StartItem.Kind.values())
                .map(kind -> new Group(
                        kind.words(),
                        start.of(kind).stream().map(TickList::line).toList()))
                .toList();
        return list(Kind.FIRST_START, opening, groups);
    }

    private static Line line(StartItem item) {
        return new Line(
                item.standing() == StartItem.Standing.GOOD,
                item.stops(),
                item.name()
                        + (item.standing().isOpen()
                                ? ""
                                : " (" + item.standing().words() + ")"),
                List.of(item.sentence()),
                item.cautions(),
                0);
    }

    private static TickList list(Kind kind, List<String> opening, List<Group> groups) {
        return new TickList(
                kind.title(),
                opening,
                groups.stream().filter(group -> !group.lines().isEmpty()).toList());
    }
}
