package gudgeon.rebuild.drill;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.alarm.AlarmKind;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The mistakes of fasteners, made on covers of many sizes and told in many ways, each with a twin without it: caught at the entry
 * that shows it, and not a word on the twin.
 */
class FastenerVariantsTest {
    private static final int SEEDS = 20;

    static IntStream seeds() {
        return IntStream.range(0, SEEDS);
    }

    /** A thread with the figure of a cover's screw in it, near what it bears dry. */
    private record Size(String thread, double majorMm, double torqueNm) {}

    private static final List<Size> SIZES =
            List.of(new Size("M5", 5, 6), new Size("M6", 6, 10.5), new Size("M8", 8, 25));

    /**
     * A cover of so many holes whose stacks are one of two.
     *
     * @param thin the lesser stack, mm; the greater is a diameter and a half more
     */
    private record Cover(Size size, int holes, double thin, EngineBook book, Variant fault, Variant sound) {
        static Cover of(int seed) {
            Random random = new Random(seed);
            Size size = SIZES.get(seed % SIZES.size());
            int holes = 4 + random.nextInt(8);
            double thin = 8 + random.nextInt(20);
            EngineBook book = VariantBooks.read(text(size, holes, thin));
            return new Cover(
                    size, holes, thin, book, new Variant(book, new Random(seed)), new Variant(book, new Random(seed)));
        }

        private static String text(Size size, int holes, double thin) {
            StringBuilder text = new StringBuilder(String.format(Locale.ROOT, """
                    book: 1
                    engine: {name: Tarn of %s}
                    joints:
                      - id: cover
                        name: cover screws
                        shape: cover
                        gasket: true
                        passes: 2
                        again: after the first heat
                        torque: %.2f N.m
                        lubricated: dry
                        holes:
                    """, size.thread(), size.torqueNm()));
            for (int i = 0; i < holes; i++) {
                double stack = stack(size, thin, i);
                text.append(String.format(
                        Locale.ROOT,
                        "      - {id: h%d, at: [%.1f, %.1f], thread: %s, class: \"8.8\", length: %.1f, stack: %.1f, depth: %.1f, into: aluminium}%n",
                        i,
                        60 + 50 * Math.cos(2 * Math.PI * i / holes),
                        50 + 40 * Math.sin(2 * Math.PI * i / holes),
                        size.thread(),
                        stack + 2 * size.majorMm(),
                        stack,
                        2 * size.majorMm() + 3));
            }
            return text + """
                    steps:
                      - {id: close, name: close the cover, tightens: [cover]}
                      - {id: first-start, name: start it, needs: [close]}
                      - {id: go-over, name: tighten again, needs: [first-start], tightens: [cover]}
                      - {id: run-in, name: run it in, needs: [go-over]}
                    """;
        }

        private static double stack(Size size, double thin, int hole) {
            return hole % 2 == 0 ? thin : thin + 1.5 * size.majorMm();
        }

        double right(int hole) {
            return stack(size, thin, hole) + 2 * size.majorMm();
        }

        Fact given(Variant variant, int hole, double length) {
            return new HoleGiven("cover", "h" + hole, "", size.thread(), variant.written(length), "", "");
        }

        Fact tightened(int hole, int pass, double share) {
            return new Tightened(
                    "cover", "h" + hole, pass, String.format(Locale.ROOT, "%.2f N.m", share * size.torqueNm()), "", "");
        }

        void isCaught(AlarmKind kind, int due) {
            assertThat(fault.after(due))
                    .as("%s on %s at entry %d: %s", kind, size.thread(), due, fault.after(due))
                    .anyMatch(alarm -> alarm.kind() == kind && alarm.at().equals("cover"));
            assertThat(sound.ever(kind))
                    .as("%s on the twin of %s", kind, size.thread())
                    .isEmpty();
        }
    }

    private void giveOne(int seed, double wrongBy, AlarmKind kind) {
        Cover cover = Cover.of(seed);
        int hole = seed % cover.holes();
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            double off = variant == cover.fault() ? wrongBy * cover.size().majorMm() : 0;
            List<Fact> others = IntStream.range(0, cover.holes())
                    .filter(one -> one != hole)
                    .mapToObj(one -> cover.given(variant, one, cover.right(one)))
                    .toList();
            variant.tellAnyhow(others).tell(cover.given(variant, hole, cover.right(hole) + off));
        }
        cover.isCaught(kind, cover.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oneThatBottoms(int seed) {
        giveOne(seed, 1.0, AlarmKind.FASTENER_TOO_LONG);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oneThatHoldsTooLittle(int seed) {
        giveOne(seed, -1.2, AlarmKind.FASTENER_TOO_SHORT);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void twoLengthsMixedUp(int seed) {
        Cover cover = Cover.of(seed);
        int one = 2 * (seed % (cover.holes() / 2));
        int other = one + 1;
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            boolean mixed = variant == cover.fault();
            List<Fact> two = List.of(
                    cover.given(variant, one, cover.right(mixed ? other : one)),
                    cover.given(variant, other, cover.right(mixed ? one : other)));
            variant.tellAnyhow(two);
        }
        cover.isCaught(AlarmKind.FASTENERS_SWAPPED, cover.fault().told());
    }

    private static Fact wrench(double leastNm, double mostNm, TorqueUnit unit) {
        return new WrenchKept(
                "clicker",
                String.format(Locale.ROOT, "%.3f to %.3f %s", unit.fromNm(leastNm), unit.fromNm(mostNm), unit.symbol()),
                "",
                OptionalDouble.empty(),
                "");
    }

    private static Fact set(String setting, OptionalDouble adapterMm, OptionalDouble armMm) {
        return new WrenchChosen("cover", "clicker", setting, adapterMm, OptionalDouble.empty(), armMm, "");
    }

    private static Fact set(double number, TorqueUnit unit) {
        return set(
                String.format(Locale.ROOT, "%.3f %s", number, unit.symbol()),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** ISO 6789-1 has a click wrench of a scale keep its class from a fifth of its most upwards. */
    @ParameterizedTest
    @MethodSource("seeds")
    void belowWhatTheWrenchCanBeTrustedFor(int seed) {
        Cover cover = Cover.of(seed);
        double nm = cover.size().torqueNm();
        TorqueUnit unit = List.of(TorqueUnit.values()).get(seed % 5);
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            double most = variant == cover.fault() ? 5.5 * nm + seed : 4.5 * nm;
            variant.tell(wrench(most / 20, most, unit)).tell(set("", OptionalDouble.empty(), OptionalDouble.empty()));
        }
        cover.isCaught(AlarmKind.WRENCH, cover.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theRightNumberInAWrongUnit(int seed) {
        Cover cover = Cover.of(seed);
        double nm = cover.size().torqueNm();
        List<TorqueUnit> others = List.of(TorqueUnit.values()).stream()
                .filter(unit -> unit != TorqueUnit.NEWTON_METRE)
                .toList();
        TorqueUnit unit = others.get(seed % others.size());
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            double number = variant == cover.fault() ? nm : unit.fromNm(nm);
            variant.tell(wrench(0.1, 500, unit)).tell(set(number, unit));
        }
        cover.isCaught(AlarmKind.UNIT_MIXED, cover.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void setForAPassIsNoWrongUnit(int seed) {
        Cover cover = Cover.of(seed);
        Variant sound = cover.sound();
        for (double share : List.of(0.3, 0.5, 2 / 3.0, 0.7)) {
            sound.tell(wrench(0.1, 500, TorqueUnit.NEWTON_METRE))
                    .tell(set(share * cover.size().torqueNm(), TorqueUnit.NEWTON_METRE));
        }
        assertThat(sound.ever(AlarmKind.UNIT_MIXED)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aDryFigureOnASlickThread(int seed) {
        Cover cover = Cover.of(seed);
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            Lubrication slick = seed % 2 == 0 ? Lubrication.OILED : Lubrication.GREASED;
            variant.tell(new Lubricated("cover", variant == cover.fault() ? slick : Lubrication.DRY));
        }
        cover.isCaught(AlarmKind.DRY_FIGURE, cover.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void pulledDownInOnePassFromOneEnd(int seed) {
        Cover cover = Cover.of(seed);
        int first = seed % cover.holes();
        int next = (first + 1) % cover.holes();
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            double share = variant == cover.fault() ? 1 : 0.5;
            variant.tell(cover.tightened(first, 1, share)).tell(cover.tightened(next, 1, share));
        }
        cover.isCaught(AlarmKind.PULLED_DOWN, cover.fault().told());
    }

    /** With the adapter in line, what is set is the torque wanted times L / (L + e). */
    @ParameterizedTest
    @MethodSource("seeds")
    void anAdapterNotReckonedWith(int seed) {
        Cover cover = Cover.of(seed);
        double nm = cover.size().torqueNm();
        double arm = 180 + 10 * seed;
        double adapter = 40 + 5 * (seed % 7);
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            double setting = variant == cover.fault() ? nm : nm * arm / (arm + adapter);
            variant.tell(wrench(nm / 5, 3 * nm, TorqueUnit.NEWTON_METRE))
                    .tell(set(
                            String.format(Locale.ROOT, "%.3f N.m", setting),
                            OptionalDouble.of(adapter),
                            OptionalDouble.of(arm)));
        }
        cover.isCaught(AlarmKind.ADAPTER, cover.fault().told());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void runInWithoutBeingTightenedAgain(int seed) {
        Cover cover = Cover.of(seed);
        for (Variant variant : List.of(cover.fault(), cover.sound())) {
            variant.tell(new Fact.StepBegun("close"));
            for (int pass = 1; pass <= 2; pass++) {
                List<Fact> round = new ArrayList<>();
                for (int hole = 0; hole < cover.holes(); hole++) {
                    round.add(cover.tightened(hole, pass, pass / 2.0));
                }
                variant.tellAnyhow(round);
            }
            variant.tell(new Fact.StepDone("close", ""))
                    .tell(new Fact.StepBegun("first-start"))
                    .tell(new Fact.StepDone("first-start", ""));
            if (variant == cover.sound()) {
                variant.tell(
                        seed % 2 == 0
                                ? new TightenedAgain("cover", "", "cold")
                                : new Fact.StepDone("go-over", "all round"));
            }
            variant.tell(new Fact.StepBegun("run-in"));
        }
        cover.isCaught(AlarmKind.NOT_AGAIN, cover.fault().told());
    }
}
