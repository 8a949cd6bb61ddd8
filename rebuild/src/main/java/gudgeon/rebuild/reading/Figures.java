package gudgeon.rebuild.reading;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.Scatter;
import gudgeon.mechanics.metrology.Warmth;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.reading.Component.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What the readings of one dimension on one part come to.
 *
 * @param figures one for each place that was read, in the book's order
 * @param unread readings that do not count, each a sentence that says why
 */
public record Figures(List<Figure> figures, List<String> unread) {
    /** Where nothing was read. */
    public static final Figures NONE = new Figures(List.of(), List.of());

    /** Linear expansion of steel, per kelvin (from memory: handbooks have 11 to 12 millionths). */
    private static final Quantity STEEL = Quantity.stated(11.5e-6, 1e-6);
    /**
     * Of a part of which nobody said what it is made of: no correction is made, and it may be anything from iron to aluminium,
     * 12.5 millionths more than steel (from memory).
     */
    private static final Quantity ANY_METAL = Quantity.stated(11.5e-6, 12.5e-6);
    /** How far a part and an instrument that lay together may be from one another, in kelvin; common practice, no source. */
    private static final double APART = 1;

    public Figures {
        figures = List.copyOf(figures);
        unread = List.copyOf(unread);
    }

    /**
     * Works them out.
     *
     * @param taken readings of the dimension on one part, by the number of their entry, in order
     */
    public static Figures of(Dimension dimension, Map<Long, ReadingTaken> taken, OwnInstruments instruments) {
        List<Reading> readings = new ArrayList<>();
        List<String> unread = new ArrayList<>();
        taken.forEach((entry, fact) -> {
            Reading.Result result = Reading.of(entry, fact, dimension, instruments);
            if (result instanceof Reading.Result.Good good) {
                readings.add(good.reading());
            } else {
                unread.add(((Reading.Result.Bad) result).sentence());
            }
        });
        return new Figures(new Working(dimension, readings, instruments).figures(), unread);
    }

    /**
     * The figure that a single reading of a value would give.
     *
     * @param value in the dimension's unit
     */
    public static Figure single(Dimension dimension, double value, OwnInstrument with, OwnInstruments instruments) {
        Reading reading = new Reading(
                0,
                "",
                1,
                value,
                dimension.unit().figure(value),
                Optional.of(with),
                with.name(),
                OptionalDouble.empty());
        return new Working(dimension, List.of(reading), instruments).figures().get(0);
    }

    /**
     * One figure for all places, as a trial fit needs it: their mean, with the doubt of the least sure of them and, as bounds, how
     * far they lie apart. Empty where nothing was read.
     */
    public Optional<Figure> overAll() {
        double least = figures.stream().mapToDouble(Figure::value).min().orElse(0);
        double most = figures.stream().mapToDouble(Figure::value).max().orElse(0);
        double mean = figures.stream().mapToDouble(Figure::value).average().orElse(0);
        List<Reading> readings =
                figures.stream().flatMap(figure -> figure.readings().stream()).toList();
        return figures.stream()
                .max(Comparator.comparing((Figure figure) -> !figure.doubtKnown())
                        .thenComparingDouble(figure -> figure.quantity().standardUncertainty()))
                .map(worst -> {
                    List<Component> components = new ArrayList<>(worst.components());
                    if (most > least && worst.doubtKnown()) {
                        Doubt apart = Doubt.stated((most - least) / 2);
                        components.add(new Component("one place and another", "", Role.PLACES, apart));
                    }
                    return new Figure("", 1, mean, components, readings, worst.doubtKnown());
                });
    }

    /** The readings of one dimension, with what is pooled over them. */
    private record Working(Dimension dimension, List<Reading> readings, OwnInstruments instruments) {
        private record Spot(String at, int piece) {}

        List<Figure> figures() {
            Map<Spot, List<Reading>> spots = readings.stream()
                    .collect(Collectors.groupingBy(
                            reading -> new Spot(reading.at(), reading.piece()),
                            LinkedHashMap::new,
                            Collectors.toList()));
            List<String> places = dimension.places().all();
            return spots.entrySet().stream()
                    .map(spot -> best(spot.getKey(), spot.getValue()))
                    .sorted(Comparator.comparingInt(Figure::piece)
                            .thenComparingInt(figure -> places.indexOf(figure.at())))
                    .toList();
        }

        /** Of several instruments at one place the one with the least doubt counts; all readings are kept. */
        private Figure best(Spot spot, List<Reading> all) {
            return all.stream()
                    .collect(Collectors.groupingBy(Reading::with, LinkedHashMap::new, Collectors.toList()))
                    .values()
                    .stream()
                    .map(alike -> figure(spot, alike, all))
                    .min(Comparator.comparing((Figure figure) -> !figure.doubtKnown())
                            .thenComparingDouble(figure -> figure.quantity().standardUncertainty()))
                    .orElseThrow();
        }

        private Figure figure(Spot spot, List<Reading> alike, List<Reading> all) {
            Optional<OwnInstrument> instrument = alike.get(0).instrument();
            double[] values = alike.stream().mapToDouble(Reading::value).toArray();
            double mean =
                    values.length == 1 ? values[0] : Quantity.meanOf(values).value();
            List<Component> components = new ArrayList<>();
            instrument.ifPresent(one -> ofInstrument(one, mean, components));
            scatter(alike).ifPresent(components::add);
            double at20 = dimension.unit() == Unit.MM ? warmth(alike, mean, components) : mean;
            return new Figure(spot.at(), spot.piece(), at20, components, all, instrument.isPresent());
        }

        private void ofInstrument(OwnInstrument one, double value, List<Component> to) {
            String name = one.name();
            to.add(new Component(
                    "step of the " + name,
                    name,
                    Role.STEP,
                    Doubt.resolution(one.scale().resolution())));
            to.add(new Component(
                    "permissible error of the " + name,
                    name,
                    Role.ERROR,
                    Doubt.permissibleError(one.scale().error())));
            if (one.isSetWithMicrometer()) {
                instruments.setting(value).ifPresent(micrometer -> {
                    String of = micrometer.name();
                    to.add(new Component(
                            "permissible error of the " + of + " that it is set with",
                            of,
                            Role.SETTING,
                            Doubt.permissibleError(micrometer.scale().error())));
                    to.add(new Component(
                            "step of the " + of + " that it is set with",
                            of,
                            Role.SETTING_STEP,
                            Doubt.resolution(micrometer.scale().resolution())));
                });
            }
        }

        /** Pooled over all places that one instrument was read at, and divided by the root of the readings here. */
        private Optional<Component> scatter(List<Reading> alike) {
            List<double[]> places = readings.stream()
                    .filter(reading -> reading.with().equals(alike.get(0).with()))
                    .collect(Collectors.groupingBy(reading -> new Spot(reading.at(), reading.piece())))
                    .values()
                    .stream()
                    .map(one -> one.stream().mapToDouble(Reading::value).toArray())
                    .toList();
            long twice = places.stream().filter(values -> values.length > 1).count();
            if (twice == 0) {
                return Optional.empty();
            }
            Doubt doubt = Scatter.pooled(places).ofMeanOf(alike.size());
            String where = places.size() == 1 ? "" : ", the scatter taken from all places";
            String readings = alike.size() == 1 ? "one reading" : alike.size() + " readings";
            return Optional.of(new Component("scatter of " + readings + where, "", Role.SCATTER, doubt));
        }

        /** The mean at 20 degrees Celsius, where the warmth of the part was told. */
        private static double warmth(List<Reading> alike, double mean, List<Component> to) {
            double[] told = alike.stream()
                    .filter(reading -> reading.celsius().isPresent())
                    .mapToDouble(reading -> reading.celsius().getAsDouble())
                    .toArray();
            if (told.length == 0) {
                return mean;
            }
            double celsius = 0;
            for (double one : told) {
                celsius += one / told.length;
            }
            Quantity at20 = new Warmth(celsius, APART, ANY_METAL, STEEL).at20(Quantity.exact(mean));
            to.add(new Component(
                    "warmth of the part, whose metal is not told",
                    "",
                    Role.WARMTH,
                    at20.doubts().get(0)));
            return at20.value();
        }
    }
}
