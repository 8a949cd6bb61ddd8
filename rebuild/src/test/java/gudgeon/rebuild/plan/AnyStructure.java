package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Check.How;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** Structures of any shape: a seed makes one. */
final class AnyStructure {
    private final Random random;
    private final List<Position> positions = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();

    private AnyStructure(long seed) {
        random = new Random(seed);
    }

    /** One without cycles; steps and checks stand in the book in an order that can't always be followed. */
    static Structure of(long seed, int steps, int checks) {
        Structure structure;
        long next = seed;
        do {
            structure = new AnyStructure(next++).made(steps, checks, false);
        } while (structure.precedence().shortestCycle().isPresent());
        return structure;
    }

    /** One that may have cycles. */
    static Structure maybeInCircles(long seed, int steps, int checks) {
        return new AnyStructure(seed).made(steps, checks, true);
    }

    /**
     * One in which each of several covers lies over some of the parts, and late checks of some of the parts need some of the covers,
     * so that they can't all come before what covers their suspects.
     */
    static Structure contested(long seed, int covers, int checks) {
        return new AnyStructure(seed).coveredAndLate(covers, checks);
    }

    private Structure coveredAndLate(int covers, int checkCount) {
        for (int p = 0; p < covers; p++) {
            positions.add(position("p" + p));
            positions.add(position("q" + p));
        }
        steps.add(step(
                "s",
                positions.stream()
                        .map(Position::id)
                        .filter(id -> id.startsWith("p"))
                        .toList(),
                List.of()));
        for (int s = 0; s < covers; s++) {
            steps.add(step("s" + s, List.of("q" + s), some("p", covers, covers)));
        }
        for (int c = 0; c < checkCount; c++) {
            checks.add(check("c" + c, some("p", covers, 3), List.of(), some("s", covers, covers), true));
        }
        return new Structure(positions, List.of(), steps, checks, List.of(), List.of());
    }

    private Structure made(int stepCount, int checkCount, boolean backwards) {
        int perStep = 2;
        for (int p = 0; p < perStep * stepCount; p++) {
            positions.add(position("p" + p));
        }
        int[] place = IntStream.range(0, stepCount)
                .boxed()
                .sorted((a, b) -> random.nextInt(3) - 1 == 0 ? 0 : a - b)
                .mapToInt(i -> i)
                .toArray();
        for (int s = 0; s < stepCount; s++) {
            int reach = backwards && random.nextInt(4) == 0 ? stepCount : s;
            steps.add(step(place[s], perStep, reach, stepCount));
        }
        for (int c = 0; c < checkCount; c++) {
            int parts = perStep * stepCount;
            checks.add(check(
                    "c" + c,
                    some("p", parts, parts),
                    some("p", parts, 2 * parts),
                    some("s", stepCount, stepCount),
                    random.nextInt(3) > 0));
        }
        return new Structure(positions, List.of(), steps, checks, List.of(), List.of());
    }

    private Step step(int number, int perStep, int reach, int all) {
        List<String> fits = random.nextInt(5) == 0
                ? List.of()
                : IntStream.range(perStep * number, perStep * (number + 1))
                        .mapToObj(p -> "p" + p)
                        .toList();
        return new Step(
                "s" + number,
                "step " + number,
                List.of(),
                fits,
                some("p", perStep * reach, 4 * all),
                some("s", reach, 2 * all),
                some("p", perStep * reach, 3 * all),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                random.nextInt(60),
                0,
                List.of(),
                new Where(1, 1));
    }

    private Step step(String id, List<String> fits, List<String> covers) {
        return new Step(
                id,
                "step " + id,
                List.of(),
                fits,
                List.of(),
                List.of(),
                covers,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                random.nextInt(60),
                0,
                List.of(),
                new Where(1, 1));
    }

    private Check check(String id, List<String> clears, List<String> with, List<String> needs, boolean late) {
        return new Check(
                id,
                "check " + id,
                random.nextBoolean() ? How.SEEN : How.TRIED,
                List.of(),
                clears,
                with,
                needs,
                List.of(),
                some("p", positions.size(), 3 * positions.size()),
                false,
                random.nextInt(4) == 0 && !late ? some("s", steps.size(), steps.size()) : List.of(),
                Optional.empty(),
                late ? "It can't be seen before." : "",
                List.of(),
                random.nextInt(20),
                List.of(),
                new Where(1, 1));
    }

    private Position position(String id) {
        return new Position(
                id,
                "part " + id,
                1,
                List.of(),
                random.nextInt(3) == 0,
                false,
                "",
                List.of(),
                "",
                Optional.empty(),
                Optional.empty(),
                "",
                List.of(),
                "",
                new Where(1, 1));
    }

    /** Of the first so many, each with a chance of two in so many. */
    private List<String> some(String letter, int count, int in) {
        return IntStream.range(0, count)
                .filter(i -> random.nextInt(in) < 2)
                .mapToObj(i -> letter + i)
                .toList();
    }
}
