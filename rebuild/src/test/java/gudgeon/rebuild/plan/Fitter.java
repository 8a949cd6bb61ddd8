package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.PartSize;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.StartRound;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.start.StartItem;
import gudgeon.rebuild.start.StartList;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Someone who does everything right and writes all of it down, on one device or on several that have not always seen the other's last
 * entry, and after every entry looks at the alarms and the plan.
 */
final class Fitter {
    /** Longer than anything takes to set. */
    private static final Duration BETWEEN_STEPS = Duration.ofDays(8);

    private final Alarms alarms = new Alarms();
    private final Set<String> raised = new TreeSet<>();
    private final Manner manner;
    private final Random chance;
    private Build build;
    private Instant now = SmallBook.MORNING;

    Fitter(EngineBook book) {
        this(book, Manner.PLAIN);
    }

    Fitter(EngineBook book, Manner manner) {
        this.manner = manner;
        this.chance = new Random(manner.seed());
        build = Build.of(book);
    }

    /** The chance by which this fitter chooses where any choice is right. */
    Random chance() {
        return chance;
    }

    Build build() {
        return build;
    }

    /** Kind and place of every alarm that stood after any entry. */
    Set<String> raised() {
        return raised;
    }

    /** What can be done once paint and sealant have set. */
    List<String> canBeDone() {
        return Plan.of(build, now.plus(BETWEEN_STEPS)).now().stream()
                .map(Doable::id)
                .toList();
    }

    List<Alarm> standing() {
        return alarms.standing(build);
    }

    Plan plan() {
        return Plan.of(build, now);
    }

    void tells(Fact fact) {
        now = now.plusSeconds(60);
        build = build.after(entry(fact));
        standing().forEach(alarm -> raised.add(alarm.kind() + " " + alarm.at()));
        assertThat(build.unknown()).isEmpty();
        Plan plan = plan();
        plan.waiting()
                .forEach(waiting -> assertThat(isDone(waiting.id()))
                        .as("%s waits, and is done", waiting.id())
                        .isFalse());
        plan.now()
                .forEach(next -> assertThat(isDone(next.id()))
                        .as("%s can be done, and is done", next.id())
                        .isFalse());
    }

    /** By the next device, which may not have seen what another one wrote last of something else. */
    private Entry entry(Fact fact) {
        String device =
                manner.devices().get((int) (build.size() % manner.devices().size()));
        boolean lags = build.size() > 1
                && !build.entry(build.size()).device().equals(device)
                && !build.entry(build.size()).fact().about().equals(fact.about())
                && chance.nextBoolean();
        return new Entry("k" + build.size(), now, device, lags ? build.size() - 1 : build.size(), fact);
    }

    private boolean isDone(String id) {
        CheckState.Status check = build.check(id).status();
        return build.structure().check(id).isPresent()
                ? check == CheckState.Status.PASSED || check == CheckState.Status.WAIVED
                : build.step(id).stands();
    }

    void takesAllOff() {
        for (List<Off> next = TakingDown.of(build).next();
                !next.isEmpty();
                next = TakingDown.of(build).next()) {
            takesOff(next.get(manner.anyOrder() ? chance.nextInt(next.size()) : 0));
        }
    }

    void takesOff(Off off) {
        tells(new Fact.TakenOff(off.position(), off.quantity(), TakingDown.suggestedBag(build), "shelf", ""));
    }

    void cleansAll() {
        inTurn(build.structure().positions())
                .forEach(position -> tells(new Fact.Cleaned(position.id(), Cleaning.WASHED, "")));
    }

    /** In the order given, or in any. */
    private <T> List<T> inTurn(List<T> these) {
        List<T> turn = new ArrayList<>(these);
        if (manner.anyOrder()) {
            Collections.shuffle(turn, chance);
        }
        return turn;
    }

    /** New ones for what can be used only once, compared copies where it matters, and where nothing is known a used one. */
    void getsParts() {
        for (Position position : inTurn(build.structure().positions())) {
            if (build.place(position.id()).status() == Place.Status.OUT) {
                gets(position);
            }
        }
    }

    /** Gets what a position lacks. */
    void gets(Position position) {
        boolean hasOne = build.partFor(position.id())
                .filter(part -> !part.name().isEmpty() || !position.singleUse())
                .filter(part -> part.name().isEmpty() || !part.spent())
                .isPresent();
        if (position.critical() && build.parts(position.id()).isEmpty()) {
            enters(position, Origin.PATTERN);
            String part = build.partFor(position.id()).map(Part::name).orElse("");
            tells(new Fact.Compared(position.id(), part, position.compare(), true, ""));
            measures(position, part);
        } else if (position.singleUse() && !hasOne) {
            enters(position, Origin.ORIGINAL);
        } else if (!hasOne) {
            enters(position, Origin.USED);
        }
    }

    private void enters(Position position, Origin origin) {
        if (manner.oneByOne()) {
            String order = "order " + build.size();
            tells(new Ordered(order, position.id(), position.quantity(), "parts counter", "4.20 EUR"));
            tells(new Arrived(order, position.id(), position.quantity(), ""));
        }
        tells(new Fact.PartEntered(
                origin + " " + position.id() + " " + build.size(), position.id(), origin, position.quantity(), ""));
    }

    private void measures(Position position, String part) {
        Map<String, String> sizes = new LinkedHashMap<>();
        PartSize.of(build, position).forEach(size -> sizes.put(size.key(), size.booked()));
        if (!sizes.isEmpty()) {
            tells(new Fact.Measured(position.id(), part, sizes));
        }
    }

    /** Does these steps and checks one after another; the plan must have said of each that it can be done. */
    void does(List<String> order) {
        for (String next : order) {
            if (isDone(next)) {
                continue;
            }
            now = now.plus(BETWEEN_STEPS);
            assertThat(plan().now().stream().map(Doable::id))
                    .as("what can be done when the order comes to %s: %s", next, waits(next))
                    .contains(next);
            build.structure().check(next).ifPresent(check -> tells(passed(check)));
            build.structure().step(next).ifPresent(this::does);
        }
    }

    private List<String> waits(String id) {
        return plan().waiting().stream()
                .filter(waiting -> waiting.id().equals(id))
                .flatMap(waiting -> waiting.reasons().stream())
                .map(Reason::sentence)
                .toList();
    }

    private void does(Step step) {
        boolean starts = StartRound.step(build).filter(step::equals).isPresent();
        boolean runsIn = step.id().equals("run-in");
        if (starts) {
            signs();
        }
        if (runsIn) {
            new FirstRuns(this).doesWhatIsDue();
        }
        tells(new Fact.StepBegun(step.id()));
        for (String position : inTurn(step.fits())) {
            Place place = build.place(position);
            if (!place.isFilled()) {
                int count = build.structure().position(position).orElseThrow().quantity() - place.count();
                String part = build.partFor(position).map(Part::name).orElse("");
                tells(SmallBook.fitted(position, part, count));
            }
        }
        if (runsIn) {
            new FirstRuns(this).toTheEnd();
        }
        tells(new Fact.StepDone(step.id(), ""));
        if (starts) {
            new FirstRuns(this).stage();
        }
    }

    /** Goes through the list before the first start: after a sound rebuild only what is to be ticked is open. */
    private void signs() {
        StartList.of(build, standing()).holding().stream()
                .filter(StartItem::isTicked)
                .forEach(item -> tells(new StartItemSeen(item.id(), true, "")));
        StartList list = StartList.of(build, standing());
        assertThat(list.holding()).isEmpty();
        tells(list.signature("fitter", ""));
    }

    /** It passes with a reading in the midst of what is expected. */
    static Fact passed(Check check) {
        return new Fact.CheckPassed(
                check.id(), check.expect().map(Fitter::middle).orElse(""), "");
    }

    private static String middle(Expect expect) {
        double value = expect.atLeast().isPresent() && expect.atMost().isPresent()
                ? (expect.atLeast().getAsDouble() + expect.atMost().getAsDouble()) / 2
                : expect.atLeast().orElseGet(() -> expect.atMost().getAsDouble());
        return expect.figure(value);
    }

    /** What is left, in the best order. */
    List<String> bestOrder() {
        return BestOrder.of(build, Duration.ofSeconds(20)).order();
    }

    /** Opens the engine again to get at something, and buys what that destroyed. */
    void undoes(String at, String why) {
        Undo undo = Undo.of(build, at);
        undo.facts(why).forEach(this::tells);
        undo.buy()
                .forEach(buy -> tells(new Fact.PartEntered(
                        "new " + buy.position() + " " + build.size(),
                        buy.position(),
                        Origin.ORIGINAL,
                        buy.quantity(),
                        "")));
    }

    /** Opens what the plan says covers a check that is left, such as the tappet caps over the valve clearance. */
    void uncoversWhatIsToBeProved() {
        plan().waiting().stream()
                .filter(waiting -> build.structure().check(waiting.id()).isPresent())
                .flatMap(waiting -> waiting.reasons().stream())
                .map(Reason::id)
                .filter(step -> build.structure().step(step).isPresent())
                .distinct()
                .forEach(step -> {
                    if (build.step(step).stands()) {
                        undoes(step, "It covers what is to be proved.");
                    }
                });
    }

    List<String> left() {
        List<String> left =
                new ArrayList<>(plan().now().stream().map(Doable::id).toList());
        plan().waiting().stream().map(Waiting::id).forEach(left::add);
        return left;
    }
}
