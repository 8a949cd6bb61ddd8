package gudgeon.rebuild.source;

import static gudgeon.rebuild.source.Bench.line;
import static gudgeon.rebuild.source.Bench.list;
import static gudgeon.rebuild.source.Bench.off;
import static gudgeon.rebuild.source.Bench.pattern;
import static gudgeon.rebuild.source.Bench.together;
import static gudgeon.rebuild.source.Bench.told;
import static gudgeon.rebuild.source.Bench.undone;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import gudgeon.rebuild.source.Want.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What must be bought, why, and what it costs. */
class PartsListTest {
    private static final String QUAY = "Merrow & Tull spares";

    private static Fact disposed(String position, String part, Disposition as, String why) {
        return new Fact.Disposed(position, part, as, why);
    }

    /** The top end in bags. */
    private static Build apart() {
        return told(
                together(),
                off("head", 1),
                off("guides", 2),
                off("head-gasket", 1),
                off("barrel", 1),
                off("base-gasket", 1),
                off("piston", 1),
                off("clips", 2));
    }

    private static List<String> wanted(Build build) {
        return list(build).lines().stream().map(PartsLine::position).toList();
    }

    private static Kind why(Build build, String position) {
        return line(build, position).want().orElseThrow().kind();
    }

    @Test
    void nothingIsBoughtForAnEngineThatIsTogether() {
        assertThat(wanted(told(together()))).isEmpty();
        assertThat(list(told(together())).sentence()).isEqualTo("Nothing is to be ordered, and nothing is on its way.");
    }

    @Test
    void whatCanBeUsedOnceIsBoughtOnceItCameOff() {
        Build apart = apart();
        assertThat(wanted(apart)).containsExactly("clips", "base-gasket", "head-gasket");
        assertThat(line(apart, "clips").toOrder()).isEqualTo(2);
        assertThat(why(apart, "clips")).isEqualTo(Kind.SINGLE_USE);
    }

    @Test
    void whatOpeningAgainDestroyedSaysSo() {
        assertThat(why(told(together(), undone("fit-head")), "head-gasket")).isEqualTo(Kind.UNDONE);
    }

    @Test
    void whatMustBeOpenedToGetAtATroubleIsBoughtBeforehand() {
        Build decided = told(together(), disposed("piston", "", Disposition.REPLACE, "seized"));
        assertThat(wanted(decided)).containsExactly("piston", "clips", "base-gasket", "head-gasket");
        assertThat(why(decided, "piston")).isEqualTo(Kind.REPLACE);
        assertThat(line(decided, "piston").sentence()).contains("to be replaced. Seized.");
        assertThat(why(decided, "head-gasket")).isEqualTo(Kind.OPENING);
        assertThat(wanted(told(together(), new Fact.FaultFound("barrel", "scored"))))
                .containsExactly("base-gasket", "head-gasket");
    }

    @Test
    void aPartMeasuredOutOfLimitsIsListedUntilItIsDecided() {
        Fact micrometer = new InstrumentKept(
                "micrometer", InstrumentKind.MICROMETER, "25 to 50 mm", "0.001 mm", "0.002 mm", Optional.empty(), "");
        Build worn = told(apart(), micrometer, Bench.reading("piston-skirt", "", "49.85 mm", "micrometer"));
        assertThat(why(worn, "piston")).isEqualTo(Kind.WORN);
        assertThat(line(worn, "piston").sentence())
                .contains("piston skirt 49.85 mm, allowed 49.92 mm to 49.98 mm")
                .contains("Decide");
        assertThat(wanted(told(worn, disposed("piston", "", Disposition.REPAIR, "knurled"))))
                .doesNotContain("piston");
        Build sound = told(apart(), micrometer, Bench.reading("piston-skirt", "", "49.95 mm", "micrometer"));
        assertThat(wanted(sound)).doesNotContain("piston");
    }

    @Test
    void fewerThanItTakesIsMissingAndWhatNobodySpokeOfIsNot() {
        Build found = told(new Fact.Started("98-1", "", Found.IN_PIECES), pattern("new piston", "piston"));
        assertThat(wanted(found)).containsExactly("clips", "base-gasket", "head-gasket");
        Build some = told(together(), off("guides", 1));
        assertThat(why(some, "guides")).isEqualTo(Kind.MISSING);
        assertThat(line(some, "guides").toOrder()).isEqualTo(1);
    }

    @Test
    void ordersAndArrivalsAreTakenOff() {
        Build ordered = told(apart(), new Ordered("A", "clips", 2, QUAY, "0.90 EUR"));
        assertThat(line(ordered, "clips"))
                .satisfies(line -> assertThat(line.ordered()).isEqualTo(2))
                .satisfies(line -> assertThat(line.toOrder()).isZero());
        Build some = told(ordered, new Arrived("A", "clips", 1, ""));
        assertThat(line(some, "clips"))
                .satisfies(line -> assertThat(line.ordered()).isEqualTo(1))
                .satisfies(line -> assertThat(line.inHand()).isEqualTo(1))
                .satisfies(line -> assertThat(line.toOrder()).isZero());
        assertThat(list(some).arrivals().of("A").get(0).state()).isEqualTo(OrderLine.State.SHORT);
    }

    @Test
    void whatWasRefusedHasToBeBoughtAgain() {
        Build replaced = told(
                apart(),
                disposed("piston", "", Disposition.REPLACE, ""),
                new Ordered("A", "piston", 1, QUAY, "60 EUR"),
                new Arrived("A", "piston", 1, ""),
                pattern("copy", "piston"));
        assertThat(line(replaced, "piston").toOrder()).isZero();
        Build refused = told(replaced, new Fact.Compared("piston", "copy", List.of("skirt"), false, "0.2 mm small"));
        assertThat(line(refused, "piston").toOrder()).isEqualTo(1);
        assertThat(line(refused, "piston").inHand()).isZero();
        Build back = told(refused, new Returned("A", "piston", "copy", 1, "skirt small", "60 EUR"));
        assertThat(line(back, "piston").toOrder()).isEqualTo(1);
        assertThat(line(back, "piston").inHand()).isZero();
        assertThat(list(back).account().spent()).isEqualTo(Sum.NOTHING);
        Build again = told(
                back,
                new Ordered("B", "piston", 1, QUAY, "80 EUR"),
                new Arrived("B", "piston", 1, ""),
                pattern("good", "piston"));
        assertThat(line(again, "piston").inHand()).isEqualTo(1);
        assertThat(line(again, "piston").toOrder()).isZero();
    }

    @Test
    void moneyIsCountedByCurrencyAndWhatIsNotKnownIsNamed() {
        Build build = told(
                apart(),
                new Ordered("A", "clips", 2, QUAY, "0,90 €"),
                new Ordered("B", "base-gasket", 1, "Low Quay Workshop", "3 GBP"),
                new Ordered("B", "head", 1, "Low Quay Workshop", "a lot"),
                new PostagePaid("A", "4.50 EUR"),
                new Offered(
                        "head-gasket",
                        "",
                        Optional.empty(),
                        QUAY,
                        "7.00 EUR",
                        Optional.of(new Days(2, 4, 9)),
                        Map.of()),
                new Offered(
                        "head-gasket",
                        "",
                        Optional.empty(),
                        "Low Quay Workshop",
                        "6.20 EUR",
                        Optional.empty(),
                        Map.of()),
                new WorkSent("barrel", "", "Low Quay Workshop", "rebore", "55 EUR", Optional.empty()),
                new WorkSent("head", "", "Low Quay Workshop", "guides", "40 EUR", Optional.empty()),
                new WorkBack("head", "", ""));
        Account account = list(build).account();
        assertThat(account.spent().words()).isEqualTo("46.30 EUR and 3.00 GBP");
        assertThat(account.toCome().words()).isEqualTo("61.20 EUR");
        assertThat(account.unpriced()).containsExactly("the head");
        assertThat(account.faults()).hasSize(1).first().asString().contains("'a lot'");
    }

    @Test
    void whatIsOrderedAndOfferedIsGroupedByWhoSendsIt() {
        Build build = told(
                apart(),
                new Ordered("A", "clips", 2, QUAY, "0.90 EUR"),
                new PostagePaid("A", "4.50 EUR"),
                new Offered("head-gasket", "", Optional.empty(), QUAY, "8 EUR", Optional.empty(), Map.of()),
                new Offered("head-gasket", "", Optional.empty(), QUAY, "7 EUR", Optional.empty(), Map.of()),
                new Offered("base-gasket", "", Optional.empty(), "", "2 EUR", Optional.empty(), Map.of()));
        List<Supplier> suppliers = list(build).suppliers();
        assertThat(suppliers).extracting(Supplier::name).containsExactly(QUAY, "");
        assertThat(suppliers.get(0).postage().words()).isEqualTo("4.50 EUR");
        assertThat(suppliers.get(0).offers()).extracting(Offer::written).containsExactly("7 EUR");
        assertThat(suppliers.get(1).offers()).extracting(Offer::position).containsExactly("base-gasket");
    }
}
