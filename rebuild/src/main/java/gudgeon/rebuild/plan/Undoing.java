package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Cover;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Works out an {@link Undo}: finds what comes off, then asks the build what would be so if it were off. */
final class Undoing {
    private final Build build;
    private final Structure structure;
    private final String id;
    private final List<String> order;

    Undoing(Build build, String id) {
        this.build = build;
        this.structure = build.structure();
        this.id = id;
        this.order = structure.precedence().order();
    }

    Undo undo() {
        List<Step> off = comingOff(positions());
        List<Step> again = doneOn(off);
        Build without = without(off, again);
        List<String> made = madeVoid(without);
        List<Buy> buy = toBuy(off, without);
        List<String> back = back(off, again, askedAgain(without));
        int minutesOff = (minutes(off.stream().map(Step::id).toList()) + 1) / 2;
        Undo silent = new Undo(id, off, again, made, buy, minutesOff, minutes(back), back, List.of());
        return new Undo(
                id, off, again, made, buy, minutesOff, minutes(back), back, new UndoSentences(build, silent).all());
    }

    /** The positions to be got at. */
    private Set<String> positions() {
        if (structure.position(id).isPresent() || structure.step(id).isPresent()) {
            return new LinkedHashSet<>(structure.positionsOf(id));
        }
        return structure
                .check(id)
                .map(structure::cleared)
                .orElseThrow(() -> new IllegalArgumentException("no position, step or check '" + id + "'"));
    }

    /** A step comes off as a whole, so what covers any part of it comes off before. */
    private List<Step> comingOff(Set<String> positions) {
        Set<Step> own = new LinkedHashSet<>();
        Set<String> reached = new LinkedHashSet<>(positions);
        structure.step(id).filter(step -> InPlace.any(build, step)).ifPresent(own::add);
        positions.forEach(position -> structure
                .stepFitting(position)
                .filter(step -> InPlace.any(build, step))
                .ifPresent(own::add));
        own.forEach(step -> reached.addAll(step.fits()));
        Set<Step> off = new LinkedHashSet<>(own);
        off.addAll(Cover.of(structure, reached, build::covers));
        return outermostFirst(off);
    }

    private List<Step> outermostFirst(Set<Step> steps) {
        List<Step> sorted = new ArrayList<>(order.stream()
                .flatMap(node -> structure.step(node).stream())
                .filter(steps::contains)
                .toList());
        Collections.reverse(sorted);
        return sorted;
    }

    /** Steps that fit nothing and were done on a part that comes off: a setting is lost with what was set. */
    private List<Step> doneOn(List<Step> off) {
        return outermostFirst(off.stream()
                .flatMap(step -> step.fits().stream())
                .flatMap(position -> structure.stepsDoneOn(position).stream())
                .filter(step -> build.step(step.id()).stands() && !off.contains(step))
                .collect(Collectors.toSet()));
    }

    private Build without(List<Step> off, List<Step> again) {
        return build.asIf(Stream.concat(again.stream(), off.stream())
                .map(step -> new Fact.Undone(step.id(), "", List.of()))
                .toList());
    }

    private List<String> madeVoid(Build without) {
        return order.stream()
                .filter(node -> build.check(node).status() == CheckState.Status.PASSED)
                .filter(node -> without.check(node).status() == CheckState.Status.VOID)
                .toList();
    }

    /** What nobody has to prove as things stand, and would have to then. */
    private List<String> askedAgain(Build without) {
        Set<String> before = new Left(build).ids();
        return new Left(without)
                .ids().stream()
                        .filter(node -> structure.check(node).isPresent() && !before.contains(node))
                        .toList();
    }

    private List<Buy> toBuy(List<Step> off, Build without) {
        PartsInHand spares = new PartsInHand(without);
        return off.stream()
                .flatMap(step -> step.fits().stream())
                .flatMap(position -> structure.position(position).stream())
                .filter(position -> position.singleUse() && !spares.hasSpare(position))
                .map(position -> new Buy(position.id(), position.name(), position.quantity(), price(position)))
                .toList();
    }

    private String price(Position position) {
        long number = build.lastTold(
                position.id(),
                fact -> fact instanceof Sourcing.Ordered ordered
                        && !ordered.price().isBlank());
        return number > 0 && build.fact(number).orElseThrow() instanceof Sourcing.Ordered ordered
                ? ordered.price()
                : "";
    }

    /** What comes off goes back, and what is void, or failed on it, is proved again. */
    private List<String> back(List<Step> off, List<Step> again, List<String> proofs) {
        Set<String> all = new LinkedHashSet<>(proofs);
        off.forEach(step -> all.add(step.id()));
        again.forEach(step -> all.add(step.id()));
        structure.checks().stream()
                .filter(check -> build.check(check.id()).status() == CheckState.Status.FAILED)
                .filter(check -> check.id().equals(id)
                        || check.clears().stream()
                                .anyMatch(suspect -> suspect.equals(id)
                                        || off.stream()
                                                .anyMatch(step -> step.id().equals(suspect)
                                                        || step.fits().contains(suspect))))
                .forEach(check -> all.add(check.id()));
        return order.stream().filter(all::contains).toList();
    }

    private int minutes(List<String> ids) {
        return ids.stream()
                .mapToInt(node -> WorkBehind.minutesOf(structure, node))
                .sum();
    }
}
