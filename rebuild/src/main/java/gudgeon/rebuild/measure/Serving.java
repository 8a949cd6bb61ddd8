package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.reading.OwnInstrument;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Which instruments can measure a dimension, by what the book wants it measured with. */
final class Serving {
    /** What a gauge is set with does not measure by itself. */
    private static final Pattern SET_WITH = Pattern.compile("\\bset (with|on|to|by)\\b.*$");

    private static final Map<InstrumentKind, Pattern> NAMED = new EnumMap<>(Map.ofEntries(
            named(InstrumentKind.CALLIPER, "calliper|caliper|vernier"),
            named(InstrumentKind.MICROMETER, "(?<!depth )micrometer"),
            named(InstrumentKind.BORE_GAUGE, "bore gauge"),
            named(InstrumentKind.SMALL_HOLE_GAUGE, "small-?\\s?hole gauge|telescop"),
            named(InstrumentKind.DEPTH_GAUGE, "depth"),
            named(InstrumentKind.HEIGHT_GAUGE, "height gauge"),
            named(InstrumentKind.DIAL_GAUGE, "dial"),
            named(InstrumentKind.FEELER_GAUGES, "feeler"),
            named(InstrumentKind.STRAIGHT_EDGE, "straight edge"),
            named(InstrumentKind.SQUARE, "square"),
            named(InstrumentKind.SPRING_TESTER, "spring (tester|balance)"),
            named(InstrumentKind.PRESSURE_GAUGE, "pressure gauge|compression (gauge|tester)"),
            named(InstrumentKind.BURETTE, "burette|syringe"),
            named(InstrumentKind.DEGREE_DISC, "degree disc|protractor"),
            named(InstrumentKind.SCALE_RULE, "\\brule\\b"),
            named(InstrumentKind.THERMOMETER, "thermometer"),
            named(InstrumentKind.METER, "(?<!\\w)meter\\b|multimeter")));

    /** What can stand in for an instrument, if not as well; common practice, no source. */
    private static final Map<InstrumentKind, Set<InstrumentKind>> STAND_INS = new EnumMap<>(Map.of(
            InstrumentKind.CALLIPER, EnumSet.of(InstrumentKind.MICROMETER),
            InstrumentKind.MICROMETER, EnumSet.of(InstrumentKind.CALLIPER),
            InstrumentKind.BORE_GAUGE, EnumSet.of(InstrumentKind.CALLIPER),
            InstrumentKind.SMALL_HOLE_GAUGE, EnumSet.of(InstrumentKind.BORE_GAUGE, InstrumentKind.CALLIPER),
            InstrumentKind.DEPTH_GAUGE, EnumSet.of(InstrumentKind.CALLIPER, InstrumentKind.HEIGHT_GAUGE),
            InstrumentKind.HEIGHT_GAUGE, EnumSet.of(InstrumentKind.CALLIPER)));

    private Serving() {}

    private static Map.Entry<InstrumentKind, Pattern> named(InstrumentKind kind, String words) {
        return Map.entry(kind, Pattern.compile(words));
    }

    /** Whether an instrument can measure a dimension of about some value, in the dimension's unit. */
    static boolean serves(OwnInstrument instrument, Dimension dimension, double value) {
        if (instrument.scale().unit() != dimension.unit() || !instrument.spans(value)) {
            return false;
        }
        Set<InstrumentKind> wanted = wanted(dimension);
        return wanted.contains(instrument.kind())
                || wanted.stream()
                        .anyMatch(kind -> STAND_INS.getOrDefault(kind, Set.of()).contains(instrument.kind()));
    }

    /** The kinds that the book names; none where it names none. */
    static Set<InstrumentKind> wanted(Dimension dimension) {
        String with =
                SET_WITH.matcher(dimension.with().toLowerCase(Locale.ROOT)).replaceAll("");
        Set<InstrumentKind> wanted = EnumSet.noneOf(InstrumentKind.class);
        NAMED.forEach((kind, words) -> {
            if (words.matcher(with).find()) {
                wanted.add(kind);
            }
        });
        return wanted;
    }
}
