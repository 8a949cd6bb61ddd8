package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Slip;
import gudgeon.rebuild.measure.Slips;
import java.util.List;
import java.util.stream.Stream;

/** A reading that a slip of the hand explains better than the part does, and that nobody has confirmed. */
final class SlipRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return Slips.all(build).entrySet().stream()
                .map(asked -> alarm(position(build, asked.getKey()), asked.getKey(), asked.getValue()));
    }

    private static String position(Build build, long number) {
        return build.fact(number)
                .filter(ReadingTaken.class::isInstance)
                .map(ReadingTaken.class::cast)
                .flatMap(reading -> build.structure().dimension(reading.dimension()))
                .map(Dimension::of)
                .orElse("");
    }

    private static Alarm alarm(String position, long number, List<Slip> slips) {
        return new Alarm(
                AlarmKind.SLIP,
                Severity.LOOK,
                position,
                slips.get(0).sentence(),
                "A verdict on a slip condemns a sound part, or passes a worn one.",
                "Read it once more. Correct the entry if it was a slip; if it stands, take the second reading down too.",
                List.of(number),
                slips.stream().skip(1).map(Slip::sentence).toList());
    }
}
