package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The timing of a build as its readings tell it. A pure function of the build.
 *
 * @param with what it was read with
 * @param top true top dead centre, if the stop was touched
 * @param valves the valves that were read
 * @param cam the cam as they tell it together
 * @param spark where the points open
 * @param points gap and dwell
 * @param checks the checks of the book that read by it
 * @param marks what the drawing of the disc shows
 * @param faults what can't be used of the readings, sentences
 */
public record Timing(
        TimingInstruments with,
        Optional<TopDeadCentre> top,
        List<ValveTiming> valves,
        Optional<CamTimed> cam,
        Optional<SparkTiming> spark,
        PointsTiming points,
        List<CheckReading> checks,
        List<DiscMark> marks,
        List<String> faults) {
    /** What can hurt while it is read and set. */
    public static final List<String> CAUTIONS = List.of(
            "Turn by hand only, plug out and earthed or capped: no starter, no petrol about. Where it goes tight, stop; out of time"
                    + " a valve meets the piston, and force bends it.",
            "A stop in the plug hole is met gently, by hand. Take it out before anything else turns the engine.",
            "Keep fingers and rags out of chain and sprockets. A magneto that is turned gives a shock.",
            "The maker's manual and marks come first.");

    public Timing {
        valves = List.copyOf(valves);
        checks = List.copyOf(checks);
        marks = List.copyOf(marks);
        faults = List.copyOf(faults);
    }

    /** That of a build. */
    public static Timing of(Build build) {
        TimingInstruments with = TimingInstruments.of(build);
        Optional<TopDeadCentre> top = TopDeadCentre.of(build, with);
        List<Doubt> topDoubts = topDoubts(top);
        List<Doubt> common = new ArrayList<>(topDoubts);
        common.add(Doubt.permissibleError(with.disc().error()));
        common.add(Doubt.stated(TimingInstruments.SLACK_DEG));
        LobesRead lobes = LobesRead.of(build, with, common);
        Optional<CamTimed> cam = CamTimed.of(build, lobes.valves(), common);
        List<String> faults = new ArrayList<>(lobes.faults());
        Optional<SparkTiming> spark = SparkTiming.of(build, with, topDoubts, faults);
        PointsTiming points = PointsTiming.of(build, with, faults);
        return new Timing(
                with,
                top,
                lobes.valves(),
                cam,
                spark,
                points,
                CheckReading.all(build, cam, spark, points),
                DiscMark.all(lobes.valves(), spark),
                faults);
    }

    /** A disc that was not set by the stop may be off by more than its readings show. */
    private static List<Doubt> topDoubts(Optional<TopDeadCentre> top) {
        return top.filter(TopDeadCentre::isSet)
                .map(set -> set.offDeg().doubts())
                .orElse(List.of(Doubt.stated(TimingInstruments.UNPROVEN_TOP_DEG)));
    }

    /** Whether anything was read yet. */
    public boolean isEmpty() {
        return top.isEmpty()
                && valves.isEmpty()
                && spark.isEmpty()
                && points.gapMm().isEmpty()
                && points.dwellDeg().isEmpty()
                && faults.isEmpty();
    }

    /** What the figures rest on, sentences. */
    public List<String> grounds() {
        List<String> all = new ArrayList<>();
        all.add(with.sentence());
        if (top.filter(TopDeadCentre::isSet).isEmpty()) {
            all.add((top.isPresent()
                            ? "The last readings at the stop show the disc off: read them once more when it is set. "
                            : "True top dead centre was not found by the stop. ")
                    + "Until then it may be off by " + Angle.text(TimingInstruments.UNPROVEN_TOP_DEG)
                    + " (common practice, no source).");
        }
        if (!valves.isEmpty()) {
            all.add("Slack in the drive is allowed " + Angle.text(TimingInstruments.SLACK_DEG)
                    + " either way, turned forward only (common practice, no source).");
        }
        return all;
    }
}
