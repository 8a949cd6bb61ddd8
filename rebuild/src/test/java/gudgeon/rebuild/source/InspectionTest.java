package gudgeon.rebuild.source;

import static gudgeon.rebuild.source.Bench.off;
import static gudgeon.rebuild.source.Bench.pattern;
import static gudgeon.rebuild.source.Bench.reading;
import static gudgeon.rebuild.source.Bench.together;
import static gudgeon.rebuild.source.Bench.told;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.source.SizeCompared.Agrees;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A part that came, held against what it should be, and what is written to the seller. */
class InspectionTest {
    private static Fact instrument(String name, InstrumentKind kind, String error) {
        return new InstrumentKept(name, kind, "0 to 100 mm", "0.001 mm", error, Optional.empty(), "");
    }

    /** A pattern piston ordered by its skirt came, and the old one was measured. */
    private static Build came() {
        return told(
                together(),
                instrument("micrometer", InstrumentKind.MICROMETER, "0.002 mm"),
                instrument("calliper", InstrumentKind.CALLIPER, "0.05 mm"),
                off("piston", 1),
                reading("piston-skirt", "", "49.930 mm", "micrometer"),
                new Ordered(
                        "A",
                        "piston",
                        "copy",
                        Optional.empty(),
                        1,
                        "Low Quay Workshop",
                        "60 EUR",
                        Optional.empty(),
                        Optional.empty(),
                        Map.of("piston-skirt", "49.97 mm")),
                new Arrived("A", "piston", 1, ""),
                pattern("copy", "piston"));
    }

    private static Inspection inspected(Build build) {
        return Inspection.of(build, "piston", "copy").orElseThrow();
    }

    private static SizeCompared size(Build build, String id) {
        return inspected(build).sizes().stream()
                .filter(size -> size.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsStillToBeComparedIsNamedInTheBooksOrder() {
        Inspection fresh = inspected(came());
        assertThat(fresh.outcome()).isEqualTo(Inspection.Outcome.OPEN);
        assertThat(fresh.sizes()).extracting(SizeCompared::id).containsExactly("piston-skirt", "compression-height");
        assertThat(fresh.looks()).containsExactly("skirt", "compression height");
        assertThat(fresh.sentence()).contains("4 things to compare").contains("first piston skirt");
        assertThat(size(came(), "piston-skirt"))
                .satisfies(size -> assertThat(size.old()).isEqualTo("49.93 mm"))
                .satisfies(size -> assertThat(size.booked()).isEqualTo("49.965 mm to 49.98 mm"))
                .satisfies(size -> assertThat(size.ordered()).isEqualTo("49.97 mm"))
                .satisfies(size -> assertThat(size.agrees()).isEqualTo(Agrees.NOT_MEASURED));
    }

    @Test
    void aPartThatAgreesInAllGoesIn() {
        Build good = told(
                came(),
                reading("piston-skirt", "copy", "49.970 mm", "micrometer"),
                reading("compression-height", "copy", "27.00 mm", "micrometer"),
                new Fact.Compared("piston", "copy", List.of("skirt", "compression height"), true, ""));
        assertThat(inspected(good).outcome()).isEqualTo(Inspection.Outcome.AGREES);
        assertThat(SellersLetter.of(good, inspected(good))).isEmpty();
    }

    @Test
    void aSmallSkirtIsRefusedAndTheLetterHasWantedAndFound() {
        Build small = told(came(), reading("piston-skirt", "copy", "49.800 mm", "micrometer"));
        assertThat(size(small, "piston-skirt").agrees()).isEqualTo(Agrees.NO);
        assertThat(inspected(small).outcome()).isEqualTo(Inspection.Outcome.REFUSE);
        SellersLetter letter = SellersLetter.of(small, inspected(small)).orElseThrow();
        assertThat(letter.to()).isEqualTo("Low Quay Workshop");
        assertThat(letter.subject()).isEqualTo("Order A: piston not as wanted");
        assertThat(letter.text())
                .contains("Piston skirt: wanted 49.97 mm, found 49.8 mm; the part it replaces has 49.93 mm.");
    }

    @Test
    void withinLimitsAndYetNotWhatWasOrderedDoesNotAgree() {
        Build other = told(came(), reading("piston-skirt", "copy", "49.940 mm", "micrometer"));
        assertThat(size(other, "piston-skirt").agrees()).isEqualTo(Agrees.NO);
    }

    @Test
    void aCoarseInstrumentProvesNothing() {
        Build coarse = told(came(), reading("piston-skirt", "copy", "49.97 mm", "calliper"));
        assertThat(size(coarse, "piston-skirt").agrees()).isEqualTo(Agrees.UNPROVEN);
        assertThat(inspected(coarse).outcome()).isEqualTo(Inspection.Outcome.OPEN);
    }

    @Test
    void whatItTouchesIsJudgedWithIt() {
        Build worn = told(
                came(),
                reading("bore", "", "50.055 mm", "micrometer"),
                reading("piston-skirt", "copy", "49.970 mm", "micrometer"));
        assertThat(size(worn, "piston-skirt").mates())
                .singleElement()
                .asString()
                .startsWith("Skirt clearance: 0.085 mm");
    }

    @Test
    void whatDiffersByEyeIsWrittenAsWell() {
        Build seen = told(came(), new Fact.Compared("piston", "copy", List.of("skirt"), false, ""));
        assertThat(SellersLetter.of(seen, inspected(seen)).orElseThrow().text())
                .contains("Skirt: differs from the part that it replaces.");
    }

    @Test
    void aShortOrderIsWrittenAboutWithItsCounts() {
        Build some = told(
                together(), new Ordered("B", "clips", 4, "Low Quay Workshop", ""), new Arrived("B", "clips", 3, ""));
        SellersLetter letter =
                SellersLetter.of(some, "B", Bench.FIRST.plusDays(9)).orElseThrow();
        assertThat(letter.text()).contains("Circlips: ordered 4, arrived 3.").contains("what is missing");
        assertThat(SellersLetter.of(told(some, new Arrived("B", "clips", 1, "")), "B", Bench.FIRST))
                .isEmpty();
    }

    @Test
    void onlyPartsThatCameAreInspected() {
        assertThat(Inspection.of(came(), "piston", "")).isEmpty();
        assertThat(Inspection.of(came(), "piston", "other")).isEmpty();
        assertThat(Inspection.of(came(), "nothing", "copy")).isEmpty();
        assertThat(Inspection.all(came())).extracting(Inspection::part).containsExactly("copy");
    }
}
