package gudgeon.rebuild.start;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Commissioning;
import gudgeon.rebuild.book.StartPoint;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.start.StartItem.Kind;
import gudgeon.rebuild.start.StartItem.Standing;
import java.util.List;
import java.util.stream.Stream;

/** The checks that are open, were waived or had to be repeated, and those that prove a point of the list. */
final class ChecksToSee {
    private final Build build;
    private final BeforeStart before;
    private final Commissioning commissioning;

    ChecksToSee(Build build, BeforeStart before) {
        this.build = build;
        this.before = before;
        this.commissioning = build.book().commissioning();
    }

    List<StartItem> items() {
        return before.checks().stream().flatMap(this::item).toList();
    }

    private Stream<StartItem> item(Check check) {
        CheckState state = build.check(check.id());
        Standing standing = standing(check, state);
        List<String> points = points(check);
        long failed = times(check, CheckFailed.class);
        if (standing == Standing.GOOD && points.isEmpty() && failed == 0) {
            return Stream.empty();
        }
        return Stream.of(new StartItem(
                Kind.CHECK,
                check.id(),
                check.name(),
                sentence(check, state, points, failed),
                standing,
                check.isHoldPoint() || state.status() == CheckState.Status.FAILED || !points.isEmpty(),
                state.at() == 0 ? List.of() : List.of(state.at()),
                check.cautions()));
    }

    private Standing standing(Check check, CheckState state) {
        boolean lets = before.start()
                .filter(start -> check.holds().contains(start.id()))
                .map(state::lets)
                .orElse(state.lets());
        if (state.status() == CheckState.Status.WAIVED) {
            return Standing.WAIVED;
        }
        return state.status() == CheckState.Status.FAILED ? Standing.NOT_GOOD : lets ? Standing.GOOD : Standing.OPEN;
    }

    private static String sentence(Check check, CheckState state, List<String> points, long failed) {
        StringBuilder said = new StringBuilder(check.isHoldPoint() ? "Hold point, " : "Check, ")
                .append(state.status().words())
                .append(state.reading().isEmpty() ? "" : ": " + state.reading())
                .append('.');
        if (!state.remark().isEmpty()) {
            said.append(' ').append(Sentence.of(state.remark()));
        }
        if (failed > 0 && state.status() == CheckState.Status.PASSED) {
            said.append(" Repeated: it failed ")
                    .append(Amount.of(failed, "time"))
                    .append(" before.");
        }
        if (!points.isEmpty()) {
            said.append(" It proves: ").append(String.join("; ", points)).append('.');
        }
        return said.toString();
    }

    /** The points of the list and the fluids that it proves. */
    private List<String> points(Check check) {
        return Stream.concat(
                        Stream.of(StartPoint.values())
                                .filter(point ->
                                        commissioning.start().proving(point).contains(check.id()))
                                .map(StartPoint::what),
                        commissioning.fluids().stream()
                                .filter(fluid -> fluid.provedBy().contains(check.id()))
                                .map(PointsToSee::named))
                .toList();
    }

    private long times(Check check, Class<CheckFailed> kind) {
        long asLong = build.told(kind, check.id()).size();
        return build.told(CheckPassed.class, check.id()).isEmpty() ? 0 : asLong;
    }
}
