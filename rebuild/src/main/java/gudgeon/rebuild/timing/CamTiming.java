package gudgeon.rebuild.timing;

import gudgeon.rebuild.book.CamDrive;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Which checks read the cam's timing, and what teeth come to in degrees of the crank. */
public final class CamTiming {
    /** How far a degree disc and a slack chain let two readings lie apart, in degrees of the crank: common practice, no source. */
    public static final double TOLERANCE_DEG = 5;

    /** The camshaft turns once while the crank turns twice. */
    private static final double CRANK_DEG_PER_CAM_TURN = 720;

    /** The other angle that is set on an engine. */
    private static final Pattern IGNITION =
            Pattern.compile("ignition|spark|points|breaker|magneto|advance", Pattern.CASE_INSENSITIVE);

    private CamTiming() {}

    /** Whether a check reads by how many degrees the valve events are late; one of the spark is not. */
    public static boolean isReadBy(Check check) {
        return check.expect().filter(expect -> expect.unit() == Unit.DEGREES).isPresent()
                && !IGNITION.matcher(check.id() + " " + check.name()).find();
    }

    /** Whether a check reads by how many degrees the spark is out. */
    static boolean isSparkReadBy(Check check) {
        return check.expect().filter(expect -> expect.unit() == Unit.DEGREES).isPresent()
                && IGNITION.matcher(check.id() + " " + check.name()).find();
    }

    /** The id of the check that reads the cam's timing; empty where the book has none. */
    public static String check(Structure structure) {
        return structure.checks().stream()
                .filter(CamTiming::isReadBy)
                .map(Check::id)
                .findFirst()
                .orElse("");
    }

    /** Degrees of the crank that one tooth of the cam's sprocket comes to, where the book says how many it has. */
    public static OptionalDouble toothDeg(EngineBook book) {
        Optional<Integer> teeth = book.geometry().flatMap(Geometry::cam).map(CamDrive::sprocketTeeth);
        return teeth.isPresent() ? OptionalDouble.of(CRANK_DEG_PER_CAM_TURN / teeth.get()) : OptionalDouble.empty();
    }

    /** Teeth in words, such as "one tooth late". */
    public static String teeth(int late) {
        int count = Math.abs(late);
        return (count == 1 ? "one tooth " : count + " teeth ") + (late > 0 ? "late" : "early");
    }

    /** What a reading says of the chain or belt, a sentence. */
    public static String meaning(double lateDeg, double toothDeg) {
        int teeth = (int) Math.round(lateDeg / toothDeg);
        String one = String.format(Locale.ROOT, "One tooth of the cam's sprocket is %.1f° of the crank", toothDeg);
        return teeth != 0 && Math.abs(lateDeg - teeth * toothDeg) <= TOLERANCE_DEG
                ? one + ": the cam is " + teeth(teeth) + "."
                : one + ", so it is no whole tooth: look at the marks, the key and the degree disc.";
    }
}
