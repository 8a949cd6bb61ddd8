package gudgeon.rebuild.fasten;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.Piled;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class AllocationTest {
    /** Eleven screws of five lengths: one of 35 is missing, and one of 50 lies there that is too long for any. */
    private static final List<Fact> HEAP = List.of(
            piled("30", 30, 3),
            piled("35", 35, 2),
            piled("40", 40, 2),
            piled("45", 45, 2),
            piled("55", 55, 1),
            piled("50", 50, 1));

    @Test
    void namesWhatIsMissingAndWhatIsLeft() {
        Allocation allocation = allocate(HEAP);
        assertThat(allocation.choices()).hasSize(11);
        assertThat(allocation.choices().stream().filter(HoleChoice::isToBuy)).hasSize(1);
        Purchase purchase = allocation.purchases().get(0);
        assertThat(purchase.thread()).isEqualTo("M6");
        assertThat(purchase.lengthsMm()).containsExactly(35.0);
        assertThat(allocation.leftOver()).containsOnlyKeys("50");
        HoleChoice dowel =
                allocation.choice(TarnJoints.COVER, "cover-right-front-dowel").orElseThrow();
        assertThat(dowel.kind()).contains("45");
        assertThat(dowel.isForced()).isTrue();
        assertThat(allocation.choices().stream()
                        .filter(choice -> choice.isToBuy() || choice.mayBeBought())
                        .map(HoleChoice::hole))
                .containsExactlyInAnyOrder("cover-right-top", "cover-right-bottom-front", "cover-right-bottom-rear");
        assertThat(allocation.dangers())
                .anyMatch(danger -> danger.kind().equals("50")
                        && danger.verdict() == LengthVerdict.BOTTOMS
                        && danger.holes().contains("cover-right-top"));
    }

    @Test
    void whatCameOutOfAHoleGoesBackThere() {
        List<Fact> facts = new ArrayList<>(HEAP);
        facts.add(new FastenerOut(TarnJoints.COVER, "cover-right-top", "M6", "35 mm", "", ""));
        HoleChoice top =
                allocate(facts).choice(TarnJoints.COVER, "cover-right-top").orElseThrow();
        assertThat(top.recorded()).isTrue();
        assertThat(top.kind()).contains("35");
        assertThat(top.isForced()).isTrue();
    }

    @Test
    void alikeKindsMayBeSwapped() {
        List<Fact> facts = new ArrayList<>(HEAP);
        facts.add(piled("35 plated", 35, 2));
        Allocation allocation = allocate(facts);
        assertThat(allocation.purchases()).isEmpty();
        HoleChoice top = allocation.choice(TarnJoints.COVER, "cover-right-top").orElseThrow();
        List<String> all = new ArrayList<>(top.others());
        all.add(top.kind().orElseThrow());
        assertThat(all).containsExactlyInAnyOrder("35", "35 plated");
    }

    private static Allocation allocate(List<Fact> facts) {
        return Allocation.of(List.of(TarnJoints.joint(TarnJoints.COVER, facts)), PileKind.of(TarnJoints.build(facts)));
    }

    private static Fact piled(String kind, int length, int count) {
        return new Piled(kind, "M6", length + " mm", "", "8.8", count, "");
    }
}
