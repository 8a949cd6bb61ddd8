package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A scheme of running in.
 *
 * @param source where it comes from
 * @param stages its stages, in order
 */
public record RunningIn(String source, List<Stage> stages) {
    public RunningIn {
        stages = List.copyOf(stages);
    }

    /** The stage of that id. */
    public Optional<Stage> stage(String id) {
        return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
    }

    /**
     * One stage of it.
     *
     * @param id its name in the book
     * @param name what a fitter calls it
     * @param minutes how long the engine runs in it, at least, from 1
     * @param heats how often it is warmed and let go cold in it, from 0
     * @param km distance at which it is over as well, where the maker gives one
     * @param load how hard it may work, in words; may be empty
     * @param mostRpm the greatest engine speed in turns a minute, where the book gives one
     * @param pistonSpeedMPerS the greatest mean piston speed in m/s, where the book gives that
     * @param instructions how it is driven, sentences
     * @param then what is done after it: steps, checks, joints to tighten again and fluids to change, by id
     */
    public record Stage(
            String id,
            String name,
            int minutes,
            int heats,
            OptionalInt km,
            String load,
            OptionalInt mostRpm,
            OptionalDouble pistonSpeedMPerS,
            List<String> instructions,
            List<String> then) {
        public Stage {
            instructions = List.copyOf(instructions);
            then = List.copyOf(then);
        }
    }
}
