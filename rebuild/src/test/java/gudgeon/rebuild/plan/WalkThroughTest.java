package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Precedence;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever does what the plan says comes to the end, and whoever takes off what is free has it all apart. */
class WalkThroughTest {
    private static final String LYING = "lying-overhead-cam-single";
    private static final String UPRIGHT = "upright-pushrod-single";
    private static final String STATIONARY = "side-valve-stationary";

    private static final Instant MUCH_LATER = SmallBook.MORNING.plus(Duration.ofDays(365));

    private static EngineBook archetype(String name) throws IOException {
        try (InputStream in = Build.class.getResourceAsStream("/gudgeon/rebuild/archetype/" + name + ".yaml")) {
            assertThat(in).isNotNull();
            return SmallBook.book(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    /** In pieces, with a new part for every position. */
    private static Build allInHand(EngineBook book) {
        List<Fact> facts = new ArrayList<>(List.of(SmallBook.inPieces()));
        for (Position position : book.structure().positions()) {
            facts.add(new Fact.PartEntered(
                    "new " + position.id(), position.id(), Origin.ORIGINAL, position.quantity(), ""));
        }
        return SmallBook.told(book, facts.toArray(Fact[]::new));
    }

    /**
     * Does what the plan puts first until nothing is left, or only checks that became void or were buried under a cover, and what
     * waits for these.
     *
     * @return the rebuild then
     */
    private static Build done(Build start) {
        Build build = start;
        Instant now = SmallBook.MORNING;
        Plan plan = Plan.of(build, now);
        while (!plan.now().isEmpty() || waitsFor(plan, Reason.Kind.TIME)) {
            if (!plan.now().isEmpty()) {
                build = SmallBook.told(build, told(build, plan.now().get(0).id()));
            }
            now = now.plus(Duration.ofHours(1));
            plan = Plan.of(build, now);
        }
        Build end = build;
        Set<String> waits = plan.waiting().stream().map(Waiting::id).collect(Collectors.toSet());
        assertThat(plan.waiting())
                .allMatch(waiting -> end.check(waiting.id()).status() == CheckState.Status.VOID
                        || buried(end).contains(waiting.id())
                        || waiting.reasons().stream().anyMatch(reason -> waits.contains(reason.id())));
        return end;
    }

    /** Checks that the book itself makes impossible before their suspects are covered; a doubt is told when it is read. */
    private static Set<String> buried(Build build) {
        return build.structure().precedence().buried().keySet();
    }

    private static Build undoneAndBought(Build build, Undo undo) {
        List<Fact> facts = new ArrayList<>(undo.facts(""));
        for (Buy buy : undo.buy()) {
            facts.add(new Fact.PartEntered(
                    "another " + buy.position(), buy.position(), Origin.ORIGINAL, buy.quantity(), ""));
        }
        return SmallBook.told(build, facts.toArray(Fact[]::new));
    }

    /** Number of the entry that did a step or passed a check for the first time; 0 if none did. */
    private static long firstDone(Build build, String node) {
        return build.about(node).stream()
                .filter(number -> build.entry(number).fact() instanceof Fact.StepDone
                        || build.entry(number).fact() instanceof Fact.CheckPassed)
                .findFirst()
                .orElse(0L);
    }

    private static boolean waitsFor(Plan plan, Reason.Kind kind) {
        return plan.waiting().stream()
                .anyMatch(waiting -> waiting.reasons().stream().allMatch(reason -> reason.kind() == kind));
    }

    private static Fact[] told(Build build, String next) {
        if (build.structure().check(next).isPresent()) {
            return new Fact[] {SmallBook.passed(next)};
        }
        List<Fact> facts = new ArrayList<>();
        for (String position : build.structure().step(next).map(Step::fits).orElse(List.of())) {
            int quantity =
                    build.structure().position(position).map(Position::quantity).orElse(1);
            String part = build.partFor(position).map(Part::name).orElse("");
            facts.add(SmallBook.fitted(position, part, quantity));
        }
        facts.add(SmallBook.done(next));
        return facts.toArray(Fact[]::new);
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, STATIONARY})
    void thePlanLeadsThroughEveryArchetypeAndNothingIsCoveredUnproved(String name) throws IOException {
        EngineBook book = archetype(name);
        Precedence precedence = book.structure().precedence();
        Build done = done(allInHand(book));
        assertThat(precedence.nodes()).allMatch(node -> firstDone(done, node) > 0);
        precedence
                .nodes()
                .forEach(node -> assertThat(precedence.before(node))
                        .allMatch(before -> firstDone(done, before) < firstDone(done, node)));
        Build opened = done;
        for (Waiting check : Plan.of(done, MUCH_LATER).waiting()) {
            for (Reason reason : check.reasons()) {
                opened = undoneAndBought(opened, Undo.of(opened, reason.id()));
            }
        }
        assertThat(Plan.of(done(opened), MUCH_LATER).progress().sentence()).endsWith("and all is proved.");
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, STATIONARY})
    void everyArchetypeComesApartFromTheOutside(String name) throws IOException {
        EngineBook book = archetype(name);
        Build build = SmallBook.told(book, SmallBook.together());
        int off = 0;
        for (List<Off> next = TakingDown.of(build).next();
                !next.isEmpty();
                next = TakingDown.of(build).next()) {
            String position = next.get(0).position();
            build = SmallBook.told(build, SmallBook.off(position, TakingDown.suggestedBag(build)));
            assertThat(build.place(position).off().map(Fact.TakenOff::bag)).contains(String.valueOf(++off));
        }
        assertThat(off).isEqualTo(book.structure().positions().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {LYING, UPRIGHT, STATIONARY})
    void theOrderOfEveryArchetypeIsTheBest(String name) throws IOException {
        BestOrder best = BestOrder.of(archetype(name), Chances.usual(), Duration.ofSeconds(20));
        assertThat(best.proven()).isTrue();
        assertThat(best.cost()).isPositive().isLessThanOrEqualTo(best.bookCost());
    }

    @Property(tries = 60)
    void thePlanComesToAnEndWhateverTheEngine(@ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int steps) {
        EngineBook book = new EngineBook(SmallBook.book().engine(), Optional.empty(), AnyStructure.of(seed, steps, 5));
        Build done = done(allInHand(book));
        List<String> waits =
                Plan.of(done, MUCH_LATER).waiting().stream().map(Waiting::id).toList();
        assertThat(book.structure().precedence().nodes())
                .allMatch(node -> firstDone(done, node) > 0 || waits.contains(node));
    }
}
