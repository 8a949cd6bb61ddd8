package gudgeon.rebuild.timing;

import gudgeon.mechanics.timing.Disc;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A mark on the drawing of the disc.
 *
 * @param label what it is
 * @param angle its angle in words
 * @param deg where it stands, in degrees after top dead centre in [0, 360)
 * @param kind what it tells
 */
public record DiscMark(String label, String angle, double deg, Kind kind) {
    /** What a mark tells. */
    public enum Kind {
        READ,
        WANTED
    }

    /** The marks of lobes and spark; of each valve those at the least lift read. */
    static List<DiscMark> all(List<ValveTiming> valves, Optional<SparkTiming> spark) {
        List<DiscMark> all = new ArrayList<>();
        for (ValveTiming timing : valves) {
            LobeLine line = timing.lines().get(0);
            String name = timing.valve().id();
            all.add(mark(name + " opens", line.read().opensDeg(), Kind.READ));
            all.add(mark(name + " closes", line.read().closesDeg(), Kind.READ));
            line.book().ifPresent(book -> {
                all.add(mark(name + " should open", book.opensDeg(), Kind.WANTED));
                all.add(mark(name + " should close", book.closesDeg(), Kind.WANTED));
            });
        }
        spark.ifPresent(one -> {
            all.add(mark("points open", -one.beforeDeg().value(), Kind.READ));
            one.wantedDeg().ifPresent(wanted -> all.add(mark("points should open", -wanted, Kind.WANTED)));
        });
        return all;
    }

    private static DiscMark mark(String label, double crankDeg, Kind kind) {
        return new DiscMark(label, Angle.fromCentre(crankDeg), Disc.reading(crankDeg), kind);
    }
}
