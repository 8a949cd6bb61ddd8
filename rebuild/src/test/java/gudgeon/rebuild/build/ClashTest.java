package gudgeon.rebuild.build;

import static gudgeon.rebuild.build.SmallBuild.build;
import static gudgeon.rebuild.build.SmallBuild.done;
import static gudgeon.rebuild.build.SmallBuild.entry;
import static gudgeon.rebuild.build.SmallBuild.failed;
import static gudgeon.rebuild.build.SmallBuild.fitted;
import static gudgeon.rebuild.build.SmallBuild.passed;
import static gudgeon.rebuild.build.SmallBuild.together;
import static gudgeon.rebuild.build.SmallBuild.undone;
import static gudgeon.rebuild.build.SmallBuild.wrong;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two devices that write without knowing of each other. */
class ClashTest {
    private static final Build BOTH_SAW = build(together());

    /** One entry by the tablet, one by the phone which had not seen it. */
    private static List<Clash> clashes(Fact tablet, Fact phone) {
        return BOTH_SAW.after(List.of(entry(2, "tablet", 1, tablet), entry(3, "phone", 1, phone)))
                .clashes();
    }

    @Test
    void twoAnswersToOneQuestionClash() {
        assertThat(clashes(passed("turns"), failed("turns"))).containsExactly(new Clash(2, 3));
        assertThat(clashes(undone("fit-barrel"), done("fit-barrel"))).containsExactly(new Clash(2, 3));
        assertThat(clashes(done("fit-barrel"), SmallBuild.begun("fit-barrel"))).containsExactly(new Clash(2, 3));
        assertThat(clashes(fitted("piston", "one", 1), fitted("piston", "two", 1)))
                .containsExactly(new Clash(2, 3));
        assertThat(clashes(
                        new Fact.Disposed("barrel", "", Disposition.REPAIR, ""),
                        new Fact.Disposed("barrel", "", Disposition.REPLACE, "")))
                .containsExactly(new Clash(2, 3));
    }

    @Test
    void whatCanBothBeTrueDoesNotClash() {
        assertThat(clashes(passed("turns"), passed("turns"))).isEmpty();
        assertThat(clashes(passed("turns"), failed("clips-seen"))).isEmpty();
        assertThat(clashes(fitted("piston", "", 1), fitted("piston", "", 1))).isEmpty();
        assertThat(clashes(new Fact.Noted("piston", "a"), new Fact.Noted("piston", "b")))
                .isEmpty();
        assertThat(clashes(new Fact.TimeSpent("", 5), new Fact.TimeSpent("", 5)))
                .isEmpty();
    }

    @Test
    void whoSawTheOtherOrIsTheSameDeviceMayChangeItsMind() {
        Build saw = BOTH_SAW.after(List.of(
                entry(2, "tablet", 1, passed("turns")),
                entry(3, "phone", 2, failed("turns")),
                entry(4, "phone", 1, passed("turns"))));
        // the phone's second answer was made before it saw the tablet's, and says the same
        assertThat(saw.clashes()).isEmpty();
    }

    @Test
    void aClashGoesWhenOneOfTheTwoIsCorrected() {
        Build two =
                BOTH_SAW.after(List.of(entry(2, "tablet", 1, passed("turns")), entry(3, "phone", 1, failed("turns"))));
        assertThat(two.clashes()).hasSize(1);
        assertThat(SmallBuild.after(two, wrong(2)).clashes()).isEmpty();
        assertThat(SmallBuild.after(two, wrong(3)).clashes()).isEmpty();
    }

    @Test
    void twoDevicesWithTheSameEntriesHoldTheSameBuild() {
        List<Fact> facts = List.of(passed("turns"), undone("fit-barrel"), passed("clips-seen"));
        Build tablet = BOTH_SAW;
        for (int i = 0; i < facts.size(); i++) {
            tablet = tablet.after(entry(2 + i, "tablet", 1 + i, facts.get(i)));
        }
        Build phone = Build.of(SmallBuild.TOP_END).after(tablet.entries());
        assertThat(Snapshot.of(phone)).isEqualTo(Snapshot.of(tablet));
        assertThat(phone.entries()).isEqualTo(tablet.entries());
    }
}
