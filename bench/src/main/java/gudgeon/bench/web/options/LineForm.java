package gudgeon.bench.web.options;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.FamilyMember;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Option;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import java.util.List;
import java.util.Optional;

/**
 * What the form for one line of an option shows.
 *
 * @param option the option
 * @param position the position that the line is about
 * @param told the line as it was told last, if it was
 * @param dimensions the sizes that its part has and that are read
 * @param family the engines of the family that have a part for it
 */
public record LineForm(
        Option option,
        Position position,
        Optional<OptionLine> told,
        List<Dimension> dimensions,
        List<FamilyMember> family) {
    public LineForm {
        dimensions = List.copyOf(dimensions);
        family = List.copyOf(family);
    }

    static Optional<LineForm> of(Build build, Option option, String id) {
        return build.structure()
                .position(id)
                .map(position -> new LineForm(
                        option,
                        position,
                        option.lines().stream()
                                .filter(line -> line.position().equals(id))
                                .findFirst(),
                        build.structure().dimensionsOf(id).stream()
                                .filter(Dimension::isRead)
                                .toList(),
                        build.structure().family().stream()
                                .filter(member -> member.parts().containsKey(id))
                                .toList()));
    }

    /** A size as it was told last, as written; empty if none was. */
    public String size(Dimension dimension) {
        return told.map(line -> line.sizes().getOrDefault(dimension.id(), "")).orElse("");
    }
}
