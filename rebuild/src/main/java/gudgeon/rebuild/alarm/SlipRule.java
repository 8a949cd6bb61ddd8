package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Slip;
import gudgeon.rebuild.measure.Slips;
import java.util.List;
import java.util.stream.Stream;

/** A reading that a slip of the hand explains better than the part does, and that nobody has confirmed. */
final class SlipRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().dimensions().stream()
                .flatMap(dimension -> build.told(ReadingTaken.class, dimension.id()).stream()
                        .flatMap(told -> alarm(build, dimension, told)));
    }

    private static Stream<Alarm> alarm(Build build, Dimension dimension, Told<ReadingTaken> told) {
        List<Slip> slips = Slips.of(build, told);
        return slips.stream()
                .limit(1)
                .map(slip -> new Alarm(
                        AlarmKind.SLIP,
                        Severity.LOOK,
                        dimension.of(),
                        slip.sentence(),
                        "A verdict on a slip condemns a sound part, or passes a worn one.",
                        "Read it once more. Correct the entry if it was a slip; if it stands, take the second reading down too.",
                        List.of(told.number()),
                        slips.stream().skip(1).map(Slip::sentence).toList()));
    }
}
