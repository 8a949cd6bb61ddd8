package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.bore.BoreDimensions;
import gudgeon.rebuild.bore.FoundBore;
import gudgeon.rebuild.bore.Gauged;
import gudgeon.rebuild.bore.PistonClearance;
import gudgeon.rebuild.bore.PistonsToHave;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A barrel goes off to be bored before its piston is in hand, or came back with the wrong clearance for it. */
final class BoredEarlyRule implements Rule {
    /** Words by which a person says that a barrel is bored. */
    private static final Pattern BORING =
            Pattern.compile("(?<!the )\\b((re|over)-?)?bor(e|ed|ing)\\b|\\bhon(e|ed|ing)\\b|\\bbore\\b.*\\d");

    @Override
    public Stream<Alarm> alarms(Build build) {
        return BoreDimensions.of(build.structure())
                .flatMap(dimensions -> boring(build, dimensions).flatMap(sent -> alarm(build, dimensions, sent)))
                .stream();
    }

    /** The last time the barrel that counts was sent off to be bored. */
    private static Optional<Told<WorkSent>> boring(Build build, BoreDimensions dimensions) {
        String barrel = Gauged.part(build, dimensions.bore().of());
        return build.told(WorkSent.class, dimensions.bore().of()).stream()
                .filter(told -> told.fact().part().equals(barrel))
                .filter(told -> BORING.matcher(told.fact().work().toLowerCase(Locale.ROOT))
                        .find())
                .reduce((earlier, later) -> later);
    }

    private static Optional<Alarm> alarm(Build build, BoreDimensions dimensions, Told<WorkSent> sent) {
        boolean finished =
                FoundBore.of(build, dimensions).filter(FoundBore::reworked).isPresent();
        Optional<PistonsToHave.InHand> piston = PistonsToHave.inHand(build, dimensions);
        if (finished) {
            return PistonClearance.of(build, dimensions)
                    .filter(clearance -> clearance.isTight() || clearance.isLoose())
                    .map(clearance -> wrong(dimensions, clearance));
        }
        if (piston.flatMap(PistonsToHave.InHand::skirt).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(early(
                dimensions,
                sent,
                piston.map(found -> "the piston '" + found.part() + "' has not been measured")
                        .orElse("no piston for it is in hand")));
    }

    private static Alarm early(BoreDimensions dimensions, Told<WorkSent> sent, String lacking) {
        return new Alarm(
                AlarmKind.BORED_EARLY,
                Severity.STOP,
                dimensions.bore().of(),
                "The barrel went off to be bored, and " + lacking + ".",
                "Pistons of one oversize differ: a bore finished to the number on the box may nip or rattle.",
                "Ring the machinist and have the boring wait until the piston is in hand and its skirt measured.",
                List.of(sent.number()),
                List.of());
    }

    private static Alarm wrong(BoreDimensions dimensions, PistonClearance clearance) {
        return new Alarm(
                AlarmKind.BORED_EARLY,
                Severity.STOP,
                dimensions.bore().of(),
                clearance.sentence(),
                clearance.isTight()
                        ? "A piston too tight nips up as soon as it is warm, and spoils the bore."
                        : "A piston too loose rocks and knocks, and its rings do not seal.",
                clearance.isTight()
                        ? "Measure both again at one temperature; then have the bore honed to this piston."
                        : "Measure both again at one temperature; then look for a larger piston, or bore to the next oversize.",
                List.of(Math.max(clearance.bore(), clearance.skirt())),
                List.of());
    }
}
