package gudgeon.rebuild.source;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.plan.Undo;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.source.Want.Kind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds why something has to be bought, whether or not it is ordered already. */
final class Wants {
    private final Build build;
    private final Map<String, Want> byOpening = new HashMap<>();

    Wants(Build build) {
        this.build = build;
        Stream.concat(toBeChanged(), faulty())
                .filter(id -> build.structure().has(id))
                .distinct()
                .forEach(this::open);
    }

    /** Why something has to be bought for a position, if it has. */
    Optional<Want> of(Position position) {
        Place place = build.place(position.id());
        int count = place.isFilled() ? position.quantity() : position.quantity() - place.count();
        Optional<Want> decided = decided(position, place, count);
        if (decided.isPresent()) {
            return decided;
        }
        if (place.isFilled()) {
            return Optional.ofNullable(byOpening.get(position.id()));
        }
        return lacking(position, place, count);
    }

    /** What a person decided of the part that was there, or what its readings prove of it where nobody decided yet. */
    private Optional<Want> decided(Position position, Place place, int count) {
        boolean isOld = build.partFor(position.id()).map(Part::name).orElse("").isEmpty() || place.isOut();
        if (!isOld) {
            return Optional.empty();
        }
        if (place.disposition().isEmpty()) {
            return worn(position).map(verdict -> new Want(Kind.WORN, count, worn(position, verdict)));
        }
        return place.disposition().get() == Disposition.REPLACE
                ? Optional.of(new Want(Kind.REPLACE, count, toBeReplaced(position)))
                : Optional.empty();
    }

    private Optional<Verdict> worn(Position position) {
        return build.structure().dimensions().stream()
                .filter(dimension -> dimension.of().equals(position.id()))
                .filter(dimension -> dimension.derived().isEmpty())
                .map(dimension -> Verdict.of(build, dimension, ""))
                .filter(verdict -> verdict.outcome() == Outcome.OUT_OF_LIMITS)
                .findFirst();
    }

    private static String worn(Position position, Verdict verdict) {
        return "The " + position.name() + " that came off is out of limits: "
                + verdict.dimension().name()
                + verdict.worst()
                        .flatMap(worst -> verdict.dimension()
                                .expect()
                                .map(limits -> " " + limits.figure(worst.value()) + ", allowed " + limits.words()))
                        .orElse("")
                + ". Decide whether it is replaced or repaired.";
    }

    private String toBeReplaced(Position position) {
        return "The " + position.name() + " that came off is to be replaced."
                + build.told(Fact.Disposed.class, position.id()).stream()
                        .filter(told -> told.fact().part().isEmpty())
                        .reduce((before, later) -> later)
                        .map(Told::fact)
                        .map(Fact.Disposed::why)
                        .filter(why -> !why.isBlank())
                        .map(why -> " " + Sentence.of(why.strip()))
                        .orElse("");
    }

    /** Why what goes into an empty place can't be what came out of it. */
    private Optional<Want> lacking(Position position, Place place, int count) {
        if (position.singleUse()) {
            return Optional.of(onceOnly(position, place, count));
        }
        List<Part> refused =
                build.parts(position.id()).stream().filter(Wants::isRefused).toList();
        boolean cameOff = place.off().isPresent() || place.removed() > 0;
        if (!refused.isEmpty() && !cameOff) {
            String name = refused.get(refused.size() - 1).name();
            return Optional.of(new Want(
                    Kind.REFUSED, count, "The " + position.name() + " '" + name + "' that came is not to be used."));
        }
        // of what nobody spoke yet, nobody knows that it is missing: it is to be looked for, not bought
        int off = build.told(Fact.TakenOff.class, position.id()).stream()
                .mapToInt(told -> told.fact().count())
                .sum();
        return cameOff && off > 0 && off < count
                ? Optional.of(new Want(
                        Kind.MISSING,
                        count - off,
                        "Of " + Amount.of(position.quantity(), "piece") + " of " + position.name() + " only " + off
                                + " came off."))
                : Optional.empty();
    }

    private Want onceOnly(Position position, Place place, int count) {
        boolean again = place.fitted() > 0
                || (place.removed() > 0
                        && build.fact(place.removed())
                                .filter(Fact.Undone.class::isInstance)
                                .isPresent());
        return again
                ? new Want(
                        Kind.UNDONE,
                        count,
                        "Opening the engine again destroyed the " + position.name() + "; it can be used only once.")
                : new Want(Kind.SINGLE_USE, count, "The " + position.name() + " that came off can't be used again.");
    }

    /** Whether a part that came for a position is not to be used: it did not agree, or was decided against. */
    static boolean isRefused(Part part) {
        return part.spent() || !part.agrees();
    }

    private Stream<String> toBeChanged() {
        return build.structure().positions().stream()
                .map(Position::id)
                .filter(id -> build.place(id).isFilled())
                .filter(id -> build.place(id)
                        .disposition()
                        .filter(as -> as == Disposition.REPLACE || as == Disposition.REPAIR)
                        .isPresent());
    }

    private Stream<String> faulty() {
        return build.openFaults().stream()
                .flatMap(number -> build.fact(number).stream())
                .filter(Fact.FaultFound.class::isInstance)
                .map(Fact::about);
    }

    private void open(String id) {
        Undo.of(build, id)
                .buy()
                .forEach(buy -> byOpening.putIfAbsent(
                        buy.position(),
                        new Want(
                                Kind.OPENING,
                                buy.quantity(),
                                "Getting at the " + build.structure().name(id) + " destroys the " + buy.name() + ".")));
    }
}
