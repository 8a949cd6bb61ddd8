package gudgeon.rebuild.lesson;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Handing.LessonDecided;
import gudgeon.rebuild.sentence.Amount;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a build can hand on to the next of its type.
 *
 * @param lessons what is offered to the engine book, each once
 * @param withheld what is not, and why
 */
public record NextTime(List<Lesson> lessons, List<Withheld> withheld) {
    public NextTime {
        lessons = List.copyOf(lessons);
        withheld = List.copyOf(withheld);
    }

    /** What a build taught so far. What its book says already is not offered. */
    public static NextTime of(Build build) {
        List<Taught> taught = Stream.of(
                        new HoleLessons(build).taught(),
                        new MapLessons(build).taught(),
                        new WorkLessons(build).taught(),
                        new FaultLessons(build).taught(),
                        new SizeLessons(build).taught())
                .flatMap(List::stream)
                .toList();
        return new NextTime(
                taught.stream()
                        .flatMap(one -> one instanceof Lesson lesson ? Stream.of(lesson) : Stream.empty())
                        .map(lesson -> lesson.after(build.told(LessonDecided.class, lesson.id())))
                        .toList(),
                taught.stream()
                        .flatMap(one -> one instanceof Withheld kept ? Stream.of(kept) : Stream.empty())
                        .toList());
    }

    /** Those that go into the book. */
    public List<Lesson> accepted() {
        return lessons.stream().filter(Lesson::isAccepted).toList();
    }

    /** Those of which nothing was decided. */
    public List<Lesson> open() {
        return lessons.stream().filter(lesson -> lesson.decided().isEmpty()).toList();
    }

    /** How it stands, a sentence. */
    public String sentence() {
        if (lessons.isEmpty()) {
            return "This build has nothing yet that its engine book does not say.";
        }
        int in = accepted().size();
        int open = open().size();
        return Amount.of(lessons.size(), "lesson") + ": " + in + " accepted, " + (lessons.size() - in - open)
                + " left out, " + open + " not decided.";
    }
}
