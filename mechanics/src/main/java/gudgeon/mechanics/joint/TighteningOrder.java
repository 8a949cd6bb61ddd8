package gudgeon.mechanics.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** In what order the fasteners of a joint are tightened, so that it comes down evenly. Holes count from 0. */
public final class TighteningOrder {
    /** Holes whose distances from the middle differ by less than this share of the greatest are equally far out; common practice. */
    private static final double BAND = 0.15;

    private TighteningOrder() {}

    /**
     * The star, or cross, of holes that are spaced evenly on a circle and numbered round it: each next one lies across from the last
     * or halfway between those done. For 4, 8, 12, 16, 20 and 24 holes the sequences of ASME PCC-1, table 2, of its cross pattern
     * (from memory); for other numbers built the same way.
     *
     * @param holes how many, 0 or more
     * @throws IllegalArgumentException for fewer than 0
     */
    public static List<Integer> star(int holes) {
        if (holes < 0) {
            throw new IllegalArgumentException("a joint has 0 holes or more, got " + holes);
        }
        if (holes % 4 == 0) {
            int quarter = holes / 4;
            return starts(quarter).stream()
                    .flatMap(first -> IntStream.of(first, first + 2 * quarter, first + quarter, first + 3 * quarter)
                            .boxed())
                    .toList();
        }
        if (holes % 2 == 0) {
            int half = holes / 2;
            return starts(half).stream()
                    .flatMap(first -> IntStream.of(first, first + half).boxed())
                    .toList();
        }
        int step = Math.max(1, holes / 2);
        return IntStream.range(0, holes).map(i -> i * step % holes).boxed().toList();
    }

    /** With which of so many neighbours the crosses begin, so that two in succession do not lie side by side where that can be. */
    private static List<Integer> starts(int count) {
        if (count <= 3) {
            return IntStream.range(0, count).boxed().toList();
        }
        int stride = count % 2 == 0 ? count / 2 : 2;
        return IntStream.range(0, stride)
                .flatMap(first -> IntStream.iterate(first, i -> i < count, i -> i + stride))
                .boxed()
                .toList();
    }

    /**
     * The order of holes on a circle, beginning with the first: by {@link #star} of their places round it.
     *
     * @param holes where they lie
     */
    public static List<Integer> ring(List<HolePlace> holes) {
        HolePlace middle = middle(holes);
        double first = holes.isEmpty() ? 0 : angle(middle, holes.get(0));
        List<Integer> round = IntStream.range(0, holes.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> clockwise(first, angle(middle, holes.get(i)))))
                .toList();
        return star(holes.size()).stream().map(round::get).toList();
    }

    /**
     * The order of a cover's or a head's holes, from the middle outwards in a spiral; of those equally far out each next one lies as
     * far as may be from the last. Common practice, no source.
     *
     * @param holes where they lie
     */
    public static List<Integer> outwards(List<HolePlace> holes) {
        HolePlace middle = middle(holes);
        double greatest = holes.stream().mapToDouble(middle::fromMm).max().orElse(0);
        List<Integer> left = new ArrayList<>(IntStream.range(0, holes.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> middle.fromMm(holes.get(i))))
                .toList());
        List<Integer> order = new ArrayList<>();
        while (!left.isEmpty()) {
            double end = middle.fromMm(holes.get(left.get(0))) + BAND * greatest;
            List<Integer> band = left.stream()
                    .takeWhile(i -> middle.fromMm(holes.get(i)) <= end)
                    .toList();
            left.removeAll(band);
            crosswise(holes, middle, new ArrayList<>(band), order);
        }
        return order;
    }

    private static void crosswise(List<HolePlace> holes, HolePlace middle, List<Integer> band, List<Integer> order) {
        while (!band.isEmpty()) {
            HolePlace last = order.isEmpty() ? middle : holes.get(order.get(order.size() - 1));
            Integer next = order.isEmpty()
                    ? band.get(0)
                    : band.stream()
                            .max(Comparator.comparingDouble(i -> last.fromMm(holes.get(i))))
                            .orElseThrow();
            band.remove(next);
            order.add(next);
        }
    }

    private static HolePlace middle(List<HolePlace> holes) {
        return new HolePlace(
                holes.stream().mapToDouble(HolePlace::xMm).average().orElse(0),
                holes.stream().mapToDouble(HolePlace::yMm).average().orElse(0));
    }

    private static double angle(HolePlace middle, HolePlace hole) {
        return Math.atan2(hole.yMm() - middle.yMm(), hole.xMm() - middle.xMm());
    }

    /** How far round clockwise, from 0 to one turn; the least bit short of a turn is none. */
    private static double clockwise(double from, double to) {
        double turn = 2 * Math.PI;
        double round = ((from - to) % turn + turn) % turn;
        return turn - round < 1e-9 ? 0 : round;
    }
}
