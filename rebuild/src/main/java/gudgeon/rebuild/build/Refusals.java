package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Cover;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Handing;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Sourcing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Why a fact can't be taken down as it stands, asked before it becomes an entry. */
public final class Refusals {
    private static final int MOST_COUNT = 999;
    private static final int LONGEST = 2000;

    private final Build build;
    private final Structure structure;
    private final List<String> sentences = new ArrayList<>();
    /** What is being corrected, while that is looked at. */
    private Optional<Fact> corrected = Optional.empty();

    private Refusals(Build build) {
        this.build = build;
        this.structure = build.structure();
    }

    /** The reasons for some facts told in one go, each asked of the build as those before it leave it. */
    public static List<String> of(Build build, List<Fact> facts) {
        List<String> sentences = new ArrayList<>();
        for (int i = 0; i < facts.size(); i++) {
            sentences.addAll(of(build.asIf(facts.subList(0, i)), facts.get(i)));
        }
        return sentences;
    }

    /** Every reason, each a sentence that says what, where and what to do; none for a fact that can be taken down. */
    public static List<String> of(Build build, Fact fact) {
        Refusals refusals = new Refusals(build);
        refusals.look(fact);
        return List.copyOf(refusals.sentences);
    }

    private void look(Fact fact) {
        if (!Known.in(structure, fact)) {
            unknown(fact);
        }
        if (fact instanceof Measuring measuring) {
            new MeasuringRefusals(build, sentences).look(measuring);
        } else if (fact instanceof Fact.StepBegun begun) {
            begun(begun);
        } else if (fact instanceof Fact.StepStopped stopped) {
            said(stopped.why(), "why the step was stopped");
        } else if (fact instanceof Fact.Undone undone) {
            undone(undone);
        } else if (fact instanceof Fact.CheckWaived waived) {
            said(waived.why(), "why work goes on without the check; the next owner will read it");
        } else if (fact instanceof Fact.FaultFound found) {
            said(found.what(), "what is wrong");
        } else {
            ofParts(fact);
        }
    }

    private void ofParts(Fact fact) {
        if (fact instanceof Fact.TakenOff off) {
            count(off.count());
        } else if (fact instanceof Fact.PartEntered part) {
            entered(part);
        } else if (fact instanceof Fact.Measured measured) {
            partOf(measured.position(), measured.part());
            if (measured.sizes().isEmpty()) {
                sentences.add("No size was written. Write one or more.");
            }
        } else if (fact instanceof Fact.Compared compared) {
            partOf(compared.position(), compared.part());
            if (compared.what().isEmpty()) {
                sentences.add("Nothing is ticked as compared. Tick what you held against the old part.");
            }
        } else if (fact instanceof Fact.Fitted fitted) {
            count(fitted.count());
            partOf(fitted.position(), fitted.part());
        } else if (fact instanceof Sourcing sourcing) {
            new SourcingRefusals(build, this).look(sourcing);
        } else if (fact instanceof Deciding deciding) {
            new DecidingRefusals(build, this).look(deciding);
        } else if (fact instanceof Fastening fastening) {
            new FasteningRefusals(build, this).look(fastening);
        } else if (fact instanceof Finding finding) {
            new FindingRefusals(build, this).look(finding);
        } else if (fact instanceof Proving proving) {
            new ProvingRefusals(build, this).look(proving);
        } else if (fact instanceof Handing.LessonDecided decided) {
            said(decided.lesson(), "which lesson");
        } else {
            ofBuild(fact);
        }
    }

    private void ofBuild(Fact fact) {
        if (fact instanceof Fact.Noted noted) {
            said(noted.text(), "the note");
        } else if (fact instanceof Fact.TimeSpent time && (time.minutes() < 1 || time.minutes() > 24 * 60)) {
            sentences.add("Time spent is 1 to 1440 minutes, not " + time.minutes() + ".");
        } else if (fact instanceof Fact.ChanceTaken taken && !(taken.chance() >= 0 && taken.chance() <= 1)) {
            sentences.add("A chance is 0 to 100 %, not " + Math.round(taken.chance() * 100) + " %.");
        } else if (fact instanceof Fact.WentTight tight) {
            tight(tight);
        } else if (fact instanceof Fact.Corrected correction) {
            corrected(correction);
        }
    }

    private void begun(Fact.StepBegun begun) {
        String unproven = build.unproven(begun.step()).stream().map(Check::name).collect(Collectors.joining("; "));
        if (!unproven.isEmpty()) {
            sentences.add("Hold point before '" + structure.name(begun.step()) + "': " + unproven
                    + ". Do it first, or say why you go on without it.");
        }
    }

    private void undone(Fact.Undone undone) {
        StepState state = build.step(undone.step());
        List<String> fits = structure.step(undone.step()).map(Step::fits).orElse(List.of());
        boolean allOff =
                fits.stream().allMatch(position -> build.place(position).isOut());
        if (state.status() == StepState.Status.OPEN && allOff) {
            sentences.add("The step '" + structure.name(undone.step()) + "' is not done, so it can't be undone.");
        }
        Cover.of(structure, fits, over -> build.covers(over) && !over.id().equals(undone.step()))
                .forEach(over -> sentences.add("'" + over.name() + "' still stands over '"
                        + structure.name(undone.step()) + "'. Undo it first."));
    }

    private void entered(Fact.PartEntered part) {
        count(part.count());
        said(part.part(), "a name for the part, such as 'pattern piston 1'");
        if (build.part(part.position(), part.part()).isPresent() && !part.part().isEmpty() && !putsRight(part)) {
            sentences.add("A part '" + part.part() + "' is entered already for '" + structure.name(part.position())
                    + "'. Give this one another name.");
        }
    }

    /** Whether it is the entry of that very part that is being corrected. */
    private boolean putsRight(Fact.PartEntered part) {
        return corrected
                .filter(Fact.PartEntered.class::isInstance)
                .map(Fact.PartEntered.class::cast)
                .filter(before ->
                        before.part().equals(part.part()) && before.position().equals(part.position()))
                .isPresent();
    }

    private void tight(Fact.WentTight tight) {
        if (tight.forwardDeg().isEmpty() && tight.backwardDeg().isEmpty()) {
            sentences.add("No angle is written. Write where it goes tight turning forward, backward, or both.");
        }
        angle(tight.forwardDeg());
        angle(tight.backwardDeg());
    }

    private void angle(OptionalDouble degrees) {
        if (degrees.isPresent() && !(degrees.getAsDouble() >= 0 && degrees.getAsDouble() < 720)) {
            sentences.add("A crank angle counts from 0 at firing top dead centre to 720, where it is 0 again.");
        }
    }

    private void corrected(Fact.Corrected correction) {
        said(correction.why(), "why the entry is wrong");
        corrected = build.entries().stream()
                .filter(entry -> entry.key().equals(correction.entry()))
                .map(Entry::fact)
                .findFirst();
        if (corrected.isEmpty()) {
            sentences.add("There is no such entry in this journal. Choose it from the journal's page.");
        }
        correction.instead().ifPresent(this::look);
    }

    void partOf(String position, String part) {
        if (build.part(position, part).isEmpty()) {
            sentences.add("No part '" + part + "' is entered for '" + structure.name(position) + "'. Enter it first.");
        }
    }

    private void unknown(Fact fact) {
        String kind = fact instanceof Measuring.ReadingTaken
                ? "dimension"
                : fact instanceof Fastening
                        ? "joint"
                        : fact instanceof Fact.OfStep
                                ? "step"
                                : fact instanceof Fact.OfCheck
                                        ? "check"
                                        : fact instanceof Fact.OfPosition || fact instanceof Deciding.OptionLine
                                                ? "position"
                                                : "position, step or check";
        String id = fact instanceof Deciding.OptionLine line ? line.position() : fact.about();
        sentences.add("The engine book has no " + kind + " '" + id + "'. Choose one from the list.");
    }

    void count(int count) {
        if (count < 1 || count > MOST_COUNT) {
            sentences.add("A count is 1 to " + MOST_COUNT + ", not " + count + ".");
        }
    }

    void said(String text, String what) {
        if (text.isBlank()) {
            sentences.add("Write " + what + ".");
        } else if (text.length() > LONGEST) {
            sentences.add("That is longer than " + LONGEST + " letters. Shorten it.");
        }
    }

    void refuse(String sentence) {
        sentences.add(sentence);
    }
}
