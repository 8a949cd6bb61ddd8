package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.StartPoint;
import gudgeon.rebuild.book.TypedDwell;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.TypedSpark;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.FluidChanged;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Proving.StopTouched;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a fact about proving, starting or running in can't be taken down as it stands. */
final class ProvingRefusals {
    private static final double TURN_DEG = 360;
    /** No points open wider; generous on purpose. */
    private static final double WIDEST_MM = 3;

    private static final int MOST_MINUTES = 24 * 60;

    private final Build build;
    private final Refusals refusals;

    ProvingRefusals(Build build, Refusals refusals) {
        this.build = build;
        this.refusals = refusals;
    }

    void look(Proving fact) {
        if (fact instanceof StopTouched stop) {
            onDisc("turning forward", stop.forwardDeg());
            onDisc("turning backward", stop.backwardDeg());
            if (stop.forwardDeg() == stop.backwardDeg()) {
                refusals.refuse(
                        "Both readings at the stop are the same, so the stop did not hold the piston. Let it stand farther in,"
                                + " and read again.");
            }
        } else if (fact instanceof LobeRead read) {
            lobe(read);
        } else if (fact instanceof IgnitionRead read) {
            ignition(read);
        } else if (fact instanceof StartItemSeen seen) {
            item(seen.item());
        } else if (fact instanceof StartSigned signed) {
            signed(signed);
        } else if (fact instanceof FluidChanged changed) {
            fluid(changed.fluid());
        } else if (fact instanceof RanIn ran) {
            stage(ran.stage());
            if (ran.minutes() < 1 || ran.minutes() > MOST_MINUTES) {
                refusals.refuse("One run is 1 to " + MOST_MINUTES + " minutes, not " + ran.minutes() + ".");
            }
        }
    }

    private void item(String item) {
        boolean known = StartPoint.of(item).isPresent()
                || build.book().commissioning().fluid(item).isPresent();
        if (!known) {
            refusals.refuse("The list before the first start has no point '" + item + "'. Choose one from the list.");
        }
    }

    private void stage(String stage) {
        if (build.book().runningIn().stage(stage).isEmpty()) {
            refusals.refuse("The scheme of running in has no stage '" + stage + "'. Choose one from the list.");
        }
        StartRound.step(build)
                .filter(step -> build.step(step.id()).status() == StepState.Status.OPEN)
                .ifPresent(step -> refusals.refuse(
                        "The step '" + step.name() + "' is not begun, so it can't have run. Begin it first."));
    }

    private void fluid(String fluid) {
        if (build.book().commissioning().fluid(fluid).isEmpty()) {
            refusals.refuse("The engine book has no fluid '" + fluid + "'. Choose one from the list.");
        }
    }

    private void onDisc(String way, double deg) {
        if (!(deg >= 0 && deg < TURN_DEG)) {
            refusals.refuse(
                    "What the disc reads " + way + " is 0 up to 360 degrees, not " + Unit.DEGREES.figure(deg) + ".");
        }
    }

    private void lobe(LobeRead read) {
        refusals.said(read.lift(), "the lift with its unit");
        refusals.said(read.opening(), "the angle opening, such as 12 btdc");
        refusals.said(read.closing(), "the angle closing, such as 45 abdc");
        Optional<ValveEntry> valve = build.book().geometry().flatMap(geometry -> geometry.valve(read.valve()));
        if (valve.isEmpty()) {
            refusals.refuse("The engine book has no valve '" + read.valve() + "'. Choose one from the list.");
        } else {
            new LobeRefusals(valve.get(), refusals).look(read);
        }
    }

    private void ignition(IgnitionRead read) {
        refusals.said(read.value(), "what was read, with its unit");
        if (read.value().isBlank()) {
            return;
        }
        switch (read.what()) {
            case OPENS -> {
                if (TypedSpark.of(read.value()) instanceof TypedSpark.Refused refused) {
                    refusals.refuse(refused.sentence());
                }
            }
            case GAP -> {
                if (!(TypedSize.of(Unit.MM, read.value(), 1) instanceof TypedSize.Read gap)
                        || gap.value() <= 0
                        || gap.value() > WIDEST_MM) {
                    refusals.refuse(
                            "'" + read.value() + "' is no points gap. Write it as 0.35 mm or 14 thou, above 0 up to "
                                    + Unit.MM.figure(WIDEST_MM) + ".");
                }
            }
            case DWELL -> {
                if (TypedDwell.deg(read.value()).isEmpty()) {
                    refusals.refuse(TypedDwell.refusal(read.value()));
                }
            }
        }
    }

    private void signed(StartSigned signed) {
        refusals.said(signed.by(), "who signs");
        String held = StartRound.step(build).stream()
                .flatMap(step -> build.unproven(step.id()).stream())
                .map(Check::name)
                .filter(name -> !signed.open().contains(name))
                .collect(Collectors.joining("; "));
        if (!held.isEmpty()) {
            refusals.refuse("Hold point before the first start: " + held
                    + ". Do it, or name it among what is open and say why it is started all the same.");
        }
        if (!signed.open().isEmpty()) {
            refusals.said(signed.reason(), "why it is started with that open; the next owner will read it");
        }
    }
}
