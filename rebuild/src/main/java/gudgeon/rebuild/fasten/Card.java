package gudgeon.rebuild.fasten;

import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The card of a joint, to push its fasteners through.
 *
 * @param joint the joint
 * @param tightness its order and passes
 * @param holes its holes, the first to be tightened first
 */
public record Card(JointNow joint, Tightness tightness, List<CardHole> holes) {
    public Card {
        holes = List.copyOf(holes);
    }

    /** That of a joint. */
    public static Card of(JointNow joint) {
        Tightness tightness = Tightness.of(joint);
        List<String> order = tightness.order().holes();
        List<CardHole> holes = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            holes.add(new CardHole(i + 1, joint.hole(order.get(i)).orElseThrow()));
        }
        return new Card(joint, tightness, holes);
    }

    /** Its name, with a capital. */
    public String title() {
        return Sentence.capital(joint.book().name());
    }

    /** The holes that can be drawn. */
    public List<CardHole> placed() {
        return holes.stream().filter(hole -> hole.at().isPresent()).toList();
    }

    /** Why it can't be drawn and what to do; empty when it can. */
    public Optional<String> refusal() {
        return placed().isEmpty()
                ? Optional.of(title() + " has no hole with a place, so there is nothing to draw. Say where its"
                        + " holes lie first: by numbers, or from a photo.")
                : Optional.empty();
    }

    /** What is to be known of it, a sentence each. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add("Seen from outside. Push each fastener through its circle as it comes out.");
        sentences.add("The large number is its turn when tightening, then thread and length in mm. "
                + tightness.order().why());
        sentences.add(Sentence.capital(Sentence.list(
                        tightness.passes().stream().map(Pass::name).toList()))
                + "; all in by hand first.");
        List<String> unplaced = holes.stream()
                .filter(hole -> hole.at().isEmpty())
                .map(hole -> hole.hole().id())
                .toList();
        if (!unplaced.isEmpty()) {
            sentences.add("Not drawn, because nobody said where they are: " + Sentence.list(unplaced) + ".");
        }
        return sentences;
    }
}
