package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Derivation.As;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Condition;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * What the readings say of one part: its own sizes, and the clearances that it owns one end of. A clearance has two owners: out of
 * limits, it says that one of them is worn, and not which.
 */
final class Measured {
    private final Build build;
    private final Structure structure;
    private final Position position;
    private final String part;
    private final List<Verdict> own;
    private final List<String> out = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private final List<String> in = new ArrayList<>();
    private final List<String> unread = new ArrayList<>();

    Measured(Build build, Position position, String part) {
        this.build = build;
        this.structure = build.structure();
        this.position = position;
        this.part = part;
        this.own = structure.dimensions().stream()
                .filter(dimension -> owners(dimension).equals(List.of(position.id())))
                .map(dimension -> Verdict.of(build, dimension, part))
                .toList();
        own.forEach(this::ofOwn);
        structure.dimensions().stream()
                .filter(dimension ->
                        owners(dimension).size() > 1 && owners(dimension).contains(position.id()))
                .forEach(this::ofShared);
        if (!unread.isEmpty()) {
            open.add("Not measured yet: " + Sentence.list(unread) + ".");
        }
    }

    /** What is out of limits and this part's own, sentences. */
    List<String> out() {
        return out;
    }

    /** What has limits and is not proved to be in them, sentences. */
    List<String> open() {
        return open;
    }

    /** What is proved in limits, sentences. */
    List<String> in() {
        return in;
    }

    /** Whether something of it is in limits and past what a new one has. */
    boolean isWorn() {
        return own.stream().anyMatch(verdict -> verdict.condition() == Condition.WORN);
    }

    /** Whether all that is out is the hole that a part with oversizes runs in, so that boring cures it. */
    boolean isClearedByBoring() {
        return own.stream()
                .filter(verdict -> verdict.outcome() == Outcome.OUT_OF_LIMITS)
                .map(Verdict::dimension)
                .allMatch(dimension -> sources(dimension).stream().allMatch(this::hasOversizes));
    }

    private boolean hasOversizes(String hole) {
        return structure.dimensions().stream()
                .flatMap(dimension -> dimension.derived().stream())
                .filter(derived ->
                        derived.as() == As.CLEARANCE && derived.of().get(0).equals(hole))
                .flatMap(derived -> structure.dimension(derived.of().get(1)).stream())
                .flatMap(shaft -> structure.position(shaft.of()).stream())
                .anyMatch(mate -> !mate.oversizes().isEmpty());
    }

    private List<String> sources(Dimension dimension) {
        return dimension.derived().map(Derivation::of).orElse(List.of(dimension.id()));
    }

    /** The positions whose parts a dimension is read on. */
    private List<String> owners(Dimension dimension) {
        return dimension.derived().isEmpty()
                ? List.of(dimension.of())
                : sources(dimension).stream()
                        .flatMap(id -> structure.dimension(id).stream())
                        .map(Dimension::of)
                        .distinct()
                        .toList();
    }

    private void ofOwn(Verdict verdict) {
        if (verdict.dimension().expect().isEmpty()) {
            return;
        }
        switch (verdict.outcome()) {
            case OUT_OF_LIMITS -> out.add(sentence(verdict));
            case IN_LIMITS -> in.add(sentence(verdict));
            case UNPROVEN -> open.add(sentence(verdict));
            case NOT_MEASURED -> {
                if (verdict.dimension().isRead()) {
                    unread.add(verdict.dimension().name());
                }
            }
            case NO_LIMITS -> {
                // nothing to be judged by
            }
        }
    }

    private void ofShared(Dimension dimension) {
        Verdict verdict = Verdict.of(build, dimension);
        boolean judged = verdict.outcome() == Outcome.OUT_OF_LIMITS || verdict.outcome() == Outcome.UNPROVEN;
        if (dimension.expect().isEmpty() || !judged || !part.equals(counted())) {
            return;
        }
        if (verdict.outcome() == Outcome.UNPROVEN) {
            open.add(sentence(verdict));
            return;
        }
        List<String> mates = owners(dimension).stream()
                .filter(owner -> !owner.equals(position.id()))
                .toList();
        if (isAnswered(dimension, mates)) {
            return;
        }
        open.add(sentence(verdict) + " It has more than one owner: with a new "
                + Sentence.list(mates.stream().map(structure::name).toList())
                + " it tells which is worn; if it is then in limits, the old mate was, and if not, this is.");
    }

    private String counted() {
        return build.partFor(position.id()).map(one -> one.name()).orElse("");
    }

    /** Whether it is known which of the owners is worn: this one is out itself, or a mate is and this one is not. */
    private boolean isAnswered(Dimension dimension, List<String> mates) {
        boolean mateOut = false;
        for (String id : sources(dimension)) {
            Dimension end = structure.dimension(id).orElseThrow();
            Outcome outcome = Verdict.of(build, end).outcome();
            if (end.of().equals(position.id()) && outcome == Outcome.OUT_OF_LIMITS) {
                return true;
            }
            mateOut |= mates.contains(end.of()) && outcome == Outcome.OUT_OF_LIMITS;
        }
        return mateOut;
    }

    private static String sentence(Verdict verdict) {
        String wanted = verdict.dimension()
                .expect()
                .map(limits -> verdict.worst()
                        .map(figure -> " is " + limits.figure(figure.value()) + ", wanted is " + limits.words())
                        .orElse(""))
                .orElse("");
        String places = verdict.waitsForPlaces()
                ? " so far, with " + verdict.evaluated().missing() + " of its places not read yet"
                : "";
        return Sentence.capital(verdict.dimension().name()) + wanted + ": "
                + verdict.outcome().words() + places + ".";
    }
}
