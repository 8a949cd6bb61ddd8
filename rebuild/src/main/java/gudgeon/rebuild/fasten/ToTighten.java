package gudgeon.rebuild.fasten;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.stream.Stream;

/**
 * A joint that nobody may forget.
 *
 * @param joint the joint
 * @param why why it is to be looked at
 * @param sentence where it stands, a sentence
 */
public record ToTighten(JointNow joint, Why why, String sentence) {
    /** Why a joint is to be looked at. */
    public enum Why {
        HALF("Half tightened"),
        AGAIN("Tighten again");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /** Those of a build: half tightened ones first, then those that are tight and are to be tightened again. */
    public static List<ToTighten> of(Build build) {
        List<Tightness> all = JointNow.all(build).stream().map(Tightness::of).toList();
        return Stream.concat(
                        all.stream().filter(Tightness::isHalfDone).map(ToTighten::half),
                        all.stream().filter(ToTighten::isDueAgain).map(ToTighten::again))
                .toList();
    }

    private static boolean isDueAgain(Tightness tightness) {
        JointNow joint = tightness.joint();
        return tightness.isTight()
                && !joint.book().again().isEmpty()
                && joint.tightenedAgain().isEmpty();
    }

    private static ToTighten half(Tightness tightness) {
        return new ToTighten(tightness.joint(), Why.HALF, tightness.sentence());
    }

    private static ToTighten again(Tightness tightness) {
        JointNow joint = tightness.joint();
        return new ToTighten(
                joint,
                Why.AGAIN,
                "It is to be tightened again: " + Sentence.ended(joint.book().again())
                        + " Say so on its page when it is done.");
    }
}
