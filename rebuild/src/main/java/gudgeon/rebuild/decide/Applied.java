package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Remeasured;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Laid;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A build as an option would make it, as if all of it were in hand. A part that is worked on keeps its other sizes; a new one has
 * those of the book where nothing is said of them.
 */
final class Applied {
    private static final String BY_OPTION = "by option ";

    private final Build build;
    private final Map<String, OptionLine> lines = new LinkedHashMap<>();

    Applied(Build build, List<OptionLine> lines) {
        this.build = build;
        lines.forEach(line -> this.lines.put(line.position(), line));
    }

    /** The engine's figures with the option; empty where the book has none. */
    Optional<AsMeasured> figures() {
        List<Fact> facts = new ArrayList<>();
        lines.values().stream().filter(Applied::isNew).forEach(line -> facts.addAll(newPart(line)));
        return AsMeasured.of(build.asIf(facts)).map(this::workedOn);
    }

    /** Whether another part takes the place of the one that is there, which else is worked on. */
    static boolean isNew(OptionLine line) {
        return line.origin().isPresent() || !line.family().isEmpty();
    }

    /** Whether a part is one that is there only by an option. */
    static boolean isByOption(Laid laid) {
        return laid.part().startsWith(BY_OPTION);
    }

    /** What the option does at a position, if anything. */
    Optional<OptionLine> line(String position) {
        return Optional.ofNullable(lines.get(position));
    }

    /** The size that a dimension has by the option, as written: as its line says, else as the family's part has it. */
    Optional<String> size(Dimension dimension) {
        return line(dimension.of())
                .flatMap(line -> Optional.ofNullable(sizes(line).get(dimension.id())));
    }

    private Map<String, String> sizes(OptionLine line) {
        Map<String, String> sizes = new LinkedHashMap<>();
        build.structure()
                .member(line.family())
                .ifPresent(member -> member.part(line.position())
                        .forEach((dimension, size) -> sizes.put(dimension, size.written())));
        sizes.putAll(line.sizes());
        return sizes;
    }

    /** The sizes of a line by the keys of the book's figures. */
    private Map<String, String> keyed(OptionLine line) {
        Map<String, String> keyed = new LinkedHashMap<>();
        sizes(line)
                .forEach((id, size) -> build.structure()
                        .dimension(id)
                        .filter(dimension -> !dimension.key().isEmpty())
                        .ifPresent(dimension -> keyed.put(dimension.key(), size)));
        return keyed;
    }

    private List<Fact> newPart(OptionLine line) {
        String name = BY_OPTION + line.option();
        String position = line.position();
        int count = build.structure().position(position).map(Position::quantity).orElse(1);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact.PartEntered(
                name, position, line.origin().orElse(Origin.USED), count, line.family(), line.price(), line.what()));
        if (!keyed(line).isEmpty()) {
            facts.add(new Fact.Measured(position, name, keyed(line)));
        }
        Place place = build.place(position);
        if (place.fitted() > 0 && !place.isOut()) {
            // what is in its place counts before what lies beside it
            facts.add(new Fact.Fitted(position, name, count, place.way(), ""));
        }
        return facts;
    }

    private AsMeasured workedOn(AsMeasured with) {
        Map<String, String> changed = new LinkedHashMap<>();
        lines.values().stream()
                .filter(line -> !isNew(line))
                .forEach(line -> build.structure()
                        .position(line.position())
                        .ifPresent(position ->
                                keyed(line).forEach((key, size) -> changed.put(prefix(position, with) + key, size))));
        Geometry geometry = with.geometry()
                .each(size -> Optional.ofNullable(changed.get(size.path()))
                        .map(text -> read(size, text, with.geometry()))
                        .orElse(size));
        return new AsMeasured(geometry, with.choice(), with.laid(), with.unread());
    }

    /** Where the figures of a position's part begin. */
    static String prefix(Position position, AsMeasured with) {
        Choice choice = with.choice();
        Geometry figures = with.geometry();
        return switch (position.sizes()) {
            case "pistons" ->
                "pistons." + choice.pistonId().orElse(figures.pistons().get(0).id()) + ".";
            case "gaskets" ->
                "gaskets." + choice.gasketId().orElse(figures.gaskets().get(0).id()) + ".";
            default -> position.sizes() + ".";
        };
    }

    private static Size read(Size size, String text, Geometry figures) {
        return Remeasured.of(size, text, figures.instruments()) instanceof Remeasured.Read read ? read.size() : size;
    }
}
