package gudgeon.rebuild.find;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Finding.HuntClosed;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.SuspectTaken;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.Trouble;
import java.util.List;
import java.util.Optional;

/**
 * One search for a fault, as the journal tells it: all that was felt and tried in it.
 *
 * @param id the search's name
 * @param opened how it was begun
 * @param felt where it went tight
 * @param tried the tests made
 * @param taken the suspect to be looked at, the last named
 * @param closed how it ended, once it did
 */
public record Hunt(
        String id,
        Told<HuntOpened> opened,
        List<Told<TightFelt>> felt,
        List<Told<Tried>> tried,
        Optional<Told<SuspectTaken>> taken,
        Optional<Told<HuntClosed>> closed) {
    public Hunt {
        felt = List.copyOf(felt);
        tried = List.copyOf(tried);
    }

    /** Every search of a build, in the order in which they were begun. */
    public static List<Hunt> all(Build build) {
        return build.told(HuntOpened.class).stream()
                .map(opened -> of(build, opened))
                .toList();
    }

    /** The search of that name; empty if none was begun. */
    public static Optional<Hunt> of(Build build, String id) {
        return build.told(HuntOpened.class, id).stream().findFirst().map(opened -> of(build, opened));
    }

    private static Hunt of(Build build, Told<HuntOpened> opened) {
        String id = opened.fact().hunt();
        return new Hunt(
                id,
                opened,
                build.told(TightFelt.class, id),
                build.told(Tried.class, id),
                last(build.told(SuspectTaken.class, id)),
                last(build.told(HuntClosed.class, id)));
    }

    private static <T> Optional<T> last(List<T> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /**
     * A build as this search looks at it: once it is over, as it was then, since what was put right does not speak against the suspect.
     */
    Build seenOf(Build build) {
        return closed.map(told ->
                        Build.of(build.book()).after(build.entries().subList(0, Math.toIntExact(told.number()))))
                .orElse(build);
    }

    /** What is wrong. */
    public Trouble trouble() {
        return opened.fact().trouble();
    }

    /** Whether it goes on. */
    public boolean isOpen() {
        return closed.isEmpty();
    }
}
