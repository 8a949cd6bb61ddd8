package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Countable;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Slip.Kind;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Sees slips of digit, decimal point, sign and unit. A reading is asked about only if it lies outside what an honest one can be
 * <em>and</em> one slip explains it, if it contradicts another of the same place, or if it is nowhere near what a part can have, new, worn
 * or broken: a worn bore and a broken spring are not slips.
 */
public final class Slips {
    /** What a person writes into the remark who was asked and says that it stands. */
    public static final String STANDS = "asked, and it stands";

    private static final double MM_PER_INCH = 25.4;
    private static final int MOST = 3;
    /** Readings of one place may differ by so many times what their instruments err; common practice, no source. */
    private static final double TIMES_ERROR = 3;

    private static final double LEAST_APART_MM = 0.05;
    /** A wrong digit explains anything if the span is as wide as what it can change: then it says nothing. */
    private static final double NARROW = 1.0 / 3;

    private static final Pattern INCH_UNIT = Pattern.compile("(?i)in|inch|inches|\"|\u2033");

    private final Build build;
    private final Dimension dimension;
    private final ReadingTaken reading;
    private final long number;
    private final OwnInstruments own;
    /** All readings of the dimension on the same part as it is now: a machinist makes it another. */
    private final List<Told<ReadingTaken>> alike;

    private Slips(
            Build build,
            Dimension dimension,
            ReadingTaken reading,
            long number,
            OwnInstruments own,
            List<Told<ReadingTaken>> alike) {
        this.build = build;
        this.dimension = dimension;
        this.reading = reading;
        this.number = number;
        this.own = own;
        this.alike = alike;
    }

    /** What to ask about a reading before it is taken down; the likeliest slip first, nothing for one that can be believed. */
    public static List<Slip> of(Build build, ReadingTaken reading) {
        return of(build, new Told<>(build.size() + 1, Instant.EPOCH, reading));
    }

    /** What to ask about a reading in the journal; nothing once a second one agrees or the remark says that it stands. */
    public static List<Slip> of(Build build, Told<ReadingTaken> told) {
        return build.structure()
                .dimension(told.fact().dimension())
                .map(dimension -> of(
                        build,
                        dimension,
                        told,
                        OwnInstruments.of(build.instruments()),
                        alike(build, dimension, told.fact().part())))
                .orElse(List.of());
    }

    /** What to ask about all readings of the journal, by the number of their entry; only of those that are doubtful. */
    public static Map<Long, List<Slip>> all(Build build) {
        OwnInstruments own = OwnInstruments.of(build.instruments());
        Map<Long, List<Slip>> all = new TreeMap<>();
        for (Dimension dimension : build.structure().dimensions()) {
            Map<String, List<Told<ReadingTaken>>> alike = new HashMap<>();
            for (Told<ReadingTaken> told : build.told(ReadingTaken.class, dimension.id())) {
                List<Slip> slips = of(
                        build,
                        dimension,
                        told,
                        own,
                        alike.computeIfAbsent(told.fact().part(), part -> alike(build, dimension, part)));
                if (!slips.isEmpty()) {
                    all.put(told.number(), slips);
                }
            }
        }
        return all;
    }

    private static List<Slip> of(
            Build build,
            Dimension dimension,
            Told<ReadingTaken> told,
            OwnInstruments own,
            List<Told<ReadingTaken>> alike) {
        boolean stands = told.fact().remark().toLowerCase(Locale.ROOT).contains(STANDS);
        return stands ? List.of() : new Slips(build, dimension, told.fact(), told.number(), own, alike).slips();
    }

    private List<Slip> slips() {
        OptionalDouble value = value(reading, reading.value());
        Optional<SlipText> text = SlipText.of(reading.value());
        boolean counts = number > build.size() || alike.stream().anyMatch(told -> told.number() == number);
        if (value.isEmpty() || !counts) {
            return List.of();
        }
        List<Told<ReadingTaken>> samePlace = others().stream()
                .filter(told -> told.fact().piece() == reading.piece()
                        && told.fact().at().equals(reading.at()))
                .toList();
        if (samePlace.stream().anyMatch(told -> agrees(told.fact(), value.getAsDouble()))) {
            return List.of();
        }
        List<Slip> slips = new ArrayList<>(text.map(written -> explained(written, value.getAsDouble(), samePlace))
                .orElse(List.of()));
        if (slips.isEmpty()) {
            apart(samePlace, value.getAsDouble()).ifPresent(slips::add);
        }
        if (slips.isEmpty()) {
            beyond(value.getAsDouble()).ifPresent(slips::add);
        }
        if (slips.isEmpty()) {
            far(value.getAsDouble()).ifPresent(slips::add);
        }
        return slips.subList(0, Math.min(MOST, slips.size()));
    }

    private List<Slip> explained(SlipText written, double value, List<Told<ReadingTaken>> samePlace) {
        Optional<Plausible> before = samePlace.stream()
                .filter(told -> told.number() < number)
                .reduce((one, other) -> other)
                .flatMap(told -> around(told.fact()));
        Optional<Plausible> honest = before.or(() -> Plausible.of(build, dimension, values(others())));
        if (honest.isEmpty() || honest.get().holds(value)) {
            return List.of();
        }
        List<Slip> slips = new ArrayList<>(units(written, honest.get()));
        Plausible narrow = Plausible.among(values(others())).orElse(honest.get());
        for (SlipText.Meant meant : written.all()) {
            // within a span of many powers of ten lies what any slip makes of any number
            boolean telling = meant.kind() == Kind.SIGN || honest.get().tellsScale();
            boolean fits = meant.kind() == Kind.DIGIT
                    ? narrow.width() < NARROW * meant.placeValue() && holds(narrow, written, meant)
                    : holds(honest.get(), written, meant);
            if (telling && fits && slips.stream().noneMatch(slip -> slip.kind() == meant.kind())) {
                slips.add(slip(meant.kind(), written.with(meant.number())));
            }
        }
        return slips;
    }

    private boolean holds(Plausible span, SlipText written, SlipText.Meant meant) {
        OptionalDouble value = value(reading, written.with(meant.number()));
        return value.isPresent() && span.holds(value.getAsDouble());
    }

    /** Inches for millimetres, millimetres for inches, thousandths of an inch for millimetres. */
    private List<Slip> units(SlipText written, Plausible honest) {
        if (dimension.unit() != Unit.MM || !honest.tellsScale()) {
            return List.of();
        }
        double bare = written.value();
        boolean inches = written.unit().isEmpty()
                ? instrument(reading).filter(OwnInstrument::inches).isPresent()
                : INCH_UNIT.matcher(written.unit()).matches();
        boolean millimetres =
                !inches && (written.unit().isEmpty() || written.unit().equals("mm"));
        if (inches && honest.holds(bare)) {
            return List.of(slip(Kind.MILLIMETRES, written.number() + " mm"));
        }
        if (millimetres && honest.holds(bare * MM_PER_INCH)) {
            return List.of(slip(Kind.INCHES, written.number() + " in"));
        }
        return millimetres && honest.holds(bare * MM_PER_INCH / 1000)
                ? List.of(slip(Kind.THOU, written.number() + " thou"))
                : List.of();
    }

    /** An earlier reading of the same place that this one contradicts. */
    private Optional<Slip> apart(List<Told<ReadingTaken>> samePlace, double value) {
        return samePlace.stream()
                .filter(told -> told.number() < number)
                .reduce((one, other) -> other)
                .filter(told ->
                        around(told.fact()).filter(span -> !span.holds(value)).isPresent())
                .map(
                        told -> new Slip(
                                Kind.APART,
                                "",
                                reading.value() + " and " + told.fact().value() + " (entry " + told.number()
                                        + ") were read at one place and lie further apart than the instruments err. Read it once more."));
    }

    /** A value that the instrument named does not reach: another was used, or another figure read. */
    private Optional<Slip> beyond(double value) {
        return instrument(reading)
                .filter(named -> named.scale().unit() == dimension.unit())
                .filter(named -> !named.reaches(value))
                .map(named -> new Slip(
                        Kind.BEYOND,
                        "",
                        "Is " + reading.value() + " right for the " + dimension.name() + "? The " + named.name()
                                + " does not reach it. Read it once more, or say what it was read with."));
    }

    /** A value so far off that neither wear nor a break makes it, where what is expected is narrow enough to say so. */
    private Optional<Slip> far(double value) {
        Unit unit = dimension.unit();
        return Plausible.of(build, dimension, values(others()))
                .filter(Plausible::tellsScale)
                .filter(expected -> expected.isFarFrom(value))
                .map(expected -> new Slip(
                        Kind.FAR,
                        "",
                        "Is " + reading.value() + " right for the " + dimension.name()
                                + "? It is far from what is expected of it, worn or not: "
                                + unit.figure(expected.least()) + " to " + unit.figure(expected.most())
                                + ". Read it once more, and look at what was measured."));
    }

    private Slip slip(Kind kind, String meant) {
        return new Slip(
                kind,
                meant,
                "Is " + reading.value() + " right for the " + dimension.name() + ", or was " + meant
                        + " meant? It looks like " + kind.words() + ".");
    }

    private List<Told<ReadingTaken>> others() {
        return alike.stream().filter(told -> told.number() != number).toList();
    }

    private static List<Told<ReadingTaken>> alike(Build build, Dimension dimension, String part) {
        Set<Long> count = Countable.of(build, dimension, part).keySet();
        return build.readings(dimension.id(), part).stream()
                .filter(told -> count.contains(told.number()))
                .toList();
    }

    private List<Double> values(List<Told<ReadingTaken>> readings) {
        return readings.stream()
                .map(told -> value(told.fact(), told.fact().value()))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
    }

    private boolean agrees(ReadingTaken other, double value) {
        return around(other).filter(span -> span.holds(value)).isPresent();
    }

    /** What another reading of the same place may be, by what both instruments err. */
    private Optional<Plausible> around(ReadingTaken other) {
        OptionalDouble value = value(other, other.value());
        Optional<OwnInstrument> mine = instrument(reading);
        Optional<OwnInstrument> theirs = instrument(other);
        if (value.isEmpty() || mine.isEmpty() || theirs.isEmpty()) {
            return Optional.empty();
        }
        double least = dimension.unit() == Unit.MM ? LEAST_APART_MM : 0;
        double beside = Math.max(least, TIMES_ERROR * (errs(mine.get()) + errs(theirs.get())));
        return Optional.of(new Plausible(value.getAsDouble() - beside, value.getAsDouble() + beside));
    }

    private static double errs(OwnInstrument instrument) {
        return instrument.scale().resolution() + instrument.scale().error();
    }

    private Optional<OwnInstrument> instrument(ReadingTaken of) {
        return own.named(of.instrument());
    }

    private OptionalDouble value(ReadingTaken of, String text) {
        TypedSize typed = TypedSize.of(
                dimension.unit(),
                text,
                instrument(of).map(OwnInstrument::bareLengthMm).orElse(1.0));
        return typed instanceof TypedSize.Read read ? OptionalDouble.of(read.value()) : OptionalDouble.empty();
    }
}
