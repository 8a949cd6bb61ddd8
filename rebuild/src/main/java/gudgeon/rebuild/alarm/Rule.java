package gudgeon.rebuild.alarm;

import gudgeon.rebuild.build.Build;
import java.util.stream.Stream;

/** One kind of mistake, and how the facts show it. */
interface Rule {
    /** The alarms of this kind that stand now. */
    Stream<Alarm> alarms(Build build);
}
