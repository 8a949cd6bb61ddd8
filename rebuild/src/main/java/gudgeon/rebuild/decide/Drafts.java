package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.FamilyMember;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.valvework.SeatWays;
import gudgeon.rebuild.valvework.ValveSeat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Options that the book and the verdicts suggest: each oversize that a part is made in, the parts of each engine of the family, for
 * a part that is not kept its repair, a used one and a new one, and for a valve seat that needs work what can be done with it. One that is drawn already is left out.
 */
public final class Drafts {
    private static final Set<Disposition> NOT_KEPT = Set.of(Disposition.REPAIR, Disposition.REPLACE);

    private final Structure structure;

    private Drafts(Structure structure) {
        this.structure = structure;
    }

    /** The drafts for a build. */
    public static List<Draft> of(Build build) {
        Drafts drafts = new Drafts(build.structure());
        Set<String> drawn = Option.of(build).stream().map(Option::id).collect(Collectors.toSet());
        List<Draft> all = new ArrayList<>();
        build.structure().positions().forEach(position -> all.addAll(drafts.oversizes(position)));
        build.structure().family().forEach(member -> all.add(drafts.family(member)));
        Dispositions.of(build).forEach(proposal -> all.addAll(instead(proposal)));
        ValveSeat.all(build).stream().filter(ValveSeat::needsWork).forEach(seat -> all.addAll(seats(build, seat)));
        return all.stream()
                .filter(draft ->
                        !drawn.contains(draft.option()) && !draft.lines().isEmpty())
                .toList();
    }

    private static List<Draft> seats(Build build, ValveSeat seat) {
        return SeatWays.of(build, seat).stream()
                .map(way -> new Draft(
                        way.drawn().option(), way.drawn().name(), way.drawn().why(), way.lines()))
                .toList();
    }

    private List<Draft> oversizes(Position position) {
        return position.oversizes().stream()
                .map(over -> oversize(position, over))
                .toList();
    }

    private Draft oversize(Position position, double over) {
        String option = position.id() + String.format(Locale.ROOT, " +%.2f", over);
        String by = String.format(Locale.ROOT, "%.2f mm over standard", over);
        List<OptionLine> lines = new ArrayList<>();
        Optional<Derivation> clearance = clearanceOf(position);
        Optional<Dimension> hole =
                clearance.flatMap(derived -> structure.dimension(derived.of().get(0)));
        Optional<Dimension> shaft =
                clearance.flatMap(derived -> structure.dimension(derived.of().get(1)));
        lines.add(line(option, position.id(), by, Optional.of(Origin.PATTERN), larger(shaft, over)));
        hole.ifPresent(bore -> lines.add(
                line(option, bore.of(), "bored and honed to it", Optional.empty(), larger(Optional.of(bore), over))));
        return new Draft(
                option,
                "Oversize " + position.name() + ", " + by,
                "The book has this oversize. Sizes are those of a new part and the oversize; measure the part when it is in hand.",
                lines);
    }

    /** The clearance in which a position's part is the one that runs inside. */
    private Optional<Derivation> clearanceOf(Position inner) {
        return structure.dimensions().stream()
                .flatMap(dimension -> dimension.derived().stream())
                .filter(derived -> derived.as() == Derivation.As.CLEARANCE)
                .filter(derived -> structure.dimension(derived.of().get(1)).stream()
                        .anyMatch(shaft -> shaft.of().equals(inner.id())))
                .filter(derived -> structure.dimension(derived.of().get(0)).stream()
                        .noneMatch(hole -> hole.of().equals(inner.id())))
                .findFirst();
    }

    private static Map<String, String> larger(Optional<Dimension> dimension, double over) {
        Optional<Expect> standard = dimension
                .flatMap(Dimension::standard)
                .filter(range -> range.atLeast().isPresent() && range.atMost().isPresent());
        return standard.map(range -> Map.of(
                        dimension.orElseThrow().id(),
                        String.format(
                                Locale.ROOT,
                                "%.3f %s",
                                (range.atLeast().orElseThrow() + range.atMost().orElseThrow()) / 2 + over,
                                range.unit().symbol())))
                .orElse(Map.of());
    }

    private Draft family(FamilyMember member) {
        List<OptionLine> lines = structure.positions().stream()
                .filter(position -> member.parts().containsKey(position.id()))
                .map(position -> new OptionLine(
                        member.id(),
                        position.id(),
                        "",
                        Optional.of(position.singleUse() ? Origin.ORIGINAL : Origin.USED),
                        member.id(),
                        "",
                        Optional.empty(),
                        Map.of()))
                .toList();
        return new Draft(
                member.id(), "Parts of the " + member.name(), "The book knows these parts of this engine.", lines);
    }

    /** The three ways for a part that is not kept because of what it measures or of what was seen. */
    private static List<Draft> instead(Proposal proposal) {
        Position position = proposal.position();
        boolean asked = position.critical()
                && !position.singleUse()
                && proposal.disposition().filter(NOT_KEPT::contains).isPresent();
        if (!asked) {
            return List.of();
        }
        String why = proposal.reasons().stream().findFirst().orElse("");
        return Stream.of(
                        new Draft(
                                "repair " + position.id(),
                                "Have the " + position.name() + " repaired",
                                why,
                                List.of(line(
                                        "repair " + position.id(),
                                        position.id(),
                                        "repaired",
                                        Optional.empty(),
                                        Map.of()))),
                        another("used", Origin.USED, position, why),
                        another("new", Origin.ORIGINAL, position, why))
                .toList();
    }

    private static Draft another(String word, Origin origin, Position position, String why) {
        String option = word + " " + position.id();
        return new Draft(
                option,
                "Another " + position.name() + ", " + origin.words(),
                why,
                List.of(line(option, position.id(), "", Optional.of(origin), Map.of())));
    }

    private static OptionLine line(
            String option, String position, String what, Optional<Origin> origin, Map<String, String> sizes) {
        return new OptionLine(option, position, what, origin, "", "", Optional.empty(), sizes);
    }
}
