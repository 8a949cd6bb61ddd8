package gudgeon.rebuild.build;

import static gudgeon.rebuild.build.SmallBuild.build;
import static gudgeon.rebuild.build.SmallBuild.entered;
import static gudgeon.rebuild.build.SmallBuild.together;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Why a fact about buying and machining is not taken down, and that the sound one beside it is. */
class SourcingRefusalsTest {
    private static final Build ORDERED = build(
            together(), new Ordered("Tarn 1", "piston", 1, "Low Quay", "20 EUR"), entered("pattern 1", "piston", 1));

    private static List<String> of(Fact fact) {
        return Refusals.of(ORDERED, fact);
    }

    @Test
    void anArrivalNamesAnOrderThatWasTakenDownForIt() {
        assertThat(of(new Arrived("Tarn 1", "piston", 1, ""))).isEmpty();
        assertThat(of(new Arrived("", "barrel", 1, ""))).isEmpty();
        assertThat(of(new Arrived("Tarn 2", "piston", 1, "")))
                .containsExactly(
                        "No order 'Tarn 2' for the piston is in the journal. Take the order down first, or leave"
                                + " its name empty.");
        assertThat(of(new Arrived("Tarn 1", "barrel", 1, ""))).hasSize(1);
        assertThat(of(new Arrived("Tarn 1", "piston", 0, ""))).containsExactly("A count is 1 to 999, not 0.");
    }

    @Test
    void postageIsPaidForAnOrder() {
        assertThat(of(new PostagePaid("Tarn 1", "4.90 EUR"))).isEmpty();
        assertThat(of(new PostagePaid("Tarn 2", "")))
                .containsExactly(
                        "No order 'Tarn 2' is in the journal. Take the order down first.",
                        "Write what the postage cost.");
    }

    @Test
    void aReturnNamesThePartTheOrderAndTheReason() {
        assertThat(of(new Returned("Tarn 1", "piston", "pattern 1", 1, "too large", "")))
                .isEmpty();
        assertThat(of(new Returned("Tarn 2", "piston", "pattern 2", 0, " ", "")))
                .hasSize(4);
    }

    @Test
    void aPartComesBackFromAMachinistOnceAndOnlyIfItWent() {
        WorkSent sent = new WorkSent("barrel", "", "Low Quay", "Bore to 39.25 mm", "40 EUR", Optional.empty());
        assertThat(of(sent)).isEmpty();
        assertThat(of(new WorkSent("barrel", "", "", "", "", Optional.empty())))
                .containsExactly("Write what is to be done to it.");
        assertThat(of(new WorkBack("barrel", "", "")))
                .containsExactly("The barrel was not sent to a machinist, so it can't come back.");
        Build away = ORDERED.asIf(List.of(sent));
        assertThat(Refusals.of(away, new WorkBack("barrel", "", ""))).isEmpty();
        assertThat(Refusals.of(away, sent))
                .containsExactly("The barrel is with the machinist already. Say first that it is back.");
        Build back = away.asIf(List.of(new WorkBack("barrel", "", "")));
        assertThat(Refusals.of(back, new WorkBack("barrel", "", ""))).hasSize(1);
        assertThat(Refusals.of(back, sent)).isEmpty();
    }

    @Test
    void anOfferSaysWhoseItIsAndAWeekHasItsHours() {
        assertThat(of(new Offered("piston", "", Optional.empty(), "Merrow & Tull", "", Optional.empty(), Map.of())))
                .isEmpty();
        assertThat(of(new Offered("piston", "", Optional.empty(), "", "", Optional.empty(), Map.of())))
                .containsExactly("Write who offers it.");
        assertThat(of(new PaceSet(6))).isEmpty();
        for (double hours : new double[] {0, -1, 169, Double.NaN}) {
            assertThat(of(new PaceSet(hours))).as("%s h", hours).hasSize(1);
        }
    }
}
