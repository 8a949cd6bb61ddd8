package gudgeon.rebuild.lesson;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.StepDone;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Fact.TimeSpent;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the work itself taught: how long steps and checks took, how many parts there were, which checks were done again. */
final class WorkLessons {
    private final Build build;
    private final List<Taught> taught = new ArrayList<>();

    WorkLessons(Build build) {
        this.build = build;
    }

    List<Taught> taught() {
        for (Step step : build.structure().steps()) {
            minutes("steps", step.id(), step.name(), step.minutes(), build.told(StepDone.class, step.id()));
        }
        for (Check check : build.structure().checks()) {
            List<Told<Fact.OfCheck>> done = done(check);
            minutes("checks", check.id(), check.name(), check.minutes(), done);
            again(check, done);
        }
        build.structure().positions().forEach(this::quantity);
        return taught;
    }

    private List<Told<Fact.OfCheck>> done(Check check) {
        return build.told(Fact.OfCheck.class, check.id()).stream()
                .filter(told -> told.fact() instanceof CheckPassed || told.fact() instanceof CheckFailed)
                .toList();
    }

    /** Minutes for each time that it was done, to the whole minute; what was undone and done again counts as often. */
    private void minutes(String list, String id, String name, int book, List<? extends Told<?>> done) {
        List<Told<TimeSpent>> spent = build.told(TimeSpent.class, id);
        if (spent.isEmpty() || done.isEmpty()) {
            return;
        }
        int all = spent.stream().mapToInt(told -> told.fact().minutes()).sum();
        int each = Math.max(1, Math.round((float) all / done.size()));
        if (each == book) {
            return;
        }
        taught.add(new Lesson(
                "minutes." + id,
                name + ": " + each + " minutes.",
                "It took " + Amount.time(all) + (done.size() == 1 ? "" : ", done " + done.size() + " times") + ". "
                        + (book == 0 ? "The book does not say it." : "The book says " + book + " minutes."),
                numbers(Stream.concat(spent.stream(), done.stream())),
                new Amendment.Put(List.of(list, id, "minutes"), Integer.toString(each))));
    }

    private void again(Check check, List<Told<Fact.OfCheck>> done) {
        if (done.size() < 2) {
            return;
        }
        String failed = done.stream()
                .filter(told -> told.fact() instanceof CheckFailed)
                .map(told -> ((CheckFailed) told.fact()).remark())
                .filter(remark -> !remark.isBlank())
                .collect(Collectors.joining("; "));
        taught.add(new Withheld(
                check.name() + ", done " + done.size() + " times",
                failed.isEmpty()
                        ? "What was undone in between made it void, as the book says already."
                        : "It failed here: " + failed
                                + ". What that cost is offered at the step, if a step was undone.",
                numbers(done.stream())));
    }

    /** A parts list may show fewer than there are: more came off, before any was fitted, than the book has. */
    private void quantity(Position position) {
        long fitted = build.told(Fact.Fitted.class, position.id()).stream()
                .mapToLong(Told::number)
                .min()
                .orElse(Long.MAX_VALUE);
        List<Told<TakenOff>> off = build.told(TakenOff.class, position.id()).stream()
                .filter(told -> told.number() < fitted)
                .toList();
        int count = off.stream().mapToInt(told -> told.fact().count()).sum();
        if (count > position.quantity()) {
            taught.add(new Lesson(
                    "quantity." + position.id(),
                    "There are " + count + ": " + position.name() + ".",
                    "So many came off. The book says " + position.quantity() + ".",
                    numbers(off.stream()),
                    new Amendment.Put(List.of("positions", position.id(), "quantity"), Integer.toString(count))));
        }
    }

    private static List<Long> numbers(Stream<? extends Told<?>> told) {
        return told.map(Told::number).sorted().toList();
    }
}
