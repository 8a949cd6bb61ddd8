package gudgeon.rebuild.drill;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.AlarmKind;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Method;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.Returned;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The mistakes of measuring and buying, made on engines of many sizes and told in many ways, each with a twin without it: caught at the
 * entry that shows it, and not a word on the twin.
 */
class DrillVariantsTest {
    private static final int SEEDS = 12;
    private static final double OVERSIZE_MM = 0.5;
    private static final double CLEARANCE_MM = 0.035;

    /** One engine of a seed, with its two journals. */
    private record Pair(Variant fault, Variant sound, double bore, EngineBook book) {
        static Pair of(int seed) {
            Random random = new Random(seed);
            double bore = 35 + 60 * random.nextInt(100) / 100.0;
            EngineBook book = VariantBooks.of(VariantBooks.ARCHETYPES.get(seed % 3), bore);
            return new Pair(new Variant(book, new Random(seed)), new Variant(book, new Random(seed)), bore, book);
        }

        void isCaught(AlarmKind kind, String at, int due) {
            assertThat(fault.after(due))
                    .as("%s at %s of bore %.2f at entry %d: %s", kind, at, bore, due, fault.after(due))
                    .anyMatch(alarm -> alarm.kind() == kind && alarm.at().equals(at));
            assertThat(sound.ever(kind))
                    .as("%s on the twin, bore %.2f", kind, bore)
                    .isEmpty();
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, SEEDS);
    }

    private static List<Fact> bore(Variant variant, EngineBook book, double atTop, double below) {
        List<Fact> facts = new ArrayList<>();
        for (String at :
                book.structure().dimension("bore").orElseThrow().places().all()) {
            facts.add(variant.read("bore", "", at, at.startsWith("top") ? atTop : below, "bore gauge"));
        }
        return facts;
    }

    private static Fact piston(String name) {
        return new Fact.PartEntered(name, "piston", Origin.PATTERN, 1, "");
    }

    private static Fact ordered(String order, String position, int count, Map<String, String> sizes) {
        return new Ordered(
                order,
                position,
                "",
                Optional.of(Origin.PATTERN),
                count,
                "Low Quay Workshop",
                "",
                Optional.empty(),
                Optional.empty(),
                sizes);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ringGapTooSmall(int seed) {
        Pair pair = Pair.of(seed);
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            double least = 0.004 * pair.bore();
            variant.tell(new Fact.PartEntered("new ring", "top-ring", Origin.PATTERN, 1, ""));
            variant.tell(variant.read(
                    "ring-gap-top",
                    "new ring",
                    "bottom",
                    variant == pair.fault() ? 0.6 * least : 1.2 * least,
                    "feelers"));
        }
        pair.isCaught(AlarmKind.RING_GAP, "top-ring", pair.fault().told());
    }

    /** The bore worn past what the piston ordered clears, whichever is told first; and a standard piston for a worn bore. */
    @ParameterizedTest
    @MethodSource("seeds")
    void pistonOrderedThatDoesNotCleanUp(int seed) {
        Pair pair = Pair.of(seed);
        double wear = 0.1 + 0.02 * (seed % 6);
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            double over = variant == pair.sound() ? OVERSIZE_MM : seed % 4 == 3 ? 0 : 0.12;
            List<Fact> parts = new ArrayList<>(bore(variant, pair.book(), pair.bore() + wear, pair.bore() + 0.02));
            Fact order = ordered(
                    "A", "piston", 1, Map.of("piston-skirt", variant.written(pair.bore() + over - CLEARANCE_MM)));
            if (seed % 2 == 0) {
                variant.tell(order).tellAnyhow(parts);
            } else {
                variant.tellAnyhow(parts).tell(order);
            }
        }
        pair.isCaught(AlarmKind.OVERSIZE, "piston", pair.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void standardPistonForABoreInLimitsIsSound(int seed) {
        Pair pair = Pair.of(seed);
        Variant sound = pair.sound();
        sound.tellAnyhow(bore(sound, pair.book(), pair.bore() + 0.03, pair.bore() + 0.02));
        sound.tell(ordered("A", "piston", 1, Map.of("piston-skirt", sound.written(pair.bore() - 0.02))));
        assertThat(sound.ever(AlarmKind.OVERSIZE)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void boredToTheWrongClearance(int seed) {
        Pair pair = Pair.of(seed);
        double[] wrong = {-0.01, 0.0, 0.012, 0.065};
        double[] right = {0.02, 0.03, 0.05};
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            double clearance = variant == pair.fault() ? wrong[seed % wrong.length] : right[seed % right.length];
            double skirt = pair.bore() + OVERSIZE_MM - 0.03;
            variant.tellAnyhow(bore(variant, pair.book(), pair.bore() + 0.15, pair.bore() + 0.02));
            variant.tell(piston("second oversize"));
            variant.tell(Variant.written(
                    "piston-skirt", "second oversize", "", String.format(Locale.ROOT, "%.3f mm", skirt), "micrometer"));
            String work = List.of("Rebore to +0.50", "bore and hone", "Finish the bore to size, +0.5", "overbore, 2nd")
                    .get(seed % 4);
            variant.tell(new WorkSent("barrel", "", "the machinist", work, "", Optional.empty()));
            variant.tell(new WorkBack("barrel", "", ""));
            for (String at : pair.book()
                    .structure()
                    .dimension("bore")
                    .orElseThrow()
                    .places()
                    .all()) {
                String size = String.format(Locale.ROOT, "%.3f mm", skirt + clearance);
                variant.tell(Variant.written("bore", "", at, size, "bore gauge"));
            }
        }
        int first = pair.fault().told() - 5;
        pair.isCaught(AlarmKind.BORED_EARLY, "barrel", first);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void boredBeforeThePistonIsInHand(int seed) {
        Pair pair = Pair.of(seed);
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            variant.tellAnyhow(bore(variant, pair.book(), pair.bore() + 0.15, pair.bore() + 0.02));
            variant.tell(ordered("A", "piston", 1, Map.of()));
            if (variant == pair.sound()) {
                variant.tell(new Arrived("A", "piston", 1, "")).tell(piston("oversize"));
                variant.tell(variant.read(
                        "piston-skirt", "oversize", "", pair.bore() + OVERSIZE_MM - CLEARANCE_MM, "inch micrometer"));
            }
            variant.tell(new WorkSent("barrel", "", "the machinist", "Rebore, +0.50", "", Optional.empty()));
        }
        pair.isCaught(AlarmKind.BORED_EARLY, "barrel", pair.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void workOnTheBarrelThatIsNoBoringIsSound(int seed) {
        Variant sound = Pair.of(seed).sound();
        String work = List.of("Blast the fins, plug the bore", "Weld a broken fin", "Mask the bore and paint")
                .get(seed % 3);
        sound.tell(new WorkSent("barrel", "", "the machinist", work, "", Optional.empty()));
        assertThat(sound.ever(AlarmKind.BORED_EARLY)).isEmpty();
    }

    /** Passed on a vernier, or on a reading with nobody knows what. */
    @ParameterizedTest
    @MethodSource("seeds")
    void passedOnTooCoarseAnInstrument(int seed) {
        Pair pair = Pair.of(seed);
        double skirt = pair.bore() - 0.08 + 0.012;
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            variant.tell(new Fact.TakenOff("piston", 1, "", "", ""));
            variant.tell(variant.read("piston-skirt", "", "", skirt, seed % 2 == 0 ? "vernier" : ""));
            if (variant == pair.sound()) {
                variant.tell(
                        variant.read("piston-skirt", "", "", skirt, seed % 3 == 0 ? "inch micrometer" : "micrometer"));
            }
            variant.tell(new Fact.Disposed("piston", "", Disposition.USE_AGAIN, "good enough"));
        }
        pair.isCaught(AlarmKind.UNPROVEN, "piston", pair.fault().told());
    }

    /** A decimal point moved, two digits swapped on the second reading, inches or thousandths typed as millimetres. */
    @ParameterizedTest
    @MethodSource("seeds")
    void slips(int seed) {
        Pair pair = Pair.of(seed);
        String at = "middle, along the pin";
        double size = pair.bore() + 0.018;
        String right = String.format(Locale.ROOT, "%.3f", size);
        String wrong = List.of(
                        String.format(Locale.ROOT, "%.4f", size / 10),
                        String.format(Locale.ROOT, "%.2f", size * 10),
                        String.format(Locale.ROOT, "%.4f", size / 25.4),
                        String.format(Locale.ROOT, "%.1f", 1000 * size / 25.4),
                        String.format(Locale.ROOT, "%.3f mm", size / 25.4),
                        right.substring(0, 3) + right.charAt(4) + right.charAt(3) + right.substring(5))
                .get(seed % 6);
        if (seed % 6 == 5) {
            // 35.218 and 35.128: only another reading of the place tells them apart
            pair.fault().tell(Variant.written("bore", "", at, right, "bore gauge"));
        }
        pair.fault().tell(Variant.written("bore", "", at, wrong, "bore gauge"));
        pair.sound().tell(Variant.written("bore", "", at, right, "bore gauge"));
        pair.sound().tell(Variant.written("bore", "", at, right.replace('.', ','), "bore gauge"));
        pair.isCaught(AlarmKind.SLIP, "barrel", pair.fault().told());
        int wrongOne = pair.fault().told();
        pair.fault()
                .tell(new Fact.Corrected(
                        Variant.key(wrongOne),
                        "slip of the pen",
                        Optional.of(Variant.written("bore", "", at, right, "bore gauge"))));
        assertThat(pair.fault().stands(AlarmKind.SLIP, "barrel", pair.fault().told()))
                .isFalse();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void barrelOfTheLargerSister(int seed) {
        Pair pair = Pair.of(seed);
        if (!VariantBooks.hasCaseMouth(pair.book())) {
            return;
        }
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            String family = variant == pair.fault() ? "larger" : "equal";
            Fact mouth = variant.read("case-mouth", "", "one way", pair.bore() + 5.02, "bore gauge");
            List<Fact> before = new ArrayList<>(List.of(ordered("A", "barrel", 1, Map.of())));
            if (seed % 3 == 0) {
                before.add(mouth);
            }
            variant.tellAnyhow(before);
            variant.tell(new Arrived("A", "barrel", 1, ""));
            variant.tell(new Fact.PartEntered("other barrel", "barrel", Origin.USED, 1, family, "", ""));
        }
        pair.isCaught(AlarmKind.FAMILY, "barrel", pair.fault().told());
        for (String at : List.of("one way", "square to it")) {
            Variant fault = pair.fault();
            fault.tell(fault.read("case-mouth", "", at, pair.bore() + 5.02, "bore gauge"));
            fault.tell(fault.read("barrel-spigot", "other barrel", at, pair.bore() + 10.95, "micrometer"));
        }
        assertThat(pair.fault().stands(AlarmKind.FAMILY, "barrel", pair.fault().told()))
                .as("measured, it is still too large")
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bearingPutInCold(int seed) {
        Pair pair = Pair.of(seed);
        String bearing = pair.book().structure().positions().stream()
                .filter(position -> position.seatFit().isPresent())
                .map(Position::id)
                .findFirst()
                .orElseThrow();
        pair.fault()
                .tell(List.<Fact>of(
                                new FittingSaid(bearing, Method.PRESSED_COLD, OptionalDouble.empty(), ""),
                                new FittingSaid(bearing, Method.DRIVEN_COLD, OptionalDouble.empty(), ""),
                                new FittingSaid(bearing, Method.WARMED, OptionalDouble.of(150), ""))
                        .get(seed % 3));
        pair.sound().tell(new FittingSaid(bearing, Method.WARMED, OptionalDouble.of(60 + 5 * seed), ""));
        pair.isCaught(AlarmKind.HEAT, bearing, pair.fault().told());
    }

    /** Short, too many, or without the order's name; the twin gets a second parcel, or another in place of one sent back. */
    @ParameterizedTest
    @MethodSource("seeds")
    void parcelWrongInNumber(int seed) {
        Pair pair = Pair.of(seed);
        String clips = "gudgeon-circlips";
        for (Variant variant : List.of(pair.fault(), pair.sound())) {
            variant.tell(ordered("A", clips, 2, Map.of()));
            if (seed % 2 == 0) {
                variant.tell(ordered("B", clips, 2, Map.of()));
            }
        }
        pair.fault().tell(new Arrived(seed % 3 == 0 ? "" : "A", clips, seed % 4 == 1 ? 3 : 1, ""));
        pair.sound().tell(new Arrived(seed % 3 == 0 ? "" : "A", clips, 2, ""));
        pair.sound().tell(new Returned("A", clips, "", 1, "bent", ""));
        pair.sound().tell(new Arrived("A", clips, 1, "in its place"));
        pair.isCaught(AlarmKind.SHORT, clips, pair.fault().told());
    }
}
