package gudgeon.bench.web.measure;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.measure.Provable;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The person's instruments: {@code /builds/<id>/measure/instruments}. */
public final class InstrumentRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public InstrumentRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/measure/instruments", this::show);
    }

    /**
     * An instrument as the list shows it.
     *
     * @param read what it comes to; empty where its figures can't be used
     * @param doubts what is to be known of it before it is trusted, sentences
     * @param good what it is good for; empty where its figures can't be used
     */
    public record Line(
            InstrumentKept kept, Optional<OwnInstrument> read, List<String> doubts, Optional<Provable> good) {}

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.MEASURE);
        Build build = opened.build();
        Optional<InstrumentKept> chosen = build.instruments().stream()
                .filter(kept -> kept.instrument().equals(ctx.queryParam("change")))
                .findFirst();
        pages.show(
                ctx,
                "measure/instruments.jte",
                opened.with(Map.of(
                        "lines",
                        build.instruments().stream()
                                .map(kept -> line(build, kept))
                                .toList(),
                        "kinds",
                        List.of(InstrumentKind.values()),
                        "chosen",
                        chosen)));
    }

    private Line line(Build build, InstrumentKept kept) {
        OwnInstruments alone = OwnInstruments.of(List.of(kept));
        Optional<OwnInstrument> read = alone.all().stream().findFirst();
        List<String> doubts = read.isEmpty()
                ? alone.faults()
                : read.flatMap(one -> one.unchecked(LocalDate.now(clock))).stream()
                        .toList();
        return new Line(kept, read, doubts, read.map(one -> Provable.with(build, one)));
    }
}
