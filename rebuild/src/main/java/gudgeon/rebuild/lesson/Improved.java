package gudgeon.rebuild.lesson;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * An engine book with lessons written in.
 *
 * @param text its text
 * @param usable whether it can be read without a grave fault
 * @param faults what it is told that the book before was not
 */
public record Improved(String text, boolean usable, List<Fault> faults) {
    public Improved {
        faults = List.copyOf(faults);
    }

    /**
     * A book with those lessons.
     *
     * @param book the text of a book that can be used
     */
    public static Improved of(String book, Collection<Lesson> lessons) {
        String text = Manuscript.of(book)
                .with(lessons.stream()
                        .flatMap(lesson -> lesson.amendments().stream())
                        .toList())
                .text();
        BookReading reading = new EngineBookReader().read(text);
        return new Improved(
                text,
                reading instanceof BookReading.Read,
                fresh(new EngineBookReader().read(book).faults(), reading.faults()));
    }

    /** The faults that were not there before; the lines of those that were may have moved. */
    private static List<Fault> fresh(List<Fault> before, List<Fault> now) {
        List<String> known = new ArrayList<>(before.stream().map(Improved::said).toList());
        return now.stream().filter(fault -> !known.remove(said(fault))).toList();
    }

    private static String said(Fault fault) {
        return fault.path() + "\n" + fault.what() + "\n" + fault.severity();
    }
}
