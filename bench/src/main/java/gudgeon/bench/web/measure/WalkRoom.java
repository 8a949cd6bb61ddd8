package gudgeon.bench.web.measure;

import gudgeon.bench.web.fit.Lengths;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Hopeless;
import gudgeon.rebuild.measure.Sheet;
import gudgeon.rebuild.measure.Spoken;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import gudgeon.rebuild.sentence.Sentence;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One place after another, with a pad to write what is read: {@code /builds/<id>/measure/walk}. */
public final class WalkRoom {
    private final Pages pages;
    private final Builds builds;

    public WalkRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/measure/walk", this::show);
    }

    /**
     * One of the person's instruments, as it can be chosen here.
     *
     * @param warning why it can prove nothing here; empty where it may
     */
    public record Choice(OwnInstrument instrument, String warning) {}

    /**
     * Where the walk is.
     *
     * @param part name of the part that is measured; empty for the one that came off
     * @param before the place before this one, if any
     * @param next the place after this one, if any
     * @param read what was read here already
     * @param choices instruments that measure in this unit
     * @param chosen name of the one that was used last for such a dimension; empty if none
     */
    public record Walk(
            Spot spot,
            String part,
            Optional<Spot> before,
            Optional<Spot> next,
            List<Told<ReadingTaken>> read,
            List<Choice> choices,
            String chosen,
            PlaceDrawing drawing,
            Lengths lengths) {
        /** What an address says of a place beside this one; the part stays the same as long as the position does. */
        public String query(Spot other) {
            boolean same = other.dimension().of().equals(spot.dimension().of());
            return other.query(same ? part : "");
        }

        /** Whether the chosen instrument reads inches; without one, whether the person wants them. */
        public boolean inches() {
            return choices.stream()
                    .map(Choice::instrument)
                    .filter(instrument -> instrument.name().equals(chosen))
                    .map(OwnInstrument::inches)
                    .findFirst()
                    .orElse(lengths == Lengths.INCH);
        }

        /** Why the chosen instrument can prove nothing here; empty where it may. */
        public String warning() {
            return choices.stream()
                    .filter(choice -> choice.instrument().name().equals(chosen))
                    .map(Choice::warning)
                    .findFirst()
                    .orElse("");
        }
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.MEASURE);
        Build build = opened.build();
        Sheet sheet = Sheet.of(build);
        List<Spot> spots = sheet.rows().stream().map(Spot::of).toList();
        Optional<Spot> here = ctx.queryParam("dimension") == null
                ? sheet.next().or(() -> sheet.missing().stream().findFirst()).map(Spot::of)
                : Optional.of(asked(ctx, spots));
        if (here.isEmpty()) {
            ctx.redirect(opened.frame().address(Tab.MEASURE));
            return;
        }
        Walk walk = walk(ctx, build, spots, here.get());
        pages.show(ctx, "measure/walk.jte", opened.with(Map.of("walk", walk, "last", last(build, Device.of(ctx)))));
    }

    private static Spot asked(Context ctx, List<Spot> spots) {
        String dimension = String.valueOf(ctx.queryParam("dimension"));
        String piece = Optional.ofNullable(ctx.queryParam("piece")).orElse("");
        String at = Optional.ofNullable(ctx.queryParam("at")).orElse("");
        List<Spot> of = spots.stream()
                .filter(spot -> spot.dimension().id().equals(dimension))
                .toList();
        return of.stream()
                .filter(spot ->
                        String.valueOf(spot.piece()).equals(piece) && spot.at().equals(at))
                .findFirst()
                .or(() -> of.stream().findFirst())
                .orElseThrow(NotFoundResponse::new);
    }

    private static Walk walk(Context ctx, Build build, List<Spot> spots, Spot here) {
        int at = spots.indexOf(here);
        String part = part(ctx, build, here);
        List<Choice> choices = OwnInstruments.of(build.instruments()).all().stream()
                .filter(one -> one.scale().unit() == here.dimension().unit())
                .map(one -> new Choice(
                        one, Hopeless.of(build, here.dimension(), one).orElse("")))
                .toList();
        return new Walk(
                here,
                part,
                at > 0 ? Optional.of(spots.get(at - 1)) : Optional.empty(),
                at + 1 < spots.size() ? Optional.of(spots.get(at + 1)) : Optional.empty(),
                here.readings(build, part),
                choices,
                LastUsed.of(build, here.dimension(), Device.of(ctx)),
                PlaceDrawing.of(here.dimension().places(), here.at()),
                MeasureRoom.lengths(ctx));
    }

    /** The part that the address names, else the one that counts. */
    private static String part(Context ctx, Build build, Spot spot) {
        String position = spot.dimension().of();
        return Optional.ofNullable(ctx.queryParam("part"))
                .filter(name -> build.part(position, name).isPresent())
                .or(() -> build.partFor(position).map(Part::name))
                .orElse("");
    }

    /** The last thing that this device told, if it was a reading, in words; empty if it was not. */
    private static String last(Build build, String device) {
        return build.told(ReadingTaken.class).stream()
                .filter(told -> told.number() == build.size())
                .filter(told -> build.entry(told.number()).device().equals(device))
                .map(Told::fact)
                .map(reading -> Sentence.of(build.structure().name(reading.dimension())
                        + (reading.at().isEmpty() ? "" : ", " + reading.at()) + ": "
                        + Spoken.of(reading.value(), "")))
                .findFirst()
                .orElse("");
    }
}
