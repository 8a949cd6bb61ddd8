package gudgeon.rebuild.start;

import gudgeon.rebuild.book.Commissioning;
import gudgeon.rebuild.book.Fluid;
import gudgeon.rebuild.book.StartPoint;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StartRound;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.start.StartItem.Kind;
import gudgeon.rebuild.start.StartItem.Standing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The fluids and points that no check of the book proves, so that they are ticked. */
final class PointsToSee {
    private final Build build;
    private final StartRound round;
    private final Commissioning commissioning;

    PointsToSee(Build build, StartRound round) {
        this.build = build;
        this.round = round;
        this.commissioning = build.book().commissioning();
    }

    List<StartItem> items() {
        return Stream.concat(
                        commissioning.fluids().stream()
                                .filter(fluid -> fluid.provedBy().isEmpty())
                                .map(fluid -> item(Kind.FLUID, fluid.id(), named(fluid), look(fluid))),
                        Stream.of(StartPoint.values())
                                .filter(point ->
                                        commissioning.start().proving(point).isEmpty())
                                .filter(point ->
                                        !commissioning.start().without().contains(point))
                                .map(point -> item(Kind.POINT, point.word(), point.what(), point.look())))
                .toList();
    }

    private StartItem item(Kind kind, String id, String name, String look) {
        Optional<Told<StartItemSeen>> seen = round.seen(build, id);
        Standing standing = seen.map(told -> told.fact().good() ? Standing.GOOD : Standing.NOT_GOOD)
                .orElse(Standing.OPEN);
        String remark = seen.map(told -> told.fact().remark())
                .filter(text -> !text.isEmpty())
                .map(text -> " " + Sentence.of(text))
                .orElse("");
        return new StartItem(
                kind,
                id,
                name,
                look + remark,
                standing,
                true,
                seen.map(told -> List.of(told.number())).orElse(List.of()),
                List.of());
    }

    /** A fluid with how much of it. */
    static String named(Fluid fluid) {
        return Sentence.capital(fluid.name()) + (fluid.amount().isEmpty() ? "" : ", " + fluid.amount());
    }

    private static String look(Fluid fluid) {
        String kind = fluid.grade().isEmpty() ? "Which kind the maker says." : Sentence.of(fluid.grade());
        return kind
                + (fluid.at().isEmpty() ? "" : " " + Sentence.of(fluid.at()))
                + (fluid.note().isEmpty() ? "" : " " + Sentence.of(fluid.note()));
    }
}
