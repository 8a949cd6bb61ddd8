package gudgeon.rebuild.decide;

import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.Optional;

/**
 * All that is known of one way to go on. There is no mark for the whole of it: which of these weighs more is the person's to say.
 *
 * @param option the option; empty for the engine as its parts are now
 * @param name what it is, in words
 * @param parts what it does, position by position
 * @param bill what it costs
 * @param leadTime how long its parts and work take
 * @param figures the engine's figures with it; none where the book has none or its sizes can't go together
 * @param mates what it does to the sizes that its parts share with others
 * @param cautions what to know before money is spent
 * @param notes what was assumed and what can't be told; sentences
 */
public record Outcome(
        Optional<Option> option,
        String name,
        List<OptionPart> parts,
        Bill bill,
        LeadTime leadTime,
        List<OptionFigure> figures,
        List<Mate> mates,
        List<String> cautions,
        List<String> notes) {
    public Outcome {
        parts = List.copyOf(parts);
        figures = List.copyOf(figures);
        mates = List.copyOf(mates);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** The figure of that key. */
    public Optional<OptionFigure> figure(String key) {
        return figures.stream().filter(figure -> figure.key().equals(key)).findFirst();
    }

    /** What of it is in hand, a sentence. */
    public String inHand() {
        long here = parts.stream().filter(OptionPart::inHand).count();
        long wanted = parts.stream().filter(part -> Applied.isNew(part.line())).count();
        return wanted == 0 ? "No new part." : here + " of " + wanted + " in hand.";
    }

    /** What of it does not go together, by name; a sentence. */
    public String misfits() {
        List<String> wrong = mates.stream()
                .filter(mate -> mate.goes() == Mate.Goes.NOT_TOGETHER)
                .map(Mate::label)
                .toList();
        long open = mates.stream()
                .filter(mate -> mate.goes() == Mate.Goes.UNPROVEN || mate.goes() == Mate.Goes.NOT_KNOWN)
                .count();
        String said = wrong.isEmpty() ? "Nothing known." : Sentence.of(Sentence.list(wrong));
        return open == 0 ? said : said + " Not proven: " + open + ".";
    }
}
