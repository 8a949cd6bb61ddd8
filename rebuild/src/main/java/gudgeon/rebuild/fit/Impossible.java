package gudgeon.rebuild.fit;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says which of the sizes changed on the spot can't be. */
final class Impossible {
    private Impossible() {}

    /** The refusal of a choice whose sizes can't be put together, each changed size that can't be by itself named. */
    static UnknownChoice of(Geometry book, Choice choice, IllegalArgumentException cause) {
        List<String> sentences = new ArrayList<>();
        choice.changed().forEach((path, value) -> {
            Size size = book.size(path).orElseThrow();
            alone(book, choice, path, value)
                    .ifPresent(why -> sentences.add("The " + size.label() + " can't be " + value + " "
                            + size.unit().symbol() + " here: " + why + "."));
        });
        if (sentences.isEmpty()) {
            sentences.add("These sizes can't be put together: " + cause.getMessage() + ".");
        }
        return new UnknownChoice(sentences);
    }

    private static Optional<String> alone(Geometry book, Choice choice, String path, double value) {
        Choice one = new Choice(
                choice.pistonId(),
                choice.gasketId(),
                choice.teethMoved(),
                choice.valveClearanceMm(),
                choice.turned(),
                Map.of(path, value));
        try {
            Model model = new Model(Tried.find(book, one));
            model.topEnd(model.values(), false);
            return Optional.empty();
        } catch (IllegalArgumentException impossible) {
            return Optional.of(String.valueOf(impossible.getMessage()));
        }
    }
}
