package gudgeon.rebuild.lesson;

import java.util.List;

/** Something that a build taught, with the entries that it rests on. */
public sealed interface Taught permits Lesson, Withheld {
    /** What it is about, as a fitter says it. */
    String what();

    /** Why it is offered, or why it is not: sentences. */
    String why();

    /** Numbers of the entries that it rests on, in order. */
    List<Long> entries();
}
