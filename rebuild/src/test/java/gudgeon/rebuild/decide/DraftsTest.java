package gudgeon.rebuild.decide;

import static gudgeon.rebuild.decide.Told.after;
import static gudgeon.rebuild.decide.Told.build;
import static gudgeon.rebuild.decide.Told.together;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Measuring;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Options that the book and the verdicts suggest. */
class DraftsTest {
    private static Draft draft(Build build, String option) {
        return Drafts.of(build).stream()
                .filter(draft -> draft.option().equals(option))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + option + " in " + Drafts.of(build)));
    }

    @Test
    void everyOversizeOfTheBookIsOne() {
        assertThat(Drafts.of(build(together()))).extracting(Draft::option).contains("piston +0.25", "piston +0.50");
        Draft over = draft(build(together()), "piston +0.50");
        assertThat(over.lines()).hasSize(2);
        assertThat(over.lines().get(0).sizes()).containsEntry("skirt", "50.463 mm");
        assertThat(over.lines().get(1).position()).isEqualTo("barrel");
        assertThat(over.lines().get(1).sizes()).containsEntry("bore", "50.508 mm");
        assertThat(over.lines().get(1).origin()).isEmpty();
    }

    @Test
    void theFamilysPartsAreOneAndGoneOnceTakenUp() {
        Draft family = draft(build(together()), "tarn-125");
        assertThat(family.lines()).hasSize(3).allMatch(line -> line.family().equals("tarn-125"));
        Build drawn = after(build(together()), family.facts().toArray(Fact[]::new));
        assertThat(Drafts.of(drawn)).extracting(Draft::option).doesNotContain("tarn-125");
        assertThat(Option.of(drawn)).hasSize(1);
    }

    @Test
    void everyDraftCanBeTakenUp() {
        Build build = build(together(), new Fact.TakenOff("piston", 1, "", "", "Skirt scored"));
        assertThat(Drafts.of(build)).extracting(Draft::option).contains("repair piston", "used piston", "new piston");
        for (Draft draft : Drafts.of(build)) {
            List<Fact> facts = new ArrayList<>(draft.facts());
            assertThat(Refusals.of(build, facts)).as(draft.option()).isEmpty();
        }
    }

    @Test
    void aSeatThatNeedsWorkHasItsWays() {
        Build sound = after(Build.of(Told.tarn()), together(), seatWidth("1.1 mm"));
        Build wide = after(Build.of(Told.tarn()), together(), seatWidth("2.1 mm"));
        assertThat(Drafts.of(sound)).extracting(Draft::option).doesNotContain("seat-ring exhaust valve");
        assertThat(Drafts.of(wide))
                .extracting(Draft::option)
                .contains("recut exhaust valve", "other-valve exhaust valve", "seat-ring exhaust valve");
        assertThat(Refusals.of(
                        wide,
                        List.copyOf(draft(wide, "other-valve exhaust valve").facts())))
                .isEmpty();
    }

    private static Fact seatWidth(String value) {
        return new Measuring.ReadingTaken(
                "exhaust-seat-width", "", 1, "at twelve", value, "", OptionalDouble.empty(), "");
    }
}
