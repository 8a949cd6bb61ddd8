package gudgeon.rebuild.build;

import static gudgeon.rebuild.build.SmallBuild.after;
import static gudgeon.rebuild.build.SmallBuild.build;
import static gudgeon.rebuild.build.SmallBuild.done;
import static gudgeon.rebuild.build.SmallBuild.entered;
import static gudgeon.rebuild.build.SmallBuild.fitted;
import static gudgeon.rebuild.build.SmallBuild.instead;
import static gudgeon.rebuild.build.SmallBuild.off;
import static gudgeon.rebuild.build.SmallBuild.passed;
import static gudgeon.rebuild.build.SmallBuild.together;
import static gudgeon.rebuild.build.SmallBuild.wrong;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.TakenOff;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A correction has the effect that the entry would have had if it had been right. */
class CorrectionsTest {
    @Test
    void whatWasWrongNeverHappened() {
        Build build = build(together(), passed("turns"), off("barrel"), wrong(3));
        assertThat(build.place("barrel").status()).isEqualTo(Place.Status.AS_FOUND);
        assertThat(build.check("turns").lets()).isTrue();
        assertThat(build.isCorrected(3)).isTrue();
        assertThat(build.isCorrected(2)).isFalse();
        assertThat(build.size()).isEqualTo(4);
    }

    @Test
    void whatIsTrueInsteadTakesThePlaceOfWhatWasWrong() {
        TakenOff right = new TakenOff("barrel", 1, "12", "bench", "");
        // the barrel is back in its place by the time the bag's number is put right
        Build build = build(together(), off("barrel"), fitted("barrel", "", 1), done("fit-barrel"), instead(2, right));
        assertThat(build.place("barrel").isFilled()).isTrue();
        assertThat(build.place("barrel").off()).contains(right);
        assertThat(build.step("fit-barrel").stands()).isTrue();
        assertThat(build.fact(2)).contains(right);
        assertThat(build.fact(3)).contains(fitted("barrel", "", 1));
    }

    @Test
    void aCorrectionMayMoveAFactToAnotherPlace() {
        Build build = build(together(), off("barrel"), instead(2, off("cover")));
        assertThat(build.place("barrel").isFilled()).isTrue();
        assertThat(build.place("cover").isFilled()).isFalse();
        assertThat(build.about("cover")).containsExactly(2L);
        assertThat(build.about("barrel")).containsExactly(2L);
    }

    @Test
    void aCorrectionThatWasWrongIsCorrectedLikeAnyOther() {
        Build build = build(together(), off("barrel"), wrong(2), wrong(3));
        assertThat(build.place("barrel").isFilled()).isFalse();
        assertThat(build.isCorrected(2)).isFalse();
        assertThat(build.isCorrected(3)).isTrue();
        Build other = build(together(), off("barrel"), off("cover"), wrong(2), instead(4, wrong(3)));
        assertThat(other.place("barrel").isFilled()).isFalse();
        assertThat(other.place("cover").isFilled()).isTrue();
    }

    @Test
    void theLastCorrectionOfAnEntryCounts() {
        Build build = build(together(), off("barrel"), instead(2, off("cover")), instead(2, off("clips")));
        assertThat(build.place("cover").isFilled()).isTrue();
        assertThat(build.place("clips").isFilled()).isFalse();
        assertThat(build.fact(2)).contains(off("clips"));
    }

    @Test
    void aCorrectionIsOnlyOfWhatCameBeforeIt() {
        Fact early = wrong(4);
        Build build = build(together(), early, wrong(3), off("barrel"));
        assertThat(build.unknown()).containsExactly(2L, 3L);
        assertThat(build.place("barrel").isFilled()).isFalse();
        assertThat(Snapshot.of(build))
                .isEqualTo(Snapshot.of(after(after(build(together()), early), wrong(3), off("barrel"))));
    }

    @Test
    void numbersOfTheOtherEntriesStay() {
        Build build = build(together(), entered("first", "piston", 1), entered("second", "piston", 1), wrong(2));
        assertThat(build.parts("piston")).extracting(Part::name).containsExactly("second");
        assertThat(build.parts("piston")).extracting(Part::entered).containsExactly(3L);
    }

    @Test
    void anEntrySentAgainCountsOnce() {
        Build once = build(together(), new Fact.TimeSpent("", 10), off("barrel"), wrong(3));
        Build again = once.after(once.entries()).after(List.of(once.entry(2)));
        assertThat(again.size()).isEqualTo(4);
        assertThat(again.minutesSpent()).isEqualTo(10);
        assertThat(again.entries()).isEqualTo(once.entries());
        assertThat(Snapshot.of(again)).isEqualTo(Snapshot.of(once));
        assertThat(Optional.of(again.fact(3))).contains(Optional.empty());
    }
}
