package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.ForHole;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.HoleSizes;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.LengthSpan;
import gudgeon.rebuild.fasten.LengthVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A hole was given a fastener that bottoms, stands into what is behind, or holds too little thread. */
final class FastenerLengthRule implements Rule {
    /** One hole with the wrong fastener. */
    private record Wrong(HoleNow hole, ForHole given, LengthSpan span, LengthVerdict verdict) {
        String sentence() {
            return hole.id() + " was given one of " + given.written() + ", which is " + verdict.words() + ".";
        }
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        return JointNow.all(build).stream().flatMap(joint -> {
            List<Wrong> wrong =
                    joint.holes().stream().flatMap(FastenerLengthRule::wrong).toList();
            return Stream.of(AlarmKind.FASTENER_TOO_LONG, AlarmKind.FASTENER_TOO_SHORT)
                    .flatMap(kind -> alarm(joint, kind, wrong));
        });
    }

    private static Stream<Wrong> wrong(HoleNow hole) {
        return hole.fastener().filter(given -> !given.cameOut()).stream()
                .flatMap(given -> given.length().stream()
                        .flatMap(length -> HoleSizes.of(hole).map(LengthSpan::of).stream()
                                .map(span -> new Wrong(hole, given, span, span.verdict(length)))))
                .filter(one -> one.verdict().isDangerous());
    }

    private static Stream<Alarm> alarm(JointNow joint, AlarmKind kind, List<Wrong> all) {
        boolean tooLong = kind == AlarmKind.FASTENER_TOO_LONG;
        List<Wrong> wrong = all.stream()
                .filter(one -> tooLong == (one.verdict() != LengthVerdict.TOO_SHORT))
                .toList();
        if (wrong.isEmpty()) {
            return Stream.empty();
        }
        List<String> what = wrong.stream().map(Wrong::sentence).toList();
        List<String> figures = new ArrayList<>();
        wrong.forEach(one ->
                one.span().reasons().forEach(reason -> figures.add(one.hole().id() + ": " + reason)));
        return Stream.of(new Alarm(
                kind,
                Severity.STOP,
                joint.id(),
                "On the joint '" + joint.book().name() + "' " + String.join(" ", what),
                tooLong
                        ? "It comes to torque without clamping, cracks the boss, or stops what turns behind it."
                        : "The few threads that hold it pull out of the casting at the torque.",
                "Take the right length: drop each in before turning, and see that all stand proud alike.",
                wrong.stream().map(one -> one.given().entry()).toList(),
                figures));
    }
}
