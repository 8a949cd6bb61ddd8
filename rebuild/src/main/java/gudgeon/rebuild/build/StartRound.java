package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Fact.Undone;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StartSigned;
import java.util.List;
import java.util.Optional;

/**
 * What was said for the first start since something last came off the engine: what was said before that no longer counts.
 *
 * @param since number of the entry with which something last came off, 0 if nothing did
 * @param signed the signature, the last if there are several
 * @param begun number of the entry that began the first start, 0 where none did since
 */
public record StartRound(long since, Optional<Told<StartSigned>> signed, long begun) {
    /** The one that a build is in. */
    public static StartRound of(Build build) {
        long since = Math.max(last(build.told(Undone.class)), last(build.told(TakenOff.class)));
        Optional<Told<StartSigned>> signed = build.told(StartSigned.class, Proving.FIRST_START).stream()
                .filter(told -> told.number() > since)
                .reduce((one, later) -> later);
        long begun = step(build)
                .map(step -> build.step(step.id()))
                .filter(StepState::underHand)
                .map(StepState::begun)
                .filter(number -> number > since)
                .orElse(0L);
        return new StartRound(since, signed, begun);
    }

    /** The step that the book says is the first start. */
    public static Optional<Step> step(Build build) {
        return build.structure().step(build.book().commissioning().start().step());
    }

    /** What was last seen at a point of the list. */
    public Optional<Told<StartItemSeen>> seen(Build build, String item) {
        return build.told(StartItemSeen.class, Proving.FIRST_START).stream()
                .filter(told -> told.number() > since && told.fact().item().equals(item))
                .reduce((one, later) -> later);
    }

    private static long last(List<? extends Told<?>> told) {
        return told.isEmpty() ? 0 : told.get(told.size() - 1).number();
    }
}
