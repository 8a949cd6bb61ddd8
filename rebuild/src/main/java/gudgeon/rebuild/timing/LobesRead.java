package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.timing.Flanks;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.TypedAngle;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Proving.LobeRead;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The readings of a build's lobes that still count: of two at one lift the later, and none that was taken before the cam's drive
 * was last touched.
 *
 * @param valves the valves that were read, in the book's order
 * @param faults what can't be used of the readings, sentences
 */
record LobesRead(List<ValveTiming> valves, List<String> faults) {
    LobesRead {
        valves = List.copyOf(valves);
        faults = List.copyOf(faults);
    }

    /**
     * Those of a build.
     *
     * @param common doubts that all readings share
     */
    static LobesRead of(Build build, TimingInstruments with, List<Doubt> common) {
        long since = lastTouched(build);
        List<ValveTiming> valves = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (ValveEntry valve : build.book().geometry().map(Geometry::valves).orElse(List.of())) {
            List<LobeLine> lines = lines(build, valve, since, faults);
            if (!lines.isEmpty()) {
                valves.add(ValveTiming.of(valve, lines, with, common));
            }
        }
        return new LobesRead(valves, faults);
    }

    /** Number of the last entry by which a suspect of the cam's timing came off or went on; 0 if there is none. */
    private static long lastTouched(Build build) {
        Structure structure = build.structure();
        Optional<Check> check = structure.check(CamTiming.check(structure));
        return check.stream()
                .flatMap(one -> structure.cleared(one).stream())
                .flatMap(position -> Stream.concat(
                        Stream.of(position),
                        structure.stepFitting(position).stream().map(step -> step.id())))
                .mapToLong(id -> build.lastTold(id, LobesRead::touches))
                .max()
                .orElse(0);
    }

    private static boolean touches(Fact fact) {
        return fact instanceof Fact.StepDone
                || fact instanceof Fact.Undone
                || fact instanceof Fact.Fitted
                || fact instanceof Fact.TakenOff;
    }

    private static List<LobeLine> lines(Build build, ValveEntry valve, long since, List<String> faults) {
        Map<Double, LobeLine> byLift = new LinkedHashMap<>();
        for (Told<LobeRead> told : build.told(LobeRead.class, valve.id())) {
            if (told.number() > since) {
                Optional<LobeLine> line = line(valve, told);
                line.ifPresent(one -> byLift.put(one.liftMm(), one));
                if (line.isEmpty()) {
                    faults.add("Entry " + told.number()
                            + ", a reading of the " + valve.id()
                            + " valve, can't be used: the book's lift does not reach "
                            + told.fact().lift() + ", or it closes before it opens.");
                }
            }
        }
        return List.copyOf(byLift.values());
    }

    private static Optional<LobeLine> line(ValveEntry valve, Told<LobeRead> told) {
        LobeRead fact = told.fact();
        TypedAngle opening = TypedAngle.of(fact.opening());
        TypedAngle closing = TypedAngle.of(fact.closing());
        if (!(TypedSize.of(Unit.MM, fact.lift(), 1) instanceof TypedSize.Read lift)
                || opening instanceof TypedAngle.Refused
                || closing instanceof TypedAngle.Refused) {
            return Optional.empty();
        }
        double opens = opening.crankDeg(valve.kind(), true);
        double closes = closing.crankDeg(valve.kind(), false);
        double mm = lift.value();
        if (!(mm > 0 && mm < BookedLobe.greatestMm(valve)) || closes <= opens) {
            return Optional.empty();
        }
        return Optional.of(new LobeLine(
                told.number(),
                mm,
                new Flanks(opens, closes),
                BookedLobe.centreDeg(valve, mm),
                BookedLobe.flanks(valve, mm)));
    }
}
