package gudgeon.benchmarks.web;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Off;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.plan.TakingDown;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A rebuild from the first archetype: taken down, cleaned, its single-use parts bought, and half built again as the plan says. */
final class HalfBuilt {
    private static final int ENTRIES = 500;

    private Instant now = Instant.parse("2026-03-02T08:00:00Z");
    private Build build;
    private final List<Entry> entries = new ArrayList<>();

    private HalfBuilt(Build build) {
        this.build = build;
    }

    /**
     * Puts it on a shelf.
     *
     * @return its id
     */
    static String on(Shelf shelf) {
        String id = shelf.start("Tarn 98", Archetype.LYING_OVERHEAD_CAM_SINGLE.text(), Found.TOGETHER, "tablet");
        HalfBuilt half = new HalfBuilt(shelf.build(id).orElseThrow());
        half.takeDown();
        half.clean();
        half.buildAgain();
        if (!(shelf.append(id, half.entries) instanceof Outcome.Kept)) {
            throw new IllegalStateException("the journal was not kept");
        }
        return id;
    }

    private void takeDown() {
        for (List<Off> next = TakingDown.of(build).next();
                !next.isEmpty();
                next = TakingDown.of(build).next()) {
            Off off = next.get(0);
            tell(new Fact.TakenOff(
                    off.position(),
                    off.quantity(),
                    TakingDown.suggestedBag(build),
                    "the long shelf",
                    "as it came off"));
        }
    }

    private void clean() {
        for (Position position : build.structure().positions()) {
            tell(
                    position.singleUse()
                            ? new Fact.PartEntered(
                                    "new " + position.id(), position.id(), Origin.ORIGINAL, position.quantity(), "")
                            : new Fact.Cleaned(position.id(), Cleaning.WASHED, ""));
        }
    }

    private void buildAgain() {
        while (build.size() < ENTRIES) {
            List<Doable> doable = Plan.of(build, now).now();
            if (doable.isEmpty()) {
                tell(new Fact.Noted("", "Waited for what sets."));
            } else if (doable.get(0).isCheck()) {
                tell(new Fact.CheckPassed(doable.get(0).id(), "", ""));
            } else {
                build(build.structure().step(doable.get(0).id()).orElseThrow());
            }
        }
    }

    private void build(Step step) {
        for (String id : step.fits()) {
            int quantity =
                    build.structure().position(id).map(Position::quantity).orElse(1);
            String part = build.partFor(id).map(Part::name).orElse("");
            tell(new Fact.Fitted(id, part, quantity, Way.NOT_SAID, ""));
        }
        tell(new Fact.StepDone(step.id(), ""));
        tell(new Fact.TimeSpent(step.id(), 15));
    }

    private void tell(Fact fact) {
        now = now.plus(Duration.ofMinutes(30));
        Entry entry = new Entry("half-" + build.size(), now, "tablet", build.size(), fact);
        build = build.after(entry);
        entries.add(entry);
    }
}
