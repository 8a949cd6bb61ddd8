package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Says what an undoing costs. */
final class UndoSentences {
    private final Build build;
    private final Undo undo;

    UndoSentences(Build build, Undo undo) {
        this.build = build;
        this.undo = undo;
    }

    List<String> all() {
        List<String> said = new ArrayList<>();
        said.add(off());
        again().ifPresent(said::add);
        checks().ifPresent(said::add);
        buy().ifPresent(said::add);
        if (!undo.off().isEmpty()) {
            said.add(
                    "Work lost: about " + Amount.time(undo.minutesOff()) + " taking off and "
                            + Amount.time(undo.minutesBack())
                            + " putting back and proving again. Taking off is taken as half of putting on: common practice, no source.");
        }
        easiestSuspect().ifPresent(said::add);
        return said;
    }

    private String off() {
        String name = build.structure().name(undo.of());
        if (undo.off().isEmpty()) {
            return "Nothing has to come off to get at '" + name + "'.";
        }
        return "To get at '" + name + "', undo " + Amount.of(undo.off().size(), "step") + ": " + quoted(undo.off())
                + ".";
    }

    private Optional<String> again() {
        return undo.again().isEmpty()
                ? Optional.empty()
                : Optional.of("Done on what comes off, so to be done again: " + quoted(undo.again()) + ".");
    }

    private static String quoted(List<Step> steps) {
        return Sentence.list(steps.stream().map(step -> "'" + step.name() + "'").toList());
    }

    private Optional<String> checks() {
        if (undo.voidChecks().isEmpty()) {
            return Optional.empty();
        }
        List<String> names = undo.voidChecks().stream()
                .map(id -> "'" + build.structure().name(id) + "'")
                .toList();
        return Optional.of(Amount.of(names.size(), "check") + (names.size() == 1 ? " becomes" : " become") + " void: "
                + Sentence.list(names) + ".");
    }

    private Optional<String> buy() {
        List<String> wanted = undo.buy().stream()
                .map(buy -> (buy.quantity() > 1 ? buy.quantity() + " of " : "")
                        + buy.name()
                        + (buy.price().isBlank() ? "" : " (last price " + buy.price() + ")"))
                .toList();
        return wanted.isEmpty()
                ? Optional.empty()
                : Optional.of("Destroyed and to be bought: " + Sentence.list(wanted) + ".");
    }

    /** Where a check has several suspects, the one that is got at with least work is looked at first. */
    private Optional<String> easiestSuspect() {
        List<String> suspects =
                build.structure().check(undo.of()).map(check -> check.clears()).orElse(List.of());
        if (suspects.size() < 2 || undo.off().isEmpty()) {
            return Optional.empty();
        }
        return suspects.stream()
                .map(suspect -> Undo.of(build, suspect))
                .min(Comparator.comparingInt(one -> one.minutesOff() + one.minutesBack()))
                .map(least -> "Of its suspects, '" + build.structure().name(least.of())
                        + "' is got at with least work: "
                        + Amount.of(least.off().size(), "step") + ", about "
                        + Amount.time(least.minutesOff() + least.minutesBack()) + " off and back.");
    }
}
