package gudgeon.rebuild.find;

import static gudgeon.rebuild.find.Nature.COMPRESSION;
import static gudgeon.rebuild.find.Nature.CRANK;
import static gudgeon.rebuild.find.Nature.DRIVE;
import static gudgeon.rebuild.find.Nature.HEAD;
import static gudgeon.rebuild.find.Nature.LOOSE;
import static gudgeon.rebuild.find.Nature.PLUG;
import static gudgeon.rebuild.find.Nature.RING;
import static gudgeon.rebuild.find.Nature.UNLISTED;
import static gudgeon.rebuild.find.Nature.VALVE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The tests by which a tight spot is run down. How surely each answer comes is common practice, no source. */
final class TightTests {
    /** Id of the test that counts how often it comes back. */
    static final String COUNT = "count-turns";

    static final String EVERY = "every-turn";
    static final String SECOND = "every-second-turn";

    static final String ASSUMPTION =
            "How surely a cause brings each answer of a test about: 90 to 97 of 100 where it has to,"
                    + " the rest shared by the other answers. Common practice, no source.";

    private static final double SURELY = 0.95;
    private static final double MOSTLY = 0.9;
    private static final double SELDOM = 0.05;
    private static final String FREE = "free";
    private static final String SAME = "same";
    private static final String BY_HAND =
            "Turn slowly with a spanner, ignition off, fingers clear of chain, gears and fins; never force it.";

    private final Reach reach;
    private final List<TightSuspect> suspects;

    TightTests(Reach reach, List<TightSuspect> suspects) {
        this.reach = reach;
        this.suspects = suspects;
    }

    List<Test> all() {
        List<Test> all = new ArrayList<>(List.of(plugOut(), count(), slack(), driveOff(), headOff(), pistonOff()));
        all.add(squish());
        all.add(scope());
        if (suspects.stream().anyMatch(suspect -> suspect.teeth() != 0)) {
            all.add(marks());
            all.add(timing());
        }
        return all;
    }

    /** A test after which it either turns freely or goes tight as before. */
    private List<Answer> freeOrSame(Set<Nature> freed) {
        return new Odds()
                .answer(FREE, "it turns freely")
                .answer(SAME, "it goes tight as before")
                .answers(
                        suspects,
                        suspect -> isOpen(suspect)
                                ? Map.of()
                                : Map.of(FREE, freed.contains(suspect.nature()) ? SURELY : SELDOM));
    }

    private static boolean isOpen(TightSuspect suspect) {
        return suspect.nature() == LOOSE || suspect.nature() == UNLISTED;
    }

    private Test plugOut() {
        return new Test(
                "plug-out",
                "take the spark plug out and turn it again",
                List.of("Take the plug out.", "Turn through two full turns and feel the same place again."),
                List.of(BY_HAND, "Let the engine cool first; keep dirt out of the hole."),
                5,
                Optional.empty(),
                freeOrSame(EnumSet.of(PLUG, COMPRESSION)));
    }

    private Test count() {
        return new Test(
                COUNT,
                "turn on and count how often it comes back",
                List.of(
                        "Ease it back, take the load off, and come to the place again from the other side if it can't be passed.",
                        "Follow the piston with a rod of soft wood or plastic down the plug hole, and the valves by their rockers or"
                                + " springs: is it the stroke with a valve open, both top dead centres, or now here and now there?"),
                List.of(BY_HAND, "Nothing hard or thin down the plug hole that could fall in or jam."),
                5,
                Optional.empty(),
                new Odds()
                        .answer(EVERY, "it comes every turn")
                        .answer(SECOND, "it comes every second turn")
                        .answer("differs", "it comes now here, now there")
                        .answers(suspects, suspect -> {
                            if (suspect.nature() == LOOSE) {
                                return Map.of("differs", 0.5);
                            }
                            return suspect.nature() == UNLISTED
                                    ? Map.of()
                                    : Map.of(suspect.pattern().everyTurn() ? EVERY : SECOND, MOSTLY);
                        }));
    }

    private Test slack() {
        List<String> adjusters = reach.adjusters();
        return new Test(
                "rockers-slack",
                "let the valves stay shut: back the rockers off or take the followers out, and turn it again",
                List.of(
                        "Turn back from the tight place until the valves are shut.",
                        "Back the adjusters off as far as they go, or take the rockers, pushrods or followers out, so that no lobe"
                                + " opens a valve.",
                        "Turn through two full turns. If it is free now, a valve was in the way."),
                List.of(BY_HAND, "Mark each adjuster; the clearances have to be set again after it."),
                20,
                reach.uncovering(adjusters),
                freeOrSame(EnumSet.of(VALVE)));
    }

    private Test driveOff() {
        return new Test(
                "drive-off",
                "take the drive off the crank and turn the crank alone",
                List.of(
                        "Put it in neutral and pull the clutch first: if that frees it, it lies behind the clutch.",
                        "Take off what the crank drives on its way to the gearbox, and turn the crank alone."),
                List.of(BY_HAND, "Clutch springs and locked nuts store force: slacken them in turns and crosswise."),
                15,
                first(reach.drive()),
                freeOrSame(EnumSet.of(DRIVE)));
    }

    private Test headOff() {
        return new Test(
                "head-off",
                "take the head off, hold the barrel down, and turn it again",
                List.of(
                        "Look at crown, head and valves for the mark where they met, before anything is wiped.",
                        "Hold the barrel down with tubes under the nuts and turn through two full turns."),
                List.of(BY_HAND, "Let it cool; hold the cam chain so that it does not fall in."),
                15,
                first(reach.head()),
                freeOrSame(EnumSet.of(VALVE, HEAD, PLUG, COMPRESSION)));
    }

    private Test pistonOff() {
        return new Test(
                "piston-off",
                "take the piston off the rod and turn the crank alone",
                List.of(
                        "Cover the mouth of the case, take barrel and piston off.",
                        "Guide the rod by hand and turn through two full turns."),
                List.of(BY_HAND, "Circlips fly: goggles on.", "The rod must not strike the case."),
                15,
                first(reach.piston()),
                freeOrSame(EnumSet.of(VALVE, HEAD, PLUG, COMPRESSION, RING)));
    }

    private Test squish() {
        return new Test(
                "squish-measured",
                "measure how near the piston comes to the head, with soft wire down the plug hole",
                List.of(
                        "Bend soft solder so that it lies on the crown's edge above the pin, plug out.",
                        "Turn once over top dead centre, as far as it goes without force, and measure the flattened end."),
                List.of(BY_HAND, "Hold on to the wire. Wash your hands if the solder has lead."),
                20,
                Optional.empty(),
                new Odds()
                        .answer("none", "it is squeezed to nothing")
                        .answer("room", "it keeps the thickness that is wanted")
                        .answers(
                                suspects,
                                suspect -> isOpen(suspect)
                                        ? Map.of()
                                        : Map.of("none", suspect.nature() == HEAD ? SURELY : SELDOM)));
    }

    private Test scope() {
        Odds answers = new Odds()
                .answer("no-mark", "the mark on the crown lies right, and nothing was touched")
                .answer("turned", "the mark on the crown lies the wrong way round")
                .answer("head-touched", "the edge of the crown was touched")
                .answer("loose", "something loose lies there");
        List<String> valves = suspects.stream()
                .map(TightSuspect::valve)
                .filter(valve -> !valve.isEmpty())
                .toList();
        valves.forEach(
                valve -> answers.answer("touched-" + valve, "there is a bright spot under the " + valve + " valve"));
        return new Test(
                "crown-seen",
                "look at the crown through the plug hole",
                List.of(
                        "Plug out; look in with a small mirror and light, or a borescope.",
                        "Look for the mark that says which way the piston goes, for bright spots, and for what does not belong there."),
                List.of("Let it cool first. Keep dirt out of the hole."),
                10,
                Optional.empty(),
                answers.answers(suspects, suspect -> seen(suspect, valves)));
    }

    private static Map<String, Double> seen(TightSuspect suspect, List<String> valves) {
        if (suspect.turned()) {
            return Map.of("turned", MOSTLY);
        }
        return switch (suspect.nature()) {
            case UNLISTED -> Map.of();
            case LOOSE -> Map.of("loose", 0.5, "no-mark", 0.4);
            case HEAD -> Map.of("head-touched", 0.5, "no-mark", 0.4);
            case VALVE ->
                valves.contains(suspect.valve())
                        ? Map.of("touched-" + suspect.valve(), 0.6, "no-mark", 0.3)
                        : Map.of("no-mark", 0.4, "turned", 0.02, "loose", 0.02, "head-touched", 0.02);
            case PLUG, COMPRESSION, RING, CRANK, DRIVE -> Map.of("no-mark", MOSTLY);
        };
    }

    private Test marks() {
        return new Test(
                "marks-checked",
                "look at the timing marks at firing top dead centre",
                List.of(
                        "Turn forward to firing top dead centre by the crank's own mark, the chain's slack on its slack side.",
                        "Count by how many teeth the cam's mark lies off its place. Late is behind, seen the way it turns."),
                List.of(BY_HAND),
                10,
                reach.uncovering(reach.camDrive()),
                teeth(MOSTLY));
    }

    private Test timing() {
        return new Test(
                "timing-measured",
                "measure the cam's timing with degree disc and dial gauge",
                List.of(
                        "Find true top dead centre with a stop, turning either way.",
                        "Read the angles at equal lift on both flanks of a lobe, and compare their middle with the book."),
                List.of(BY_HAND, "Take the piston stop out before you turn on."),
                40,
                reach.uncovering(reach.adjusters()),
                teeth(SURELY));
    }

    private List<Answer> teeth(double right) {
        Odds answers = new Odds()
                .answer(cam(0), "the cam stands as it should")
                .answer(cam(-1), "the cam is one tooth early")
                .answer(cam(1), "the cam is one tooth late")
                .answer(cam(-2), "the cam is two teeth early")
                .answer(cam(2), "the cam is two teeth late");
        return answers.answers(
                suspects, suspect -> isOpen(suspect) ? Map.of(cam(0), SURELY) : Map.of(cam(suspect.teeth()), right));
    }

    private static String cam(int teeth) {
        return teeth == 0 ? "in-line" : Math.abs(teeth) + (teeth < 0 ? "-early" : "-late");
    }

    private static Optional<String> first(List<String> positions) {
        return positions.stream().findFirst();
    }
}
