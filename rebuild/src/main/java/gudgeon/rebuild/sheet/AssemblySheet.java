package gudgeon.rebuild.sheet;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An engine book as a sheet to work by: what comes first stands first, and each check as early as it can be done.
 *
 * @param title which engine
 * @param opening sentences to read before beginning
 * @param acts the steps and checks in their order
 * @param sizes what to measure on the parts, by part
 */
public record AssemblySheet(String title, List<String> opening, List<Act> acts, List<Passage> sizes) {
    public AssemblySheet {
        opening = List.copyOf(opening);
        acts = List.copyOf(acts);
        sizes = List.copyOf(sizes);
    }

    /** The sheet of a book. */
    public static AssemblySheet of(EngineBook book) {
        Structure structure = book.structure();
        List<Act> acts = new ArrayList<>();
        for (String id : structure.precedence().order()) {
            int number = acts.size() + 1;
            structure.step(id).map(step -> act(number, step, structure)).ifPresent(acts::add);
            structure.check(id).map(check -> act(number, check, structure)).ifPresent(acts::add);
        }
        return new AssemblySheet(title(book), opening(book), acts, sizes(structure));
    }

    private static String title(EngineBook book) {
        String maker = book.engine().maker();
        return book.engine().name() + (maker.isEmpty() ? "" : ", " + maker);
    }

    private static List<String> opening(EngineBook book) {
        Structure structure = book.structure();
        List<String> opening = new ArrayList<>();
        if (!book.engine().note().isEmpty()) {
            opening.add(book.engine().note());
        }
        long holdPoints = structure.checks().stream().filter(Check::isHoldPoint).count();
        opening.add(
                structure.steps().size() + " steps and " + structure.checks().size() + " checks for "
                        + structure.positions().size() + " positions; hold points: " + holdPoints + ".");
        opening.add("The maker's manual comes first, and so do local rules and licensed practice.");
        opening.add("At a hold point work stops until the check has passed, for what it proves is covered next.");
        return opening;
    }

    private static Act act(int number, Step step, Structure structure) {
        return new Act(
                number,
                step.id(),
                Act.Kind.STEP,
                step.name(),
                step.cautions(),
                new StepPassages(step, structure).all());
    }

    private static Act act(int number, Check check, Structure structure) {
        return new Act(
                number,
                check.id(),
                check.isHoldPoint() ? Act.Kind.HOLD_POINT : Act.Kind.CHECK,
                check.name(),
                check.cautions(),
                new CheckPassages(check, structure).all());
    }

    private static List<Passage> sizes(Structure structure) {
        Map<String, List<String>> byPart = new LinkedHashMap<>();
        for (Dimension dimension : structure.dimensions()) {
            byPart.computeIfAbsent(structure.name(dimension.of()), part -> new ArrayList<>())
                    .add(size(structure, dimension));
        }
        return byPart.entrySet().stream()
                .map(part -> new Passage(part.getKey(), part.getValue()))
                .toList();
    }

    private static String size(Structure structure, Dimension dimension) {
        return (Sentence.of(dimension.name()) + " " + DimensionLine.of(structure, dimension)).strip();
    }
}
