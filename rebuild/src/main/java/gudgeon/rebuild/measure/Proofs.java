package gudgeon.rebuild.measure;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Distribution;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Origin;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.reading.Component;
import gudgeon.rebuild.reading.Component.Role;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Figures;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import gudgeon.rebuild.reading.Reading;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What would prove an unproven size: each instrument of the person's own that can measure it is tried, by working out the verdict
 * that it would give if it read the same; then more readings; and only then what to borrow.
 */
public final class Proofs {
    private static final int MOST_READINGS = 10;
    /** An instrument of permissible error a and step a/2 leaves a standard uncertainty of a times this. */
    private static final double DOUBT_OF_ERROR = Math.sqrt(1.0 / 3 + 1.0 / 48);
    /** Nobody measures a part of an old engine closer at home; common practice, no source. */
    private static final double LEAST_ERROR_MM = 0.001;

    private static final double SHRINK = 0.8;
    private static final int MOST_SHRINKS = 40;

    private final Build build;
    private final Verdict verdict;
    private final OwnInstruments own;

    private Proofs(Build build, Verdict verdict) {
        this.build = build;
        this.verdict = verdict;
        this.own = OwnInstruments.of(build.instruments());
    }

    /** What would prove it, the easiest first; nothing where the verdict stands, or waits only for places that were not read. */
    public static List<Proof> of(Build build, Verdict verdict) {
        boolean asked = verdict.outcome() == Outcome.UNPROVEN && !verdict.waitsForPlaces();
        return asked ? new Proofs(build, verdict).proofs() : List.of();
    }

    private List<Proof> proofs() {
        List<Proof> proofs = new ArrayList<>();
        List<Dimension> sources = sources();
        for (Dimension source : sources) {
            serving(source)
                    .forEach(instrument ->
                            byReading(List.of(source), List.of(instrument)).ifPresent(proofs::add));
        }
        if (proofs.isEmpty() && sources.size() > 1) {
            List<Optional<OwnInstrument>> best =
                    sources.stream().map(this::best).toList();
            if (best.stream().allMatch(Optional::isPresent)) {
                byReading(sources, best.stream().flatMap(Optional::stream).toList())
                        .ifPresent(proofs::add);
            }
        }
        moreReadings().ifPresent(proofs::add);
        if (proofs.isEmpty()) {
            proofs.add(borrowed());
        }
        return proofs;
    }

    /** What is read with an instrument: the dimension itself, or those that it follows from. */
    private List<Dimension> sources() {
        return verdict
                .dimension()
                .derived()
                .map(Derivation::of)
                .orElse(List.of(verdict.dimension().id()))
                .stream()
                .distinct()
                .flatMap(id -> build.structure().dimension(id).stream())
                .toList();
    }

    private Evaluated evaluated(Dimension source) {
        return source.of().equals(verdict.dimension().of())
                ? Evaluated.of(build, source, verdict.part())
                : Evaluated.of(build, source);
    }

    /** Instruments that can measure it and were not used where it was read. */
    private List<OwnInstrument> serving(Dimension source) {
        Evaluated now = evaluated(source);
        double value =
                now.figures().stream().mapToDouble(Figure::value).findFirst().orElse(0);
        List<String> used = now.figures().stream()
                .flatMap(figure -> figure.readings().stream())
                .map(Reading::with)
                .toList();
        return own.all().stream()
                .filter(one -> Serving.serves(one, source, value) && !used.contains(one.name()))
                .toList();
    }

    private Optional<OwnInstrument> best(Dimension source) {
        return serving(source).stream()
                .min(Comparator.comparingDouble(
                        one -> Figures.single(source, 0, one, own).quantity().standardUncertainty()));
    }

    /** The proof that reading all places again would give. */
    private Optional<Proof> byReading(List<Dimension> sources, List<OwnInstrument> with) {
        List<ReadingTaken> readings = new ArrayList<>();
        List<String> what = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            OwnInstrument instrument = with.get(i);
            Evaluated now = evaluated(sources.get(i));
            now.figures().forEach(figure -> readings.add(again(now, figure, instrument)));
            what.add("the " + sources.get(i).name() + " with the " + instrument.name());
        }
        Verdict then = Verdict.of(build.asIf(readings), verdict.dimension(), verdict.part());
        return proved(then)
                .map(outcome -> new Proof(
                        with.stream().map(OwnInstrument::name).toList(),
                        outcome,
                        "Read " + Sentence.list(what) + ": if it reads the same, that proves it " + outcome.words()
                                + "."));
    }

    private static ReadingTaken again(Evaluated now, Figure figure, OwnInstrument with) {
        Unit unit = now.dimension().unit();
        return new ReadingTaken(
                now.dimension().id(),
                now.part(),
                figure.piece(),
                figure.at(),
                String.format(Locale.ROOT, "%.9f %s", figure.value(), unit.symbol())
                        .strip(),
                with.name(),
                OptionalDouble.empty(),
                "");
    }

    private static Optional<Outcome> proved(Verdict then) {
        return then.chances().map(Conformity::zone).flatMap(Proofs::proved);
    }

    private static Optional<Outcome> proved(Zone zone) {
        return switch (zone) {
            case IN -> Optional.of(Outcome.IN_LIMITS);
            case OUT -> Optional.of(Outcome.OUT_OF_LIMITS);
            case UNPROVEN -> Optional.empty();
        };
    }

    /** More readings at the place that decides, where the doubt comes from their scatter. */
    private Optional<Proof> moreReadings() {
        if (verdict.worst().isEmpty() || verdict.dimension().derived().isPresent()) {
            return Optional.empty();
        }
        Figure worst = verdict.worst().get();
        Optional<String> with = worst.components().stream()
                .filter(one -> one.role() == Role.STEP)
                .map(Component::instrument)
                .findFirst();
        long now = worst.readings().stream()
                .filter(reading -> with.filter(reading.with()::equals).isPresent())
                .count();
        for (long n = now + 1; now > 0 && n <= MOST_READINGS; n++) {
            Optional<Outcome> outcome =
                    proved(Conformity.of(withReadings(worst, now, n), limits()).zone());
            if (outcome.isPresent()) {
                return Optional.of(new Proof(
                        List.of(with.orElse("")),
                        outcome.get(),
                        "Read it " + n + " times in all with the " + with.orElse("")
                                + ": if they scatter as before about the same value, that proves it "
                                + outcome.get().words() + "."));
            }
        }
        return Optional.empty();
    }

    private static Quantity withReadings(Figure figure, long now, long then) {
        Stream<Doubt> doubts = figure.components().stream().map(one -> {
            Doubt doubt = one.doubt();
            double factor = one.role() == Role.SCATTER ? Math.sqrt((double) now / then) : 1;
            return new Doubt(
                    doubt.origin(),
                    doubt.distribution(),
                    doubt.standardUncertainty() * factor,
                    doubt.degreesOfFreedom());
        });
        return Quantity.of(figure.value(), doubts.toArray(Doubt[]::new));
    }

    private ToleranceInterval limits() {
        return verdict.limits();
    }

    /** How good an instrument would have to be. */
    private Proof borrowed() {
        double value = verdict.worst().map(Figure::value).orElse(0.0);
        double u = Math.abs(limits().room(value));
        Optional<Outcome> outcome = Optional.empty();
        for (int i = 0; i < MOST_SHRINKS && outcome.isEmpty(); i++) {
            u *= SHRINK;
            Doubt doubt = new Doubt(Origin.STATED, Distribution.NORMAL, u);
            outcome = proved(Conformity.of(Quantity.of(value, doubt), limits()).zone());
        }
        double error = u / DOUBT_OF_ERROR;
        Unit unit = verdict.dimension().unit();
        if (outcome.isEmpty() || (unit == Unit.MM && error < LEAST_ERROR_MM)) {
            return new Proof(
                    List.of(),
                    Outcome.UNPROVEN,
                    "It lies so near the limit that no workshop instrument will tell: decide as if it were out, or take the doubt knowingly.");
        }
        return new Proof(
                List.of(),
                outcome.get(),
                "None of your own instruments would prove it. Borrow one that errs by at most " + unit.figure(error)
                        + " all in all, with a step of half that or less, or have it measured: at this value that proves it "
                        + outcome.get().words() + ".");
    }
}
