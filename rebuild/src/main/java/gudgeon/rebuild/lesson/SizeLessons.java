package gudgeon.rebuild.lesson;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Measuring.Stocked;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sizes: of a new part of the maker's where the book has no range for it. All others are of one part and no other. */
final class SizeLessons {
    private final Build build;
    private final List<Taught> taught = new ArrayList<>();

    SizeLessons(Build build) {
        this.build = build;
    }

    List<Taught> taught() {
        List<Told<ReadingTaken>> own = new ArrayList<>();
        for (Dimension dimension : build.structure().dimensions()) {
            List<Told<ReadingTaken>> fresh = new ArrayList<>();
            build.told(ReadingTaken.class, dimension.of()).stream()
                    .filter(told -> told.fact().dimension().equals(dimension.id()))
                    .forEach(told -> (isNew(dimension, told.fact()) ? fresh : own).add(told));
            if (!fresh.isEmpty() && dimension.standard().isEmpty()) {
                ofNewPart(dimension, fresh);
            }
        }
        if (!own.isEmpty()) {
            taught.add(new Withheld(
                    Amount.of(own.size(), "reading") + " of worn, used, pattern and made parts",
                    "What one part wore down to, or was made to, is true of that part and not of the type.",
                    numbers(own)));
        }
        ofParts();
        return taught;
    }

    private boolean isNew(Dimension dimension, ReadingTaken reading) {
        return !reading.part().isEmpty()
                && build.part(dimension.of(), reading.part())
                        .flatMap(Part::origin)
                        .filter(origin -> origin == Origin.ORIGINAL)
                        .isPresent();
    }

    /** A part measured is no range of the maker's, so it goes into the note and sets no limit. */
    private void ofNewPart(Dimension dimension, List<Told<ReadingTaken>> readings) {
        String said = "New original part measured "
                + readings.stream()
                        .map(told -> told.fact().value())
                        .distinct()
                        .limit(6)
                        .collect(Collectors.joining("; "))
                + ".";
        taught.add(
                dimension.note().isEmpty()
                        ? new Lesson(
                                "new." + dimension.id(),
                                dimension.name() + ": " + said,
                                "The book has no range for a new one. A part measured is noted, and sets no limit.",
                                numbers(readings),
                                new Amendment.Put(List.of("dimensions", dimension.id(), "note"), Written.text(said)))
                        : new Withheld(
                                dimension.name() + ": " + said,
                                "The book has a note there already. Write it in by hand if it is worth it.",
                                numbers(readings)));
    }

    private void ofParts() {
        Map<String, List<Told<Measured>>> byPart = new LinkedHashMap<>();
        build.told(Measured.class)
                .forEach(told -> byPart.computeIfAbsent(part(told.fact()), part -> new ArrayList<>())
                        .add(told));
        byPart.forEach((part, told) -> taught.add(new Withheld(
                "Sizes of the " + part,
                "They are that part's own, and already count in this build's fit.",
                numbers(told))));
        List<Told<Stocked>> shims = build.told(Stocked.class);
        if (!shims.isEmpty()) {
            taught.add(new Withheld(
                    "Shims",
                    "They make up for the sizes of this engine; the next has its end float measured and its own shims.",
                    numbers(shims)));
        }
    }

    private String part(Measured measured) {
        String name = build.structure().name(measured.position());
        return measured.part().isEmpty() ? name + " that came off" : name + " '" + measured.part() + "'";
    }

    private static List<Long> numbers(List<? extends Told<?>> told) {
        return told.stream().flatMap(one -> Stream.of(one.number())).sorted().toList();
    }
}
