package gudgeon.rebuild.book;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A point to be looked at before any engine is started for the first time. Common practice, no source. */
public enum StartPoint {
    PRIMING(
            "Oil driven round until it is seen",
            "Plug out and ignition off, turn by hand or starter until oil is seen at the top end or comes back to the tank."
                    + " None within a minute or two: stop, and look at pump and gaskets."),
    TWO_TURNS(
            "Two full turns by hand",
            "Plug out, slowly, the way it runs. Feel for an even drag, and for the valve springs that hinder and help."
                    + " A hard stop, a tight place, a click or a scrape: do not force it, and look for the cause."),
    GEARS(
            "Every gear, and neutral, by hand",
            "Turn the output shaft while you shift up and down. Each gear goes in and stays, and neutral turns free."),
    SPARK(
            "A spark seen, and none with the ignition off",
            "Plug on the lead, earthed and away from the open plug hole, and no petrol about. Hold nothing in the hand."),
    THROTTLE(
            "Throttle shuts by itself",
            "Open it and let go, with the bars to the left and to the right where it has bars. It shuts each time."),
    KILL_SWITCH("Stop switch tried", "It takes the spark away. Know where it is without looking."),
    EXTINGUISHER("Fire extinguisher at hand", "One for petrol, in date, within reach, and not behind the engine."),
    AIR(
            "Outdoors, exhaust led away from doors and windows",
            "Exhaust gas kills in minutes, even with a door open. An alarm for it is no leave to run it inside."),
    TOOLS(
            "Tools, rags and screws counted",
            "All that was used is in its place, nothing lies on the engine, and guards are on.");

    private final String what;
    private final String look;

    StartPoint(String what, String look) {
        this.what = what;
        this.look = look;
    }

    /** What is wanted, as a heading. */
    public String what() {
        return what;
    }

    /** What to do and what to feel or see, sentences. */
    public String look() {
        return look;
    }

    /** Its name in books and entries, such as {@code two-turns}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The one of that name. */
    public static Optional<StartPoint> of(String word) {
        return Stream.of(values()).filter(point -> point.word().equals(word)).findFirst();
    }

    static List<String> allWords() {
        return Stream.of(values()).map(StartPoint::word).toList();
    }
}
