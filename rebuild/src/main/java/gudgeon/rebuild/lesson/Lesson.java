package gudgeon.rebuild.lesson;

import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Handing.LessonDecided;
import java.util.List;
import java.util.Optional;

/**
 * Something that a build taught about its type of engine, offered to the engine book.
 *
 * @param id its name, which stays the same as the journal goes on: what kind it is and the ids it is about, with dots between
 * @param what what the book would say, a sentence
 * @param why what it rests on, sentences
 * @param entries numbers of the entries that it rests on, in order
 * @param amendments what changes in the book's text
 * @param decided what was decided of it since the last of those entries; what is learned anew is asked anew
 */
public record Lesson(
        String id,
        String what,
        String why,
        List<Long> entries,
        List<Amendment> amendments,
        Optional<Told<LessonDecided>> decided)
        implements Taught {
    public Lesson {
        entries = List.copyOf(entries);
        amendments = List.copyOf(amendments);
    }

    /** One of which nothing was decided. */
    Lesson(String id, String what, String why, List<Long> entries, Amendment... amendments) {
        this(id, what, why, entries, List.of(amendments), Optional.empty());
    }

    Lesson after(List<Told<LessonDecided>> decisions) {
        long last = entries.stream().mapToLong(Long::longValue).max().orElse(0);
        return new Lesson(
                id,
                what,
                why,
                entries,
                amendments,
                decisions.stream().filter(told -> told.number() > last).reduce((earlier, later) -> later));
    }

    /** Whether it goes into the book. */
    public boolean isAccepted() {
        return decided.map(told -> told.fact().accepted()).orElse(false);
    }
}
