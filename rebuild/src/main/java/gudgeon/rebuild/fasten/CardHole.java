package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A hole of a joint's card.
 *
 * @param turn when its fastener is tightened, from 1
 * @param hole the hole
 */
public record CardHole(int turn, HoleNow hole) {
    /** Where it is; empty where nobody said. */
    public Optional<Point> at() {
        return hole.at();
    }

    /** Diameter in mm that its fastener just pushes through; empty where its thread is not known. */
    public OptionalDouble throughMm() {
        return HoleSizes.thread(hole.thread())
                .map(thread -> OptionalDouble.of(thread.majorMm()))
                .orElse(OptionalDouble.empty());
    }

    /** Its fastener in short, such as "M6 × 40"; a question mark stands for what is not known. */
    public String fastener() {
        return thread() + " × " + length();
    }

    private String thread() {
        return hole.fastener()
                .map(ForHole::thread)
                .filter(text -> !text.isEmpty())
                .or(() -> Optional.of(hole.thread()).filter(text -> !text.isEmpty()))
                .orElse("?");
    }

    private String length() {
        return hole.fastener()
                .filter(one -> !one.written().isEmpty())
                .map(one -> one.length().map(CardHole::number).orElse(one.written()))
                .or(() -> hole.makersLength().map(CardHole::number))
                .orElse("?");
    }

    /** Who says so, such as "as it came out". */
    public String says() {
        return hole.fastener()
                .filter(one -> !one.written().isEmpty())
                .map(one -> one.cameOut() ? "as it came out" : "chosen")
                .orElse(hole.makersLength().isPresent() ? "by the book" : "length not known");
    }

    /** What else its place asks for, in words; may be empty. */
    public String besides() {
        List<String> words = new ArrayList<>();
        if (hole.book().kind() != Hole.Kind.SCREW) {
            words.add(hole.book().kind().words());
        }
        if (hole.book().leftHand()) {
            words.add("left-hand thread");
        }
        if (hole.book().dowel()) {
            words.add("dowel");
        }
        if (throughMm().isEmpty()) {
            words.add("thread not known, so the place only is marked");
        }
        return String.join(", ", words);
    }

    private static String number(Quantity length) {
        return WrittenTorque.number(length.value());
    }
}
