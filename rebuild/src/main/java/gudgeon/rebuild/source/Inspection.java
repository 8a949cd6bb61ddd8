package gudgeon.rebuild.source;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.PartSize;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.source.SizeCompared.Agrees;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A part that came, held against the old one, the book, the order and the parts it touches, before it is fitted.
 *
 * @param position the position it is for
 * @param name what a fitter calls the position
 * @param part the part's name in the build
 * @param sizes what to compare, in the order that finds trouble soonest: that of the book
 * @param looks what is worth comparing by eye or by laying one on the other, in the book's words, and was not yet
 * @param differing what was compared so and does not agree
 * @param outcome what it comes to
 * @param sentence the same as a sentence, and what to do next
 */
public record Inspection(
        String position,
        String name,
        String part,
        List<SizeCompared> sizes,
        List<String> looks,
        List<String> differing,
        Outcome outcome,
        String sentence) {
    public Inspection {
        sizes = List.copyOf(sizes);
        looks = List.copyOf(looks);
        differing = List.copyOf(differing);
    }

    /** What an inspection comes to. */
    public enum Outcome {
        AGREES("agrees"),
        REFUSE("does not agree"),
        OPEN("not all compared");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /**
     * The inspection of a part entered for a position.
     *
     * @param part its name
     * @return empty where the book has no such position, or no such part was entered for it
     */
    public static Optional<Inspection> of(Build build, String position, String part) {
        return build.structure()
                .position(position)
                .flatMap(known -> build.part(position, part)
                        .filter(one -> !one.name().isEmpty())
                        .map(one -> of(build, known, one)));
    }

    /** The inspections of all parts entered and neither spent nor fitted, in the book's order. */
    public static List<Inspection> all(Build build) {
        List<Inspection> all = new ArrayList<>();
        for (Position position : build.structure().positions()) {
            boolean isIn = build.place(position.id()).isFilled();
            build.parts(position.id()).stream()
                    .filter(part -> !part.spent())
                    .filter(part -> !isIn || !build.place(position.id()).part().equals(part.name()))
                    .forEach(part -> all.add(of(build, position, part)));
        }
        return all;
    }

    /** What does not agree, by its label or in the book's words. */
    public List<String> wrong() {
        return wrong(sizes, differing);
    }

    private static List<String> wrong(List<SizeCompared> sizes, List<String> differing) {
        List<String> wrong = new ArrayList<>(labels(sizes, Agrees.NO));
        wrong.addAll(differing);
        return wrong;
    }

    private static Inspection of(Build build, Position position, Part part) {
        SizesCompared compared = new SizesCompared(build, position, part);
        List<SizeCompared> sizes = new ArrayList<>();
        build.structure().dimensions().stream()
                .filter(dimension -> dimension.of().equals(position.id()))
                .filter(dimension -> dimension.inspect() && dimension.isRead())
                .forEach(dimension -> sizes.add(compared.of(dimension)));
        PartSize.of(build, position).stream()
                .filter(size -> build.structure().dimensions().stream()
                        .noneMatch(dimension -> dimension.of().equals(position.id())
                                && dimension.key().equals(size.key())))
                .forEach(size -> sizes.add(compared.of(size)));
        List<String> looks = position.compare().stream()
                .filter(what -> !part.compared().contains(what))
                .toList();
        Outcome outcome = outcome(sizes, looks, part);
        return new Inspection(
                position.id(),
                position.name(),
                part.name(),
                sizes,
                looks,
                part.differing(),
                outcome,
                sentence(position, part, sizes, looks, outcome));
    }

    /** What was compared as a whole, and agreed, stands for what was only to be looked at. */
    private static Outcome outcome(List<SizeCompared> sizes, List<String> looks, Part part) {
        if (!part.agrees() || sizes.stream().anyMatch(size -> size.agrees() == Agrees.NO)) {
            return Outcome.REFUSE;
        }
        boolean looked = looks.isEmpty() || !part.compared().isEmpty();
        boolean measured = sizes.stream()
                .noneMatch(size -> size.agrees() == Agrees.NOT_MEASURED || size.agrees() == Agrees.UNPROVEN);
        return looked && measured ? Outcome.AGREES : Outcome.OPEN;
    }

    private static String sentence(
            Position position, Part part, List<SizeCompared> sizes, List<String> looks, Outcome outcome) {
        String which = "The " + position.name() + " '" + part.name() + "'";
        List<String> wrong = wrong(sizes, part.differing());
        List<String> left = new ArrayList<>(labels(sizes, Agrees.NOT_MEASURED));
        left.addAll(part.compared().isEmpty() ? looks : List.of());
        List<String> unproven = labels(sizes, Agrees.UNPROVEN);
        return switch (outcome) {
            case AGREES -> which + " agrees in all that was to be compared.";
            case REFUSE ->
                which + " does not agree: " + Sentence.list(wrong)
                        + ". Do not fit it; write to the seller, or prove that the difference does no harm.";
            case OPEN ->
                left.isEmpty()
                        ? which + " is not proved: " + Sentence.list(unproven)
                                + ". Measure again with a finer instrument."
                        : which + ": " + Amount.of(left.size(), "thing") + " to compare before it goes in, first "
                                + left.get(0) + ".";
        };
    }

    private static List<String> labels(List<SizeCompared> sizes, Agrees agrees) {
        return sizes.stream()
                .filter(size -> size.agrees() == agrees)
                .map(SizeCompared::label)
                .toList();
    }
}
