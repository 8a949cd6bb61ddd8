package gudgeon.rebuild.record;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The chapters of a build's record. Whatever is corrected stands in the journal only. */
record Chapters(Build build, Wanted wanted) {
    private static final List<String> TOLD = List.of("Day", "What");

    List<Chapter> all() {
        return List.of(
                        told("Condition found", Chapters::isFound),
                        new Chapter("Sizes before and after", List.of(), Sizes.HEADINGS, new Sizes(build).rows()),
                        told("Decisions", fact -> fact instanceof Deciding || fact instanceof Fact.Disposed),
                        told("Parts and work bought", Chapters::isBought),
                        told("Parts fitted", Chapters::isFitted),
                        told("Joints and torques", Chapters::isTightened),
                        new Chapter("Checks", List.of(), List.of("Check", "Stands as", "What was done"), checks()),
                        told("Faults and what they cost", Chapters::isFault, cost()),
                        told("Timing, first start and running in", Proving.class::isInstance),
                        told("Hours", Fact.TimeSpent.class::isInstance, hours()))
                .stream()
                .filter(chapter -> !chapter.isEmpty())
                .toList();
    }

    /** Every entry, also those that were corrected. */
    Chapter journal() {
        List<Row> rows = new ArrayList<>();
        for (long number = 1; number <= build.size(); number++) {
            Entry entry = build.entry(number);
            String told = discreet(entry.fact()).orElse("Of money, left out.");
            String more = (build.isCorrected(number) ? " (Corrected later.)" : "")
                    + (wanted.people() && !entry.device().isEmpty() ? " Entered on " + entry.device() + "." : "");
            rows.add(new Row(List.of(number), List.of(day(entry.at()), told + more)));
        }
        return new Chapter("The journal, entry by entry", List.of(), TOLD, rows);
    }

    static String day(Instant at) {
        return at.atZone(ZoneOffset.UTC).toLocalDate().toString();
    }

    private static boolean isFound(Fact fact) {
        return fact instanceof Fact.Started || fact instanceof Fact.TakenOff || fact instanceof Fact.Noted;
    }

    private static boolean isBought(Fact fact) {
        return fact instanceof Fact.PartEntered
                || fact instanceof Fact.Compared
                || (fact instanceof Sourcing && !(fact instanceof Sourcing.PaceSet));
    }

    private static boolean isFitted(Fact fact) {
        return fact instanceof Fact.Fitted || fact instanceof Measuring.FittingSaid;
    }

    private static boolean isTightened(Fact fact) {
        return fact instanceof Fastening && !(fact instanceof Fastening.Piled);
    }

    private static boolean isFault(Fact fact) {
        return fact instanceof Fact.FaultFound
                || fact instanceof Fact.WentTight
                || fact instanceof Fact.Undone
                || fact instanceof Fact.StepStopped
                || fact instanceof Finding;
    }

    private Chapter told(String title, Predicate<Fact> what) {
        return told(title, what, List.of());
    }

    private Chapter told(String title, Predicate<Fact> what, List<String> sentences) {
        List<Row> rows = new ArrayList<>();
        for (long number = 1; number <= build.size(); number++) {
            Optional<String> sentence = build.fact(number).filter(what).flatMap(this::discreet);
            if (sentence.isPresent()) {
                String day = day(build.entry(number).at());
                rows.add(new Row(List.of(number), List.of(day, sentence.get())));
            }
        }
        return new Chapter(title, rows.isEmpty() ? List.of() : sentences, TOLD, rows);
    }

    private Optional<String> discreet(Fact fact) {
        return new Discreet(wanted).told(fact).map(told -> Telling.of(told, build.structure()));
    }

    /** The checks that the journal tells of, with each time they were done. */
    private List<Row> checks() {
        List<Row> rows = new ArrayList<>();
        build.structure().checks().forEach(check -> {
            List<Long> done = build.about(check.id()).stream()
                    .filter(number -> build.fact(number)
                            .filter(Fact.OfCheck.class::isInstance)
                            .isPresent())
                    .toList();
            if (!done.isEmpty()) {
                CheckState state = build.check(check.id());
                String history = String.join(
                        " ",
                        done.stream()
                                .flatMap(number -> build
                                        .fact(number)
                                        .flatMap(this::discreet)
                                        .map(told -> day(build.entry(number).at()) + ": " + told)
                                        .stream())
                                .toList());
                rows.add(new Row(
                        done,
                        List.of(
                                Sentence.capital(check.name()),
                                state.status().words() + (done.size() > 1 ? ", done " + done.size() + " times" : ""),
                                history)));
            }
        });
        return rows;
    }

    /** What undoing cost: the book's minutes of the steps undone, once for each time, and the parts to buy again. */
    private List<String> cost() {
        List<Fact.Undone> undone =
                build.told(Fact.Undone.class).stream().map(told -> told.fact()).toList();
        long minutes = undone.stream()
                .flatMap(one -> build.structure().step(one.step()).stream())
                .mapToLong(step -> step.minutes())
                .sum();
        long parts = undone.stream().mapToLong(one -> one.toBuy().size()).sum();
        return undone.isEmpty()
                ? List.of()
                : List.of("Undone again: " + Amount.of(undone.size(), "step") + ", which the book reckons at "
                        + Amount.time(minutes) + " to do once more. Parts to buy again: " + parts + ".");
    }

    private List<String> hours() {
        return List.of("Time written down in all: " + Amount.time(build.minutesSpent()) + ".");
    }
}
