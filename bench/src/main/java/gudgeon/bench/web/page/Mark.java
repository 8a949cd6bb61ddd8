package gudgeon.bench.web.page;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.OrderLine;
import gudgeon.rebuild.source.SizeCompared;
import java.util.Locale;

/** How something stands: a word and a shape of its own, so that colour is never needed to tell. */
public enum Mark {
    OPEN("open", "M3 3h14v14H3z"),
    BEGUN("begun", "M3 3h14v14H3zM3 10h14v7H3z"),
    DONE("done", "M3 3h14v14H3zM6 10l3 3 5-6"),
    PASSED("passed", "M10 2.5a7.5 7.5 0 1 0 .01 0zM6.5 10l2.5 2.5 4.5-5"),
    FAILED("failed", "M10 2.5a7.5 7.5 0 1 0 .01 0zM7 7l6 6M13 7l-6 6"),
    WAIVED("waived", "M10 2.5a7.5 7.5 0 1 0 .01 0zM6 10h8"),
    VOID("void again", "M10 2.5a7.5 7.5 0 1 0 .01 0zM4.7 15.3L15.3 4.7"),
    UNDONE("not done", "M10 2.5a7.5 7.5 0 1 0 .01 0z"),
    HOLD("hold point", "M4 2.5h4v15H4zM12 2.5h4v15h-4z"),
    WAIT("waits", "M5 2.5h10L10 10l5 7.5H5L10 10z"),
    STOP("stop", "M6.5 2h7L18 6.5v7L13.5 18h-7L2 13.5v-7zM6 10h8"),
    LOOK("look", "M10 2l8.5 15.5h-17zM10 8v4M10 14.2v.6"),
    OUT("out", "M3 3h14v14H3zM3 3l14 14"),
    IN("in place", "M3 3h14v14H3zM7 7h6v6H7z"),
    AS_FOUND("as found", "M3 3h14v14H3zM8 8h4v4H8z"),
    IN_LIMITS("in limits", "M2 4v12M18 4v12M6 10l3 3 5-6"),
    OUT_OF_LIMITS("out of limits", "M2 4v12M13 4v12M16 7l3 3-3 3M5 10h14"),
    UNPROVEN("unproven", "M2 4v12M18 4v12M7.5 7.5a2.5 2.5 0 1 1 3.5 2.4c-.7.3-1 .8-1 1.6M10 14.2v.6"),
    NO_LIMITS("no limits known", "M5 10h10M5 7v6M15 7v6"),
    NOT_MEASURED("not measured", "M2 4v12M18 4v12");

    private final String word;
    private final String path;

    Mark(String word, String path) {
        this.word = word;
        this.path = path;
    }

    /** The word as a person reads it. */
    public String word() {
        return word;
    }

    /** The outline of its shape in a square of 20 by 20. */
    public String path() {
        return path;
    }

    /** Its name for the style sheet. */
    public String style() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How a step stands. */
    public static Mark of(StepState step) {
        return switch (step.status()) {
            case OPEN -> OPEN;
            case BEGUN -> BEGUN;
            case STOPPED -> LOOK;
            case DONE -> DONE;
            case AS_FOUND -> AS_FOUND;
        };
    }

    /** How a check stands. */
    public static Mark of(CheckState check) {
        return switch (check.status()) {
            case OPEN -> UNDONE;
            case PASSED -> PASSED;
            case FAILED -> FAILED;
            case WAIVED -> WAIVED;
            case VOID -> VOID;
            case AS_FOUND -> AS_FOUND;
        };
    }

    /** How a position stands. */
    public static Mark of(Place place) {
        return switch (place.status()) {
            case OUT -> OUT;
            case IN -> IN;
            case PARTLY_IN -> BEGUN;
            case AS_FOUND -> AS_FOUND;
        };
    }

    /** How a position of an order stands. */
    public static Mark of(OrderLine.State line) {
        return switch (line) {
            case COME -> DONE;
            case ON_ITS_WAY -> WAIT;
            case LATE, SHORT, TOO_MANY, NOT_ORDERED -> LOOK;
        };
    }

    /** What the inspection of a part that came comes to. */
    public static Mark of(Inspection.Outcome outcome) {
        return switch (outcome) {
            case AGREES -> PASSED;
            case REFUSE -> FAILED;
            case OPEN -> UNDONE;
        };
    }

    /** How a size of a part that came stands. */
    public static Mark of(SizeCompared.Agrees size) {
        return switch (size) {
            case YES -> PASSED;
            case NO -> FAILED;
            case UNPROVEN -> LOOK;
            case NOTHING_TO_COMPARE -> WAIVED;
            case NOT_MEASURED -> UNDONE;
        };
    }

    /** How bad an alarm is. */
    public static Mark of(Alarm alarm) {
        return switch (alarm.severity()) {
            case STOP -> STOP;
            case LOOK -> LOOK;
        };
    }

    /** What a measured size proves. */
    public static Mark of(Outcome outcome) {
        return switch (outcome) {
            case IN_LIMITS -> IN_LIMITS;
            case OUT_OF_LIMITS -> OUT_OF_LIMITS;
            case UNPROVEN -> UNPROVEN;
            case NO_LIMITS -> NO_LIMITS;
            case NOT_MEASURED -> NOT_MEASURED;
        };
    }
}
