package gudgeon.rebuild.find;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Undo;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where in an engine book the things lie that a search asks for: by what figures a position has, else by what it is called. */
final class Reach {
    private static final Pattern CAM_DRIVE =
            Pattern.compile("cam\\b.*\\b(sprocket|chain|gear|belt)|timing.(pinion|gear|chain)|crank.gear|camshaft");
    private static final Pattern ADJUSTER = Pattern.compile("adjuster|tappet.cap|rocker|pushrod|tappet");
    private static final Pattern RING = Pattern.compile("\\b(top|first|second|compression|piston).ring");
    private static final Pattern CRANK = Pattern.compile("^crankshaft$|^crank$|^con.rod$");
    private static final Pattern DRIVE = Pattern.compile("^(primary.(pinion|chain)|engine.sprocket|clutch.basket)$");
    private static final Pattern PLUG = Pattern.compile("^spark.plug$");

    private final Build build;

    Reach(Build build) {
        this.build = build;
    }

    List<String> piston() {
        return of("pistons", Pattern.compile("^piston$"));
    }

    List<String> head() {
        return of("head", Pattern.compile("^(cylinder.)?head$"));
    }

    List<String> barrel() {
        return of("cylinder", Pattern.compile("^(barrel|cylinder)$"));
    }

    List<String> headGasket() {
        return of("gaskets", Pattern.compile("^head.gasket$"));
    }

    List<String> valve(String valve) {
        return of("valves." + valve, Pattern.compile("^" + Pattern.quote(valve) + ".valve$"));
    }

    List<String> camDrive() {
        return called(CAM_DRIVE);
    }

    List<String> adjusters() {
        return called(ADJUSTER);
    }

    List<String> rings() {
        return called(RING);
    }

    List<String> crank() {
        return called(CRANK);
    }

    List<String> drive() {
        return called(DRIVE);
    }

    List<String> plug() {
        return called(PLUG);
    }

    private List<String> of(String sizes, Pattern name) {
        List<String> bySizes = positions(position -> position.sizes().equals(sizes));
        return bySizes.isEmpty() ? called(name) : bySizes;
    }

    List<String> called(Pattern name) {
        return positions(position -> name.matcher(position.id()).find());
    }

    private List<String> positions(Predicate<Position> which) {
        return build.structure().positions().stream()
                .filter(which)
                .map(Position::id)
                .toList();
    }

    /** The step that has to be undone so that one of some positions can be seen and touched, of several the one that takes most. */
    Optional<String> uncovering(List<String> positions) {
        return positions.stream()
                .limit(1)
                .flatMap(position -> build.structure().stepsBurying(position).stream())
                .filter(build::covers)
                .map(Step::id)
                .max(Comparator.comparingInt(this::minutes));
    }

    private int minutes(String id) {
        return Stream.of(Undo.of(build, id))
                .mapToInt(undo -> undo.minutesOff() + undo.minutesBack())
                .sum();
    }
}
