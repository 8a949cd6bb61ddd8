package gudgeon.rebuild.build;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** Laws that the fold keeps whatever the journal says. */
class FoldLawsTest {
    private static final Build NOTHING = Build.of(SmallBuild.TOP_END);

    @Property(tries = 400)
    void allAtOnceComesToTheSameAsOneByOne(@ForAll("journals") List<Entry> journal) {
        Build oneByOne = NOTHING;
        for (Entry entry : journal) {
            oneByOne = oneByOne.after(entry);
        }
        same(NOTHING.after(journal), oneByOne);
    }

    @Property(tries = 200)
    void anySplitComesToTheSame(@ForAll("journals") List<Entry> journal, @ForAll int cut) {
        int at = Math.floorMod(cut, journal.size() + 1);
        Build split = NOTHING.after(journal.subList(0, at)).after(journal.subList(at, journal.size()));
        same(NOTHING.after(journal), split);
    }

    @Property(tries = 200)
    void sendingAnyOfItAgainChangesNothing(@ForAll("journals") List<Entry> journal, @ForAll int cut) {
        Build once = NOTHING.after(journal);
        same(once, once.after(journal.subList(0, Math.floorMod(cut, journal.size() + 1))));
    }

    @Property(tries = 200)
    void theBuildBeforeStaysAsItWas(@ForAll("journals") List<Entry> journal, @ForAll("journals") List<Entry> more) {
        Build before = NOTHING.after(journal);
        Snapshot was = Snapshot.of(before);
        before.after(more.stream()
                .map(entry -> new Entry("m-" + entry.key(), entry.at(), entry.device(), entry.seen(), entry.fact()))
                .toList());
        assertThat(Snapshot.of(before)).isEqualTo(was);
        assertThat(before.size()).isEqualTo(journal.size());
    }

    @Property(tries = 200)
    void whatIsStruckIsAsIfItHadBeenANote(@ForAll("facts") List<Fact> facts, @ForAll int which) {
        List<Fact> plain =
                facts.stream().filter(fact -> !(fact instanceof Fact.Corrected)).toList();
        if (plain.isEmpty()) {
            return;
        }
        int at = Math.floorMod(which, plain.size());
        List<Fact> struck = new ArrayList<>(plain);
        struck.add(SmallBuild.wrong(at + 1L));
        List<Fact> noted = new ArrayList<>(plain);
        noted.set(at, new Fact.Noted("", "nothing"));
        assertThat(Snapshot.of(SmallBuild.build(struck.toArray(Fact[]::new))))
                .isEqualTo(Snapshot.of(SmallBuild.build(noted.toArray(Fact[]::new))));
    }

    @Property(tries = 300)
    void nothingStandsOverWhatCameOffSince(@ForAll("facts") List<Fact> facts, @ForAll Found found) {
        List<Fact> journal = new ArrayList<>(List.of(new Fact.Started("98-1", "", found)));
        facts.stream().filter(fact -> !(fact instanceof Fact.Started)).forEach(journal::add);
        Build build = SmallBuild.build(journal.toArray(Fact[]::new));
        for (Position position : build.structure().positions()) {
            Place place = build.place(position.id());
            if (place.status() == Place.Status.OUT && place.removed() > 0) {
                assertThat(build.structure().stepsCovering(position.id()))
                        .noneMatch(step -> build.step(step.id()).stands()
                                && build.step(step.id()).done() <= place.removed());
            }
        }
    }

    private static void same(Build one, Build other) {
        assertThat(Snapshot.of(other)).isEqualTo(Snapshot.of(one));
        assertThat(other.entries()).isEqualTo(one.entries());
        assertThat(other.unknown()).isEqualTo(one.unknown());
        assertThat(other.clashes()).isEqualTo(one.clashes());
        for (long number = 1; number <= one.size(); number++) {
            assertThat(other.fact(number)).isEqualTo(one.fact(number));
        }
    }

    @Provide
    Arbitrary<List<Entry>> journals() {
        return facts().flatMap(facts -> Combinators.combine(
                        Arbitraries.of("tablet", "phone").list().ofSize(facts.size()),
                        Arbitraries.integers().between(0, 4).list().ofSize(facts.size()))
                .as((devices, behind) -> {
                    List<Entry> entries = new ArrayList<>();
                    for (int i = 0; i < facts.size(); i++) {
                        entries.add(
                                SmallBuild.entry(i + 1, devices.get(i), Math.max(0, i - behind.get(i)), facts.get(i)));
                    }
                    return entries;
                }));
    }

    @Provide
    Arbitrary<List<Fact>> facts() {
        return fact().list().ofMaxSize(25);
    }

    private static Arbitrary<Fact> fact() {
        Arbitrary<Fact> plain = Arbitraries.oneOf(ofWork(), ofParts(), ofBuild());
        Arbitrary<Fact> corrected = Combinators.combine(Arbitraries.integers().between(1, 20), plain.optional())
                .as((entry, instead) -> new Fact.Corrected("e" + entry, "", instead));
        Arbitrary<Fact> twice = Combinators.combine(Arbitraries.integers().between(1, 20), corrected)
                .as((entry, instead) -> new Fact.Corrected("e" + entry, "", Optional.of(instead)));
        return Arbitraries.frequencyOf(Tuple.of(12, plain), Tuple.of(3, corrected), Tuple.of(1, twice));
    }

    private static Arbitrary<Fact> ofWork() {
        Arbitrary<String> steps = Arbitraries.of(
                "lay-case", "fit-gears", "close-case", "fit-piston", "fit-barrel", "tighten-clutch", "none");
        Arbitrary<String> checks = Arbitraries.of("gears-by-hand", "oilways-proved", "clips-seen", "turns", "none");
        return Arbitraries.oneOf(
                steps.map(SmallBuild::begun),
                steps.map(SmallBuild::done),
                steps.map(step -> new Fact.StepStopped(step, "tea")),
                steps.map(step -> new Fact.Undone(step, "", List.of("clips", "none"))),
                checks.map(SmallBuild::passed),
                checks.map(SmallBuild::failed),
                checks.map(check -> new Fact.CheckWaived(check, "in a hurry")));
    }

    private static Arbitrary<Fact> ofParts() {
        Arbitrary<String> positions =
                Arbitraries.of("case", "gears", "studs", "piston", "clips", "base-gasket", "barrel", "cover", "none");
        Arbitrary<String> parts = Arbitraries.of("", "one", "two");
        Arbitrary<Integer> counts = Arbitraries.integers().between(1, 4);
        return Arbitraries.oneOf(
                positions.map(SmallBuild::off),
                Combinators.combine(parts.filter(part -> !part.isEmpty()), positions, counts)
                        .as(SmallBuild::entered),
                Combinators.combine(positions, parts, counts).as(SmallBuild::fitted),
                Combinators.combine(positions, parts, Arbitraries.of(Way.class))
                        .as((position, part, way) -> new Fact.Fitted(position, part, 1, way, "")),
                Combinators.combine(positions, parts)
                        .as((position, part) -> new Fact.Measured(position, part, Map.of("land", "5"))),
                Combinators.combine(positions, parts)
                        .as((position, part) -> new Fact.Compared(position, part, List.of("height"), false, "")),
                Combinators.combine(positions, Arbitraries.of(Cleaning.class))
                        .as((position, how) -> new Fact.Cleaned(position, how, "")),
                Combinators.combine(positions, Arbitraries.of(Disposition.class))
                        .as((position, as) -> new Fact.Disposed(position, "", as, "")),
                Combinators.combine(positions, counts)
                        .as((position, count) -> new Sourcing.Ordered("order", position, count, "", "")),
                Combinators.combine(positions, counts)
                        .as((position, count) -> new Sourcing.Arrived("order", position, count, "")));
    }

    private static Arbitrary<Fact> ofBuild() {
        return Arbitraries.oneOf(
                Arbitraries.of(Found.class).map(found -> new Fact.Started("98-1", "", found)),
                Arbitraries.of("piston", "fit-piston", "turns", "none").map(at -> new Fact.FaultFound(at, "noise")),
                Arbitraries.just(new Fact.WentTight(OptionalDouble.of(20), OptionalDouble.empty(), "")),
                Arbitraries.of(Origin.class).map(origin -> new Fact.ChanceTaken(origin, 0.3)),
                Arbitraries.just(new Fact.TimeSpent("piston", 5)),
                Arbitraries.just(new Fact.Noted("piston", "clean")));
    }
}
