package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Space;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.StepState;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A step covers a place whose part is not in it. */
final class MissingRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return UnderHand.steps(build)
                .flatMap(step -> step.covers().stream()
                        .filter(position -> isEmpty(build, step, position))
                        .flatMap(position -> build.structure().position(position).stream())
                        .map(position -> alarm(build, step, position)));
    }

    private static boolean isEmpty(Build build, Step step, String position) {
        // what the step itself fits goes in while it is done
        boolean goesIn = step.fits().contains(position) && build.step(step.id()).status() == StepState.Status.BEGUN;
        return !goesIn && !build.place(position).isFilled();
    }

    private static Alarm alarm(Build build, Step step, Position position) {
        Place place = build.place(position.id());
        String some = place.status() == Place.Status.PARTLY_IN
                ? "Only " + place.count() + " of " + position.quantity() + " are in: the " + position.name()
                : "The " + position.name() + (position.quantity() > 1 ? " are" : " is") + " not in";
        String bag = place.off()
                .filter(off -> !off.bag().isEmpty())
                .map(off -> " What came off lies in bag " + off.bag() + ".")
                .orElse("");
        return new Alarm(
                position.seals() ? AlarmKind.SEAL_MISSING : AlarmKind.PART_MISSING,
                Severity.STOP,
                position.id(),
                some + ", and the step '" + step.name() + "' covers that place.",
                position.seals()
                        ? "It keeps " + spaces(position) + " apart; left out, one leaks into the other."
                        : "Once it is covered, all of this must come apart again to put it in.",
                "Stop, fit it, and record that it is in." + bag,
                List.of(UnderHand.number(build.step(step.id()))),
                List.of());
    }

    private static String spaces(Position position) {
        return position.spaces().stream().map(MissingRule::named).collect(Collectors.joining(" and "));
    }

    private static String named(Space space) {
        return switch (space) {
            case WET -> "the wet side";
            case DRY -> "the dry side";
            case GAS -> "the gas";
            case OUTSIDE -> "the outside";
        };
    }
}
