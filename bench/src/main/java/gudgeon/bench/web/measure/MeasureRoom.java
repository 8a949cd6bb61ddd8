package gudgeon.bench.web.measure;

import gudgeon.bench.web.fit.Lengths;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Cookies;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Proof;
import gudgeon.rebuild.measure.Proofs;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.reading.Component;
import gudgeon.rebuild.reading.Reading;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was read of every dimension and what it proves: {@code /builds/<id>/measure}. */
public final class MeasureRoom {
    private static final String LENGTHS = "lengths";
    private static final MathContext TWO_FIGURES = new MathContext(2);

    private final Pages pages;
    private final Builds builds;

    public MeasureRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/measure", this::show);
    }

    /**
     * A position's part with its dimensions.
     *
     * @param part name of the part that was measured; empty for the one that came off
     * @param parts names of all its parts
     */
    public record Measured(Position position, String part, List<String> parts, List<Line> lines) {
        /** Whether anything was read on it. */
        public boolean isBegun() {
            return lines.stream().anyMatch(line -> line.verdict().outcome() != Outcome.NOT_MEASURED);
        }

        /** Its lines of one outcome. */
        Stream<Line> of(Outcome outcome) {
            return lines.stream().filter(line -> line.verdict().outcome() == outcome);
        }
    }

    /**
     * A dimension as the sheet shows it.
     *
     * @param proofs what would prove it, where that is open
     * @param aside readings that do not count: taken before the part was machined, or not to be read
     */
    public record Line(Verdict verdict, List<Proof> proofs, List<Told<ReadingTaken>> aside) {
        public Line {
            proofs = List.copyOf(proofs);
            aside = List.copyOf(aside);
        }

        /** A standard uncertainty as a number of the unit that figures are shown in, to two figures. */
        public String doubt(Component component, Lengths lengths) {
            double shown = verdict.dimension().unit() == Unit.MM ? lengths.mm() : 1;
            return BigDecimal.valueOf(component.doubt().standardUncertainty() / shown)
                    .round(TWO_FIGURES)
                    .toPlainString();
        }
    }

    /** What the person is to look at first: all that is out of limits or unproven, and how much is not measured. */
    public record Summary(List<Line> out, List<Line> unproven, long notMeasured) {
        static Summary of(List<Measured> all) {
            return new Summary(
                    all.stream().flatMap(one -> one.of(Outcome.OUT_OF_LIMITS)).toList(),
                    all.stream().flatMap(one -> one.of(Outcome.UNPROVEN)).toList(),
                    all.stream().flatMap(one -> one.of(Outcome.NOT_MEASURED)).count());
        }
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.MEASURE);
        Build build = opened.build();
        String of = Optional.ofNullable(ctx.queryParam("of")).orElse("");
        if (!of.isEmpty() && build.structure().position(of).isEmpty()) {
            throw new NotFoundResponse();
        }
        List<Measured> measured = build.structure().positions().stream()
                .filter(position -> of.isEmpty() || position.id().equals(of))
                .map(position -> measured(build, position, of.isEmpty() ? null : ctx.queryParam("part")))
                .filter(one -> !one.lines().isEmpty())
                .toList();
        pages.show(
                ctx,
                "measure/page.jte",
                opened.with(Map.of(
                        "measured", measured, "summary", Summary.of(measured), "of", of, "lengths", lengths(ctx))));
    }

    private static Measured measured(Build build, Position position, @Nullable String asked) {
        String part = Optional.ofNullable(asked)
                .filter(name -> build.part(position.id(), name).isPresent())
                .or(() -> build.partFor(position.id()).map(Part::name))
                .orElse("");
        List<Line> lines = build.structure().dimensionsOf(position.id()).stream()
                .map(dimension -> line(build, dimension, part))
                .toList();
        List<String> parts = Stream.concat(
                        Stream.of(""), build.parts(position.id()).stream().map(Part::name))
                .toList();
        return new Measured(position, part, parts, lines);
    }

    private static Line line(Build build, Dimension dimension, String part) {
        Verdict verdict = Verdict.of(build, dimension, part);
        List<Long> counted = verdict.evaluated().figures().stream()
                .flatMap(figure -> figure.readings().stream())
                .map(Reading::entry)
                .toList();
        List<Told<ReadingTaken>> aside = build.readings(dimension.id(), part).stream()
                .filter(told -> !counted.contains(told.number()))
                .toList();
        return new Line(verdict, Proofs.of(build, verdict), aside);
    }

    /** The person's choice for this device, which an address can change. */
    static Lengths lengths(Context ctx) {
        String asked = Optional.ofNullable(ctx.queryParam("unit")).orElse("");
        if (!asked.isEmpty()) {
            Cookies.give(ctx, LENGTHS, Lengths.named(asked).written());
            return Lengths.named(asked);
        }
        return Lengths.named(Cookies.brought(ctx, LENGTHS));
    }
}
