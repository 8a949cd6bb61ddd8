package gudgeon.rebuild.timing;

import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.mechanics.timing.Rim;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Ignition;
import gudgeon.rebuild.book.Ignition.PointsCam;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.TypedSpark;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the points open, against the book.
 *
 * @param number number of the entry that tells it
 * @param written the reading as it was written
 * @param beforeDeg crank degrees before top dead centre, negative after
 * @param wantedDeg what the book wants, if it says so
 * @param limits how many degrees earlier than wanted it may be, negative later; empty where nobody says
 * @param crank the engine's crank, if its sizes are known
 * @param ignition what the book says of the ignition
 */
public record SparkTiming(
        long number,
        String written,
        Quantity beforeDeg,
        Optional<Double> wantedDeg,
        Optional<ToleranceInterval> limits,
        Optional<Crank> crank,
        Optional<Ignition> ignition) {
    /** By the last reading of a build; what can't be used of it is told in {@code faults}. */
    static Optional<SparkTiming> of(Build build, TimingInstruments with, List<Doubt> top, List<String> faults) {
        List<Told<IgnitionRead>> told = build.told(IgnitionRead.class, Proving.IGNITION).stream()
                .filter(one -> one.fact().what() == IgnitionSize.OPENS)
                .toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        Told<IgnitionRead> last = told.get(told.size() - 1);
        TypedSpark text = TypedSpark.of(last.fact().value());
        if (text instanceof TypedSpark.Refused refused) {
            faults.add(refused.sentence());
            return Optional.empty();
        }
        SparkAngle angle = new SparkAngle(build.book(), with, top);
        Optional<Quantity> read = angle.read(text);
        if (read.isEmpty()) {
            faults.add("'" + last.fact().value() + "' can't be turned into degrees: "
                    + (text instanceof TypedSpark.RimLength
                            ? "the book does not give the flywheel's diameter ('ignition: {flywheel: ...}')."
                            : "the book does not give stroke and rod, or the travel is more than half the stroke."));
        }
        return read.map(before -> new SparkTiming(
                last.number(),
                last.fact().value(),
                before,
                angle.wanted(),
                limits(build, angle),
                BookedCrank.of(build.book()),
                build.book().ignition()));
    }

    /** The book's ± where it has one, else what its check expects. */
    private static Optional<ToleranceInterval> limits(Build build, SparkAngle angle) {
        Optional<ToleranceInterval> booked = angle.mayBeOff().map(off -> new ToleranceInterval(-off, off));
        return booked.or(() -> build.structure().checks().stream()
                .filter(CamTiming::isSparkReadBy)
                .findFirst()
                .flatMap(Check::expect)
                .map(SparkTiming::interval));
    }

    private static ToleranceInterval interval(Expect span) {
        return new ToleranceInterval(
                span.atLeast().orElse(Double.NEGATIVE_INFINITY), span.atMost().orElse(Double.POSITIVE_INFINITY));
    }

    /** Crank degrees by which it is earlier than wanted, negative later; empty where the book does not say what it wants. */
    public Optional<Quantity> earlyDeg() {
        return wantedDeg.map(wanted -> beforeDeg.plus(-wanted));
    }

    /** How likely it lies below, within and above the limits, where there are any. */
    public Optional<Conformity> chances() {
        return earlyDeg().flatMap(early -> limits.map(span -> Conformity.of(early, span)));
    }

    /** What was read, how it stands to the book, and what to move; sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        all.add("The points open at " + written + ": " + Angle.text(beforeDeg) + " before top dead centre"
                + crank.map(one -> ", the piston " + Angle.mm(one.travelMm(-beforeDeg.value())) + " below its highest")
                        .orElse("")
                + ".");
        if (wantedDeg.isEmpty()) {
            all.add("The book does not say where they should open ('ignition: {opens: ...}').");
            return all;
        }
        double early = earlyDeg().orElseThrow().value();
        all.add("The book wants " + Angle.text(wantedDeg.get()) + ": it is " + earlyWords(early) + verdict() + ".");
        if (chances().filter(one -> one.zone() == Zone.IN).isEmpty() && shown(early) != 0) {
            all.addAll(move(early));
        }
        return all;
    }

    private String verdict() {
        return chances()
                .map(one -> switch (one.zone()) {
                    case IN -> ", in limits and proved; leave it";
                    case OUT -> ", out of limits and proved";
                    case UNPROVEN -> "; whether that is in limits is not proved";
                })
                .orElse("; nobody says how far off it may be");
    }

    private List<String> move(double early) {
        List<String> all = new ArrayList<>();
        double amount = Math.abs(early);
        Optional<PointsCam> points = ignition.flatMap(Ignition::points);
        String way = early > 0 ? "the way their cam turns" : "against the way their cam turns";
        String turning = ignition.flatMap(Ignition::turns)
                .filter(turns -> points.filter(PointsCam.FLYWHEEL::equals).isPresent())
                .map(turns -> ", that is "
                        + (early > 0 ? turns.word() : opposite(turns).word()) + " seen from the flywheel's face")
                .orElse("");
        all.add("Set the points gap first, for it moves this too. Then turn the plate that carries the points " + way
                + turning
                + ", by "
                + points.map(one -> Angle.text(amount / one.crankTurns()))
                        .orElse(Angle.text(amount)
                                + " where their cam turns with the crank, half of that where it turns at half the"
                                + " crank's speed")
                + ": they then open " + (early > 0 ? "later" : "earlier") + ".");
        ignition.flatMap(Ignition::flywheel)
                .ifPresent(wheel ->
                        all.add("On the flywheel's rim of " + wheel.unit().figure(wheel.value()) + " that is "
                                + Angle.mm(new Rim(wheel.value()).arcMm(amount)) + "."));
        all.add("Where the plate has no slots, a " + (early > 0 ? "narrower" : "wider") + " gap opens them "
                + (early > 0 ? "later" : "earlier") + ", but only as far as its limits allow.");
        return all;
    }

    private static Ignition.Turns opposite(Ignition.Turns turns) {
        return turns == Ignition.Turns.CLOCKWISE ? Ignition.Turns.ANTICLOCKWISE : Ignition.Turns.CLOCKWISE;
    }

    private static long shown(double deg) {
        return Math.round(deg * 10);
    }

    private static String earlyWords(double early) {
        return shown(early) == 0 ? "as wanted" : Angle.text(Math.abs(early)) + (early > 0 ? " too early" : " too late");
    }

    /** The size of the book that it is held against, as it stands there. */
    public Optional<String> wantedWritten() {
        return ignition.flatMap(Ignition::opens).map(Size::written);
    }
}
