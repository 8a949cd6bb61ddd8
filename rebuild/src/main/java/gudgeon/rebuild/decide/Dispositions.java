package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.decide.Proposal.Decision;
import gudgeon.rebuild.journal.Fact.Disposed;
import java.util.List;
import java.util.Optional;

/** What is proposed for each part that is off, from what was measured, seen and done: a pure function of the build. */
public final class Dispositions {
    private Dispositions() {}

    /** A proposal for each position whose part is known and not in its place, in the book's order. */
    public static List<Proposal> of(Build build) {
        Judgement judgement = new Judgement(build);
        return build.structure().positions().stream()
                .filter(position -> !build.place(position.id()).isFilled())
                .flatMap(position -> build.partFor(position.id()).stream()
                        .map(part -> proposal(build, position, part, judgement.of(position, part))))
                .toList();
    }

    /** The proposal for one position; empty where its part is in its place or not known. */
    public static Optional<Proposal> of(Build build, String position) {
        return of(build).stream()
                .filter(proposal -> proposal.position().id().equals(position))
                .findFirst();
    }

    private static Proposal proposal(Build build, Position position, Part part, Judgement.Answer answer) {
        return new Proposal(
                position,
                part.name(),
                answer.disposition(),
                answer.what(),
                answer.reasons(),
                decided(build, position.id(), part.name()));
    }

    private static Optional<Decision> decided(Build build, String position, String part) {
        return build.told(Disposed.class, position).stream()
                .filter(told -> told.fact().part().equals(part))
                .reduce((first, last) -> last)
                .map(Dispositions::decision);
    }

    private static Decision decision(Told<Disposed> told) {
        return new Decision(told.fact().disposition(), told.fact().why(), told.number());
    }
}
