package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Places;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.reading.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Works out a dimension that is not read but follows from others. */
record Derived(Build build, Dimension dimension, String part) {
    private static final Comparator<Figure> BY_VALUE = Comparator.comparingDouble(Figure::value);

    Evaluated evaluated(Derivation derivation) {
        List<Evaluated> of = new ArrayList<>();
        for (String id : derivation.of()) {
            Optional<Dimension> source = build.structure().dimension(id);
            // a dimension of itself is told as a fault of the book; here it must only not run in circles
            if (source.isEmpty() || source.get().derived().isPresent()) {
                return nothing(0, List.of());
            }
            of.add(Evaluated.of(build, source.get(), partOf(source.get())));
        }
        int missing = of.stream().mapToInt(Evaluated::missing).sum();
        List<String> unread = of.stream().flatMap(one -> one.unread().stream()).toList();
        if (of.isEmpty() || of.stream().anyMatch(Evaluated::isEmpty)) {
            return nothing(missing, unread);
        }
        List<Figure> figures = switch (derivation.as()) {
            case CLEARANCE, DIFFERENCE -> differences(of);
            case OVALITY -> spans(of.get(0), Derived::height, "");
            case TAPER -> spans(of.get(0), Derived::axis, "");
            case WEAR -> wear(of.get(0));
        };
        return new Evaluated(dimension, part, figures, missing, unread);
    }

    private Evaluated nothing(int missing, List<String> unread) {
        return new Evaluated(dimension, part, List.of(), missing, unread);
    }

    private String partOf(Dimension source) {
        return source.of().equals(dimension.of()) ? part : Evaluated.partFor(build, source);
    }

    /** The first less all others, piece by piece where all are measured on as many: the least and the greatest. */
    private List<Figure> differences(List<Evaluated> of) {
        boolean pairs = of.stream().allMatch(one -> one.dimension().pieces() == dimension.pieces());
        List<Figure> all = new ArrayList<>();
        for (int piece = 1; piece <= (pairs ? dimension.pieces() : 1); piece++) {
            int of1 = piece;
            List<List<Figure>> terms = of.stream()
                    .map(one -> one.figures().stream()
                            .filter(figure -> !pairs || figure.piece() == of1)
                            .toList())
                    .toList();
            if (terms.stream().noneMatch(List::isEmpty)) {
                Figure least = difference(terms, true);
                Figure greatest = difference(terms, false);
                all.add(least);
                if (greatest.value() > least.value()) {
                    all.add(greatest);
                }
            }
        }
        return all;
    }

    private static Figure difference(List<List<Figure>> terms, boolean least) {
        Figure difference = extreme(terms.get(0), least);
        boolean one = terms.stream().allMatch(term -> term.size() == 1);
        for (List<Figure> term : terms.subList(1, terms.size())) {
            difference = difference.minus(extreme(term, !least), one ? "" : least ? "least" : "greatest", false);
        }
        return difference;
    }

    private static Figure extreme(List<Figure> figures, boolean least) {
        Stream<Figure> all = figures.stream();
        return (least ? all.min(BY_VALUE) : all.max(BY_VALUE)).orElseThrow();
    }

    /** The greatest less the least among the places that share something, for each such group that was read twice. */
    private static List<Figure> spans(Evaluated of, Function<PlaceOf, String> shared, String where) {
        Map<String, List<Figure>> groups = new LinkedHashMap<>();
        for (Figure figure : of.figures()) {
            String group = shared.apply(new PlaceOf(of.dimension().places(), figure.at()));
            groups.computeIfAbsent(figure.piece() + " " + group, key -> new ArrayList<>())
                    .add(figure);
        }
        List<Figure> spans = new ArrayList<>();
        groups.forEach((key, figures) -> {
            if (figures.size() > 1) {
                String at = key.substring(key.indexOf(' ') + 1);
                spans.add(extreme(figures, false).minus(extreme(figures, true), at.isEmpty() ? where : at, true));
            }
        });
        return spans;
    }

    /** A place by its name, with all places that there are. */
    private record PlaceOf(Places places, String at) {}

    private static String height(PlaceOf place) {
        return matching(
                place,
                place.places().axes().isEmpty() ? List.of() : place.places().heights());
    }

    private static String axis(PlaceOf place) {
        return matching(place, place.places().axes());
    }

    private static String matching(PlaceOf place, List<String> names) {
        return names.stream()
                .filter(name -> place.at().equals(name)
                        || place.at().startsWith(name + ", ")
                        || place.at().endsWith(", " + name))
                .findFirst()
                .orElse("");
    }

    /** How far each place lies outside the range of a new part; less than nothing inside it. */
    private static List<Figure> wear(Evaluated of) {
        Optional<Expect> standard = of.dimension().standard();
        if (standard.isEmpty()) {
            return List.of();
        }
        boolean grows = grows(of.dimension(), standard.get());
        double edge = (grows ? standard.get().atMost() : standard.get().atLeast()).orElse(Double.NaN);
        return Double.isNaN(edge)
                ? List.of()
                : of.figures().stream()
                        .map(figure -> figure.shifted(edge, grows ? 1 : -1))
                        .toList();
    }

    /** Whether wear makes a size larger, as its limits say. */
    private static boolean grows(Dimension of, Expect standard) {
        if (of.expect().isPresent()) {
            return of.expect().get().atMost().isPresent();
        }
        return standard.atMost().isPresent();
    }
}
