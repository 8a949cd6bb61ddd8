package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.rebuild.book.Instrument;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What timing is read with: the person's own instruments, else the book's, else what is usual.
 *
 * @param disc the degree disc
 * @param gauge the dial gauge
 * @param feelers the feeler gauges
 */
public record TimingInstruments(Instrument disc, Instrument gauge, Instrument feelers) {
    /** A printed disc, a workshop's dial gauge and feelers: common practice, no source. */
    static final TimingInstruments USUAL = new TimingInstruments(
            new Instrument("degree disc", Unit.DEGREES, 1, 0.5),
            new Instrument("dial gauge", Unit.MM, 0.01, 0.02),
            new Instrument("feeler gauges", Unit.MM, 0.05, 0.01));

    /** How far slack in the drive still lets a valve lag, turned forward only: common practice, no source. */
    static final double SLACK_DEG = 1;

    /** How far off top dead centre may be that was not found by a stop: common practice, no source. */
    static final double UNPROVEN_TOP_DEG = 2;

    /** How far off a length along a rim is read: common practice, no source. */
    static final double RIM_MM = 0.5;

    /** Those of a build. */
    static TimingInstruments of(Build build) {
        return new TimingInstruments(
                choose(build, InstrumentKind.DEGREE_DISC, "disc", USUAL.disc),
                choose(build, InstrumentKind.DIAL_GAUGE, "dial", USUAL.gauge),
                choose(build, InstrumentKind.FEELER_GAUGES, "feeler", USUAL.feelers));
    }

    private static Instrument choose(Build build, InstrumentKind kind, String word, Instrument usual) {
        Stream<Instrument> own = OwnInstruments.of(build.instruments()).all().stream()
                .filter(one -> one.kind() == kind)
                .map(OwnInstrument::scale);
        Stream<Instrument> booked = build.book().geometry().stream()
                .flatMap(geometry -> geometry.instruments().stream())
                .filter(one -> one.id().contains(word));
        Optional<Instrument> first = Stream.concat(own, booked)
                .filter(one -> one.unit() == usual.unit())
                .findFirst();
        return first.orElse(usual);
    }

    /** The doubts of the mean of several readings of the disc: its error is in all of them, its step in each. */
    List<Doubt> ofDisc(int readings) {
        return List.of(Doubt.resolution(disc.resolution() / Math.sqrt(readings)), Doubt.permissibleError(disc.error()));
    }

    /** What was taken for granted of them, a sentence. */
    String sentence() {
        return "Taken for granted: the " + disc.id() + " reads to "
                + disc.unit().figure(disc.resolution())
                + " with an error of up to " + disc.unit().figure(disc.error()) + ", the " + gauge.id() + " to "
                + gauge.unit().figure(gauge.resolution()) + " with up to "
                + gauge.unit().figure(gauge.error()) + ".";
    }
}
