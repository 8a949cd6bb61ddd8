package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact.Undone;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Loosened;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WitnessMarked;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Lays what the journal says of one joint over what the book says. */
final class JointFold {
    private final Joint book;
    private final List<Told<Fastening>> told;
    private final Optional<Told<JointMapped>> mapped;
    private final long loose;

    JointFold(Build build, Joint book) {
        this.book = book;
        told = build.told(Fastening.class, book.id());
        mapped = last(JointMapped.class);
        loose = Math.max(number(last(Loosened.class)), undone(build, book));
    }

    JointNow joint() {
        List<Point> outline = mapped.map(found -> found.fact().outline())
                .filter(corners -> !corners.isEmpty())
                .orElse(book.outline());
        return new JointNow(
                book,
                outline,
                holes(),
                mapped,
                last(Lubricated.class).map(found -> found.fact().how()),
                last(WrenchChosen.class),
                last(TightenedAgain.class).filter(again -> again.number() > loose),
                loose);
    }

    /** A step that tightens the joint, undone since, loosened it. */
    private static long undone(Build build, Joint book) {
        return build.structure().steps().stream()
                .filter(step -> step.tightens().contains(book.id()))
                .mapToLong(step -> build.lastTold(step.id(), fact -> fact instanceof Undone))
                .max()
                .orElse(0);
    }

    private List<HoleNow> holes() {
        Map<String, Point> places = mapped.map(found -> found.fact().holes()).orElse(Map.of());
        List<Hole> holes = new ArrayList<>(book.holes());
        places.keySet().stream()
                .filter(id -> book.hole(id).isEmpty())
                .sorted(Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()))
                .forEach(id -> holes.add(onlyMapped(id)));
        return holes.stream().map(hole -> now(hole, places)).toList();
    }

    private static Hole onlyMapped(String id) {
        return new Hole(
                id,
                Optional.empty(),
                Hole.Kind.SCREW,
                "",
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                Optional.empty(),
                Optional.empty(),
                "",
                false,
                Optional.empty(),
                "");
    }

    private HoleNow now(Hole hole, Map<String, Point> places) {
        String id = hole.id();
        List<HoleMeasured> measured = of(HoleMeasured.class)
                .map(Told::fact)
                .filter(fact -> fact.hole().equals(id))
                .toList();
        List<Told<Tightened>> tightened = of(Tightened.class)
                .filter(told -> told.fact().hole().equals(id) && told.number() > loose)
                .toList();
        long tight = tightened.stream().mapToLong(Told::number).max().orElse(loose);
        return new HoleNow(
                hole,
                Optional.ofNullable(places.get(id)).or(hole::at),
                last(measured, HoleMeasured::thread).orElse(hole.thread()),
                size(measured, HoleMeasured::stack, hole.stack()),
                size(measured, HoleMeasured::depth, hole.depth()),
                last(measured, HoleMeasured::into).orElse(hole.into()),
                fastener(id),
                tightened,
                of(WitnessMarked.class)
                        .anyMatch(told ->
                                told.number() > tight && told.fact().holes().contains(id)));
    }

    private static Optional<String> last(List<HoleMeasured> measured, Function<HoleMeasured, String> what) {
        return measured.stream().map(what).filter(text -> !text.isEmpty()).reduce((earlier, later) -> later);
    }

    /** What was measured last and can be read, else the book's. */
    private static Optional<Quantity> size(
            List<HoleMeasured> measured, Function<HoleMeasured, String> what, Optional<Size> book) {
        return measured.stream()
                .flatMap(fact -> TypedSize.quantity(Unit.MM, what.apply(fact)).stream())
                .reduce((earlier, later) -> later)
                .or(() -> book.map(Size::quantity));
    }

    private Optional<ForHole> fastener(String hole) {
        Stream<ForHole> out = of(FastenerOut.class)
                .filter(told -> told.fact().hole().equals(hole))
                .map(ForHole::of);
        Stream<ForHole> given = of(HoleGiven.class)
                .filter(told -> told.fact().hole().equals(hole))
                .map(ForHole::given);
        return Stream.concat(out, given).max(Comparator.comparingLong(ForHole::entry));
    }

    private <F extends Fastening> Stream<Told<F>> of(Class<F> kind) {
        return told.stream()
                .filter(one -> kind.isInstance(one.fact()))
                .map(one -> new Told<>(one.number(), one.at(), kind.cast(one.fact())));
    }

    private <F extends Fastening> Optional<Told<F>> last(Class<F> kind) {
        return of(kind).reduce((earlier, later) -> later);
    }

    private static long number(Optional<? extends Told<?>> told) {
        return told.map(Told::number).orElse(0L);
    }
}
