package gudgeon.bench.web.options;

import gudgeon.bench.web.page.Mark;
import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.decide.Mate;
import gudgeon.rebuild.decide.Option;
import gudgeon.rebuild.journal.Disposition;
import java.util.Optional;

/** Which shape stands beside the words of this page, so that colour is never needed to tell. */
public final class Shape {
    private Shape() {}

    /** Of a gap's verdict. */
    public static Mark of(Verdict verdict) {
        return switch (verdict) {
            case CLEARS -> Mark.PASSED;
            case CLOSE -> Mark.LOOK;
            case TOUCHES -> Mark.STOP;
            case UNPROVEN -> Mark.UNPROVEN;
        };
    }

    /** Of whether parts go with each other. */
    public static Mark of(Mate mate) {
        return switch (mate.goes()) {
            case TOGETHER -> Mark.PASSED;
            case NOT_TOGETHER -> Mark.STOP;
            case UNPROVEN, NOT_KNOWN -> Mark.UNPROVEN;
            case NO_LIMITS -> Mark.LOOK;
        };
    }

    /** Of what came of an option. */
    public static Mark of(Option.State state) {
        return switch (state) {
            case OPEN -> Mark.OPEN;
            case TAKEN -> Mark.DONE;
            case DROPPED -> Mark.OUT;
        };
    }

    /** Of what is proposed for a part. */
    public static Mark of(Optional<Disposition> proposed) {
        return proposed.map(one -> switch (one) {
                    case USE_AGAIN -> Mark.PASSED;
                    case CLEAN -> Mark.BEGUN;
                    case REPAIR -> Mark.LOOK;
                    case REPLACE -> Mark.OUT;
                })
                .orElse(Mark.UNPROVEN);
    }
}
