package gudgeon.rebuild.runin;

import gudgeon.mechanics.crank.PistonSpeed;
import gudgeon.rebuild.book.RunningIn.Stage;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.sentence.Amount;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A stage of running in as the build has it.
 *
 * @param stage the stage of the scheme
 * @param strokeMm stroke of the engine in mm, where the book has it
 * @param runs the runs in it, in order
 * @param over number of the entry with which it was over, 0 while it is not
 * @param works what is done after it
 */
public record StageNow(Stage stage, OptionalDouble strokeMm, List<Told<RanIn>> runs, long over, List<Work> works) {
    /** Engine speeds are read off a needle: a limit is rounded down to this many turns a minute. */
    private static final int READABLE_RPM = 50;

    private static final double ROUNDING = 1e-9;

    public StageNow {
        runs = List.copyOf(runs);
        works = List.copyOf(works);
    }

    /** Number of the run with which a stage is over: it has run for its time and was let go cold as often as wanted; else 0. */
    static long over(Stage stage, List<Told<RanIn>> runs) {
        int minutes = 0;
        int heats = 0;
        for (Told<RanIn> run : runs) {
            minutes += run.fact().minutes();
            heats += run.fact().cooled() ? 1 : 0;
            if (minutes >= stage.minutes() && heats >= stage.heats()) {
                return run.number();
            }
        }
        return 0;
    }

    /** Minutes run in it. */
    public int minutes() {
        return runs.stream().mapToInt(run -> run.fact().minutes()).sum();
    }

    /** How often it was let go cold in it. */
    public int heats() {
        return (int) runs.stream().filter(run -> run.fact().cooled()).count();
    }

    /** Whether it has run for its time, so that only what is done after it may be left. */
    public boolean isOver() {
        return over > 0;
    }

    /** What is to be done now that it is over. */
    public List<Work> due() {
        return isOver() ? works.stream().filter(work -> !work.isDone()).toList() : List.of();
    }

    /** Whether it is over and all is done after it. */
    public boolean isDone() {
        return isOver() && due().isEmpty();
    }

    /** The greatest engine speed in turns a minute: the book's, or that of its mean piston speed, rounded down. */
    public OptionalInt mostRpm() {
        if (stage.mostRpm().isPresent() || stage.pistonSpeedMPerS().isEmpty() || strokeMm.isEmpty()) {
            return stage.mostRpm();
        }
        double rpm =
                PistonSpeed.rpm(strokeMm.getAsDouble(), stage.pistonSpeedMPerS().getAsDouble());
        return OptionalInt.of(READABLE_RPM * (int) Math.floor(rpm / READABLE_RPM + ROUNDING));
    }

    /** The greatest mean piston speed in m/s: the book's, or that of its engine speed. */
    public OptionalDouble pistonSpeedMPerS() {
        if (stage.pistonSpeedMPerS().isPresent() || stage.mostRpm().isEmpty() || strokeMm.isEmpty()) {
            return stage.pistonSpeedMPerS();
        }
        return OptionalDouble.of(
                PistonSpeed.meanMPerS(strokeMm.getAsDouble(), stage.mostRpm().getAsInt()));
    }

    /** The limits in words, such as "No more than 3000/min (mean piston speed 5.0 m/s, 984 ft/min). Load: light." */
    public String limits() {
        String speed = pistonSpeedMPerS().isPresent()
                ? metresAndFeet(pistonSpeedMPerS().getAsDouble())
                : "";
        String most = mostRpm().isPresent()
                ? "No more than " + mostRpm().getAsInt() + "/min" + (speed.isEmpty() ? "" : " (" + speed + ")") + "."
                : speed.isEmpty()
                        ? ""
                        : "No more than a " + speed + "; the book has no stroke to reckon the engine's speed from.";
        String load = stage.load().isEmpty() ? "" : " Load: " + stage.load() + ".";
        String km = stage.km().isPresent() ? " The maker gives it " + stage.km().getAsInt() + " km." : "";
        return (most + load + km).strip();
    }

    private static String metresAndFeet(double mPerS) {
        return String.format(Locale.ROOT, "mean piston speed %.1f m/s, %.0f ft/min", mPerS, mPerS * 60 / 0.3048);
    }

    /** How far it is, a sentence. */
    public String sentence() {
        String heats = stage.heats() == 0 ? "" : ", let go cold " + heats() + " of " + Amount.of(stage.heats(), "time");
        return "Run for " + Amount.time(minutes()) + " of " + Amount.time(stage.minutes()) + heats + ".";
    }
}
