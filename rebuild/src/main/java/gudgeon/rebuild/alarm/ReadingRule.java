package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.timing.CamTiming;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A check passed on a reading outside what the book expects, or a valve has no clearance. */
final class ReadingRule implements Rule {
    private static final String CLEARANCE = "clearance";
    private static final Pattern VALVE_CLEARANCE =
            Pattern.compile("(valve|tappet)[ -]clearance", Pattern.CASE_INSENSITIVE);
    private static final String NEVER_SHUTS =
            "A valve without clearance never shuts: it burns, and the pressure it loses reads as worn rings.";
    private static final String SET_IT =
            "Set the clearance on a cold engine with the valve shut, then do the leak-down and compression tests anew.";

    @Override
    public Stream<Alarm> alarms(Build build) {
        return Stream.concat(
                build.structure().checks().stream()
                        .filter(check -> !CamTiming.isReadBy(check))
                        .flatMap(check -> ofCheck(build, check)),
                build.structure().positions().stream()
                        .filter(position -> position.sizes().startsWith("valves."))
                        .flatMap(position -> ofValve(build, position)));
    }

    private static Stream<Alarm> ofCheck(Build build, Check check) {
        CheckState state = build.check(check.id());
        boolean read = state.status() == CheckState.Status.PASSED || state.status() == CheckState.Status.FAILED;
        if (!read || check.expect().isEmpty()) {
            return Stream.empty();
        }
        Expect expect = check.expect().get();
        List<Double> outside = Readings.outside(state.reading(), expect);
        if (outside.isEmpty()) {
            return Stream.empty();
        }
        boolean neverShuts = expect.unit() == Unit.MM
                && VALVE_CLEARANCE.matcher(check.id() + " " + check.name()).find()
                && outside.stream().anyMatch(value -> value <= 0);
        // a failed check says itself that something is wrong, but not that it makes others lie
        return neverShuts || state.status() == CheckState.Status.PASSED
                ? Stream.of(ofCheck(check, state, expect, outside, neverShuts))
                : Stream.empty();
    }

    private static Alarm ofCheck(
            Check check, CheckState state, Expect expect, List<Double> outside, boolean neverShuts) {
        String figures = outside.stream().map(expect::figure).collect(Collectors.joining(" and "));
        return new Alarm(
                AlarmKind.READING,
                Severity.STOP,
                check.id(),
                "The check '" + check.name() + "' " + state.status().words() + " with " + figures
                        + " read, where the book has " + expect.words() + ".",
                neverShuts ? NEVER_SHUTS : "What is out of its limits now does not get better by being covered.",
                neverShuts ? SET_IT : "Read it again; if it stays, put it right before going on.",
                List.of(state.at()),
                List.of());
    }

    private static Stream<Alarm> ofValve(Build build, Position valve) {
        Optional<String> clearance =
                build.partFor(valve.id()).map(Part::sizes).flatMap(sizes -> Optional.ofNullable(sizes.get(CLEARANCE)));
        return clearance.stream()
                .filter(text -> Readings.of(text, Unit.MM).stream().anyMatch(value -> value <= 0))
                .map(text -> new Alarm(
                        AlarmKind.READING,
                        Severity.STOP,
                        valve.id(),
                        "The " + valve.name() + " has no clearance: " + text + " was measured.",
                        NEVER_SHUTS,
                        SET_IT,
                        Laying.evidence(build, valve),
                        List.of()));
    }
}
