package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a fault costs: what has to come off to get at it, and what has to be done, bought and proved again. Taking off is taken as
 * half the work of putting on; common practice, no source.
 *
 * @param of the position, step or check that is to be got at; of a check, its suspects
 * @param off the steps that have to be undone, in the order in which they can be; none of them can be left out
 * @param again steps that fit nothing and were done on what comes off, such as a setting: to be done again
 * @param voidChecks checks that passed and are void by it
 * @param buy what is destroyed and has to be bought, without what is in hand already
 * @param minutesOff work of taking off
 * @param minutesBack work of putting back and proving again
 * @param back the steps and checks to be done again, in their order
 * @param sentences the same as sentences
 */
public record Undo(
        String of,
        List<Step> off,
        List<Step> again,
        List<String> voidChecks,
        List<Buy> buy,
        int minutesOff,
        int minutesBack,
        List<String> back,
        List<String> sentences) {
    public Undo {
        off = List.copyOf(off);
        again = List.copyOf(again);
        voidChecks = List.copyOf(voidChecks);
        buy = List.copyOf(buy);
        back = List.copyOf(back);
        sentences = List.copyOf(sentences);
    }

    /**
     * What it takes to get at a position, step or check of a build as it stands.
     *
     * @throws IllegalArgumentException if the book has no position, step or check of that id
     */
    public static Undo of(Build build, String id) {
        return new Undoing(build, id).undo();
    }

    /**
     * The entries that tell it when it is done, the outermost step first.
     *
     * @param why why, as the person says it; may be empty
     */
    public List<Fact.Undone> facts(String why) {
        List<String> wanted = buy.stream().map(Buy::position).toList();
        return Stream.concat(again.stream(), off.stream())
                .map(step -> new Fact.Undone(
                        step.id(),
                        why,
                        step.fits().stream().filter(wanted::contains).collect(Collectors.toList())))
                .toList();
    }
}
