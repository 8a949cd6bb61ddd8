package gudgeon.rebuild.decide;

import static gudgeon.rebuild.decide.Told.build;
import static gudgeon.rebuild.decide.Told.together;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Offered;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is proposed for a part, in the order in which a fitter asks. */
class DispositionsTest {
    private static final Fact GAUGE = new InstrumentKept(
            "bore gauge", InstrumentKind.BORE_GAUGE, "35 to 60 mm", "0.001 mm", "0.002 mm", Optional.empty(), "");

    private static Fact off(String position, String remark) {
        return new Fact.TakenOff(position, 1, "", "", remark);
    }

    private static Fact washed(String position) {
        return new Fact.Cleaned(position, Cleaning.WASHED, "");
    }

    private static Fact read(String dimension, String value, String instrument) {
        return new ReadingTaken(dimension, "", 1, "", value, instrument, OptionalDouble.empty(), "");
    }

    private static Proposal of(Build build, String position) {
        return Dispositions.of(build, position).orElseThrow();
    }

    @Test
    void whatIsInItsPlaceIsNotAskedAbout() {
        assertThat(Dispositions.of(build(together()))).isEmpty();
    }

    @Test
    void whatCanBeUsedOnlyOnceIsReplaced() {
        Proposal gasket = of(build(together(), off("head-gasket", "")), "head-gasket");
        assertThat(gasket.disposition()).contains(Disposition.REPLACE);
        assertThat(gasket.reasons()).containsExactly("It can be used only once.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Skirt scored on the thrust side", "cracked at one hole", "Ring land broken", "Crown pitted."})
    void whatWasSeenBrokenIsReplaced(String remark) {
        Proposal head = of(build(together(), off("head", remark), washed("head")), "head");
        assertThat(head.disposition()).contains(Disposition.REPLACE);
        assertThat(head.reasons().get(0)).contains(remark);
    }

    @ParameterizedTest
    @ValueSource(strings = {"No cracks seen", "Not worn, good as new", "Oily, grey", "Without scores"})
    void aDenialOfDamageIsNone(String remark) {
        Proposal head = of(build(together(), off("head", remark), washed("head")), "head");
        assertThat(head.disposition()).contains(Disposition.USE_AGAIN);
    }

    @Test
    void aBoreProvedOutIsBored() {
        Build build = build(together(), GAUGE, off("barrel", ""), read("bore", "50.120 mm", "bore gauge"));
        Proposal barrel = of(build, "barrel");
        assertThat(barrel.disposition()).contains(Disposition.REPAIR);
        assertThat(barrel.what()).contains("bored to an oversize");
        assertThat(barrel.reasons().get(0)).isEqualTo("Bore is 50.12 mm, wanted is at most 50.06 mm: out of limits.");
    }

    @Test
    void whatIsNotProvedIsNotKept() {
        Build near =
                build(together(), GAUGE, off("barrel", ""), washed("barrel"), read("bore", "50.059 mm", "bore gauge"));
        Proposal barrel = of(near, "barrel");
        assertThat(barrel.disposition()).isEmpty();
        assertThat(barrel.what()).startsWith("Measure before it is kept");
        Build unread = build(together(), off("barrel", ""), washed("barrel"));
        assertThat(of(unread, "barrel").disposition()).isEmpty();
        assertThat(of(unread, "barrel").reasons()).containsExactly("Not measured yet: bore.");
    }

    @Test
    void whatIsProvedInLimitsIsUsedAgainOnceItIsClean() {
        Build dirty = build(together(), GAUGE, off("barrel", ""), read("bore", "50.020 mm", "bore gauge"));
        assertThat(of(dirty, "barrel").disposition()).contains(Disposition.CLEAN);
        Build clean = Told.after(dirty, washed("barrel"));
        assertThat(of(clean, "barrel").disposition()).contains(Disposition.USE_AGAIN);
        Build blasted = Told.after(clean, new Fact.Cleaned("barrel", Cleaning.BLASTED, ""));
        assertThat(of(blasted, "barrel").disposition()).contains(Disposition.CLEAN);
        assertThat(of(blasted, "barrel").reasons().get(0)).contains("grit");
    }

    @Test
    void aClearanceOutOfLimitsHasTwoOwners() {
        Fact mouth = read("mouth", "55.200 mm", "bore gauge");
        Fact spigot = read("spigot", "54.950 mm", "bore gauge");
        Build build = build(together(), GAUGE, off("barrel", ""), washed("barrel"), mouth, spigot);
        assertThat(of(build, "barrel").disposition()).isEmpty();
        assertThat(of(build, "barrel").reasons())
                .anyMatch(
                        reason -> reason.contains("more than one owner: with a new crankcase it tells which is worn"));
    }

    @Test
    void aCheapBuriedPartIsAlwaysNew() {
        Build plain = build(together(), off("bearing", ""), washed("bearing"));
        assertThat(of(plain, "bearing").disposition()).contains(Disposition.USE_AGAIN);
        assertThat(of(Told.after(plain, offered("12.50 EUR")), "bearing").disposition())
                .contains(Disposition.REPLACE);
        assertThat(of(Told.after(plain, offered("95.00 EUR")), "bearing").disposition())
                .contains(Disposition.USE_AGAIN);
    }

    private static Fact offered(String price) {
        return new Offered("bearing", "", Optional.of(Origin.ORIGINAL), "", price, Optional.empty(), Map.of());
    }

    @Test
    void theDecisionStandsBesideTheProposalAndIsToldWhenItKeepsWhatIsNotProved() {
        Build unread = build(together(), off("barrel", ""), washed("barrel"));
        Build kept = Told.after(unread, new Fact.Disposed("barrel", "", Disposition.USE_AGAIN, "it ran well"));
        Proposal barrel = of(kept, "barrel");
        assertThat(barrel.disposition()).isEmpty();
        assertThat(barrel.isKeptAgainstIt()).isTrue();
        assertThat(barrel.decision()).isEqualTo("Decided: use again. It ran well. The proposal would not keep it.");
        Build replaced = Told.after(kept, new Fact.Disposed("barrel", "", Disposition.REPLACE, ""));
        assertThat(of(replaced, "barrel").isKeptAgainstIt()).isFalse();
    }

    @Test
    void aNewPartThatDoesNotAgreeGoesBack() {
        Build build = build(
                together(),
                off("piston", ""),
                new Fact.PartEntered("copy", "piston", Origin.PATTERN, 1, ""),
                new Fact.Compared("piston", "copy", java.util.List.of("pin bore"), false, ""));
        assertThat(of(build, "piston").disposition()).contains(Disposition.REPLACE);
        assertThat(of(build, "piston").reasons().get(0)).contains("pin bore");
    }
}
