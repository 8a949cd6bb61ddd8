package gudgeon.rebuild.lesson;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.FaultFound;
import gudgeon.rebuild.journal.Fact.Undone;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Faults that cost an undoing, each told at the step where it would have been cheap to see. */
final class FaultLessons {
    private final Build build;

    FaultLessons(Build build) {
        this.build = build;
    }

    List<Taught> taught() {
        List<Told<Fact>> faults = build.told(Fact.class).stream()
                .filter(told -> told.fact() instanceof FaultFound || told.fact() instanceof CheckFailed)
                .toList();
        List<Taught> taught = new ArrayList<>();
        for (int i = 0; i < faults.size(); i++) {
            long next = i + 1 < faults.size() ? faults.get(i + 1).number() : Long.MAX_VALUE;
            lesson(faults.get(i), next).ifPresent(taught::add);
        }
        return taught;
    }

    private Optional<Lesson> lesson(Told<Fact> fault, long next) {
        List<Told<Undone>> undone = build.told(Undone.class).stream()
                .filter(told -> told.number() > fault.number() && told.number() < next)
                .toList();
        List<Step> steps = undone.stream()
                .flatMap(told -> build.structure().step(told.fact().step()).stream())
                .toList();
        return cheapest(fault.fact(), steps)
                .filter(step -> !step.instructions().contains(asks(fault.fact())))
                .map(step -> new Lesson(
                        "fault." + step.id() + "." + fault.number(),
                        step.name() + ": " + asks(fault.fact()),
                        "Found later, it cost undoing " + Amount.of(steps.size(), "step") + ": "
                                + Sentence.list(steps.stream().map(Step::name).toList())
                                + ". Looked at here, it would have cost no undoing.",
                        Stream.concat(Stream.of(fault.number()), undone.stream().map(Told::number))
                                .toList(),
                        new Amendment.Add(List.of("steps", step.id(), "do"), Written.text(asks(fault.fact())))));
    }

    /** The step undone that fits what was at fault; of a check the deepest one undone that it suspects. */
    private Optional<Step> cheapest(Fact fault, List<Step> undone) {
        String at = fault.about();
        Optional<Check> check = build.structure().check(at);
        return undone.stream()
                .filter(step -> check.map(one -> suspects(one, step))
                        .orElse(step.id().equals(at) || step.fits().contains(at)))
                .reduce((earlier, later) -> later);
    }

    private static boolean suspects(Check check, Step step) {
        return check.clears().stream()
                .anyMatch(suspect -> suspect.equals(step.id()) || step.fits().contains(suspect));
    }

    /** What the next fitter is asked at the step. */
    private String asks(Fact fault) {
        String name = build.structure().name(fault.about());
        if (fault instanceof FaultFound found) {
            return "Before going on, look at the " + name + ". Found too late once: "
                    + Sentence.ended(found.what().strip());
        }
        String remark = ((CheckFailed) fault).remark().strip();
        return "Before going on, look with care: '" + name + "' failed later once"
                + (remark.isEmpty() ? "." : ": " + Sentence.ended(remark));
    }
}
