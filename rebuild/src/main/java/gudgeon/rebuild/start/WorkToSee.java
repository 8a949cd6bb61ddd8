package gudgeon.rebuild.start;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.start.StartItem.Kind;
import gudgeon.rebuild.start.StartItem.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Steps not done, places that are empty though their step is done, and parts of which something was not said. */
final class WorkToSee {
    private final Build build;
    private final BeforeStart before;

    WorkToSee(Build build, BeforeStart before) {
        this.build = build;
        this.before = before;
    }

    List<StartItem> items() {
        List<StartItem> items = new ArrayList<>();
        before.steps().forEach(step -> {
            if (build.step(step.id()).stands()) {
                build.unfilled(step).forEach(position -> items.add(empty(position)));
            } else {
                items.add(notDone(step));
            }
        });
        build.structure().positions().stream().flatMap(this::unsaid).forEach(items::add);
        return items;
    }

    private StartItem notDone(Step step) {
        List<String> missing = build.unfilled(step).stream().map(Position::name).toList();
        return new StartItem(
                Kind.STEP,
                step.id(),
                step.name(),
                missing.isEmpty()
                        ? "The step is not done."
                        : "The step is not done. Not in: " + Sentence.list(missing) + ".",
                Standing.OPEN,
                true,
                entry(build.step(step.id()).begun()),
                step.cautions());
    }

    private StartItem empty(Position position) {
        Place place = build.place(position.id());
        return new StartItem(
                Kind.PLACE,
                position.id(),
                Sentence.capital(position.name()),
                place.status() == Place.Status.PARTLY_IN
                        ? "Only " + place.count() + " of " + position.quantity() + " are in."
                        : position.quantity() > 1
                                ? "None of " + position.quantity() + " is in."
                                : "It is not in, or nobody said so.",
                Standing.OPEN,
                true,
                entry(Math.max(place.fitted(), place.removed())),
                List.of());
    }

    /** A part that went in, and of which nobody said where it is from, or that it may be used again. */
    private Stream<StartItem> unsaid(Position position) {
        Place place = build.place(position.id());
        if (place.isOut() || place.fitted() == 0) {
            return Stream.empty();
        }
        boolean own = place.part().isEmpty();
        boolean said = own
                ? place.disposition().isPresent()
                : build.partFor(position.id()).flatMap(Part::origin).isPresent();
        return said
                ? Stream.empty()
                : Stream.of(new StartItem(
                        Kind.PART,
                        position.id(),
                        Sentence.capital(position.name()),
                        own
                                ? "The old part went back in, and nobody said that it is to be used again."
                                : "Nobody said where '" + place.part() + "' comes from.",
                        Standing.OPEN,
                        false,
                        entry(place.fitted()),
                        List.of()));
    }

    private static List<Long> entry(long number) {
        return number == 0 ? List.of() : List.of(number);
    }
}
