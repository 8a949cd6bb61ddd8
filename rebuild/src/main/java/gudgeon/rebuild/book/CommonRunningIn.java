package gudgeon.rebuild.book;

import gudgeon.rebuild.book.RunningIn.Stage;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** A scheme of running in for an engine whose book has none. Common practice, no source, and it says so itself. */
final class CommonRunningIn {
    private static final String SOURCE =
            "Common practice, no source. Ask for the maker's scheme, or that of whoever made the piston, and write it into the book.";
    private static final List<String> OVERDONE = List.of(
            "Never full load cold, never labouring in a high gear.", "Stop at the first noise, smell or tight place.");

    private CommonRunningIn() {}

    static RunningIn of(Structure structure, Commissioning commissioning) {
        List<String> again = structure.joints().stream()
                .filter(joint -> !joint.again().isEmpty())
                .map(Joint::id)
                .toList();
        List<String> clearances = structure.checks().stream()
                .filter(check -> check.needs().stream()
                        .anyMatch(step -> structure.step(step).stream()
                                .anyMatch(done -> done.tightens().stream().anyMatch(again::contains))))
                .filter(check -> check.needs().stream()
                        .anyMatch(step -> comesAfter(
                                structure, step, commissioning.start().step())))
                .map(Check::id)
                .toList();
        List<String> oil = commissioning.fluids().stream()
                .map(Fluid::id)
                .filter(id -> id.contains("oil"))
                .toList();
        return new RunningIn(
                SOURCE,
                List.of(
                        stage(
                                "first-heat",
                                "First heat",
                                5,
                                1,
                                "none",
                                4,
                                "A fast idle, then let it go stone cold.",
                                both(again, clearances)),
                        stage(
                                "short-runs",
                                "Short runs",
                                30,
                                3,
                                "light",
                                5,
                                "Ten minutes at a time, throttle opened and shut, and cold in between.",
                                oil),
                        stage(
                                "half-load",
                                "Up to half load",
                                120,
                                0,
                                "up to a half",
                                6,
                                "Short pulls that press the rings out, then let it run on.",
                                List.of()),
                        stage(
                                "rising-load",
                                "Load brought up",
                                300,
                                0,
                                "up to three quarters, full for moments only",
                                8,
                                "A little more each time out, warm first.",
                                both(oil, clearances))));
    }

    private static boolean comesAfter(Structure structure, String step, String start) {
        return structure.step(step).stream().anyMatch(one -> one.needs().contains(start));
    }

    private static List<String> both(List<String> some, List<String> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private static Stage stage(
            String id, String name, int minutes, int heats, String load, double mPerS, String how, List<String> then) {
        return new Stage(
                id,
                name,
                minutes,
                heats,
                OptionalInt.empty(),
                load,
                OptionalInt.empty(),
                OptionalDouble.of(mPerS),
                Stream.concat(Stream.of(how), OVERDONE.stream()).toList(),
                then);
    }
}
