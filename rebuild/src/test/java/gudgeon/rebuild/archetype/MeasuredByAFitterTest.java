package gudgeon.rebuild.archetype;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.InstrumentKind;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The archetypes ask for every size that an experienced fitter takes, with the instrument and the places for it. */
class MeasuredByAFitterTest {
    private static final Pattern COMMA = Pattern.compile(", ");

    /** On every engine: a position, and what is measured on it in the trade's words. */
    private static final String EVERYWHERE = """
            barrel: ^bore$, wear of the bore, ovality, taper, scores, height, stud holes, top face|head face, base face
            piston: skirt, clearance, pin bore, compression height, top land, crown, top ring groove, second ring groove, oil ring groove
            top-ring: thickness, gap, side clearance
            second-ring: thickness, gap, side clearance
            oil-ring: thickness, gap
            gudgeon-pin: ^gudgeon pin$, length, in the piston, in the small end
            gudgeon-circlips: thickness
            head: warp, volume
            exhaust-valve: head of, stem of, length, groove, margin, run-out, clearance
            inlet-valve: head of, stem of, length, groove, margin, run-out, clearance
            camshaft: exhaust lobe, inlet lobe, base circle, rise, lift of the exhaust, lift of the inlet, journal, clearance, end float
            con-rod: side play, bend
            crankshaft: end float
            spark-plug: gap
            """;

    private static final String LYING = """
            barrel: spigot$, clearance of the spigot
            case-left: case mouth$, warp, bearing seat, bearing in the case
            case-right: bearing seat, bearing in the case
            piston: depth of the exhaust valve pocket, depth of the inlet valve pocket, diameter of the exhaust, diameter of the inlet
            base-gasket: pressed
            head-gasket: pressed
            case-gasket: pressed
            head: recess
            con-rod: small end bore, big end bore
            valve-guides: bore of the exhaust, bore of the inlet
            valve-seats: width of the exhaust, width of the inlet, height of the exhaust stem, height of the inlet stem
            valve-springs: free length, lean, solid height, force, fitted height, before its coils meet
            cam-bushes: bore
            camshaft: run-out
            rockers: bore, clearance
            rocker-shafts: rocker shafts
            cam-chain: length
            tensioner-blade: groove
            tensioner-plunger: plunger, spring
            crankshaft: run-out of the left shaft end, right shaft end, over the crank webs, left main bearing, right main bearing
            crank-shims: thickness
            crankpin: crankpin
            big-end-bearing: up-and-down
            mainshaft: bush, run-out, end float, clearance, clutch basket
            output-shaft: bush, run-out, end float, clearance
            output-gear-bush: bore, clearance
            gear-shafts-thrust-washers: thickness
            kickstart-shaft: end float
            selector-forks: ears, play, bore, clearance
            selector-fork-pins: diameter
            selector-drum: tracks, slide, end float, play
            mainshaft-second-gear: groove
            output-third-gear: groove
            output-first-gear: dogs
            clutch-friction-plates: thickness
            clutch-steel-plates: warp, thickness
            clutch-springs: free length
            clutch-basket: notches, clearance, backlash
            oil-pump-rotors: tip
            oil-pump: clearance of the outer rotor, end clearance
            contact-breaker: points
            stator-plate: air gap
            """;

    private static final String UPRIGHT = """
            barrel: spigot$, clearance of the spigot
            case-left: case mouth$, bearing seat, bearing in the case
            case-right: bearing seat, bearing in the case
            piston: depth of the exhaust valve pocket, depth of the inlet valve pocket
            head: recess, width of the exhaust seat, width of the inlet seat, height of the exhaust stem, height of the inlet stem
            small-end-bush: bore
            exhaust-guide: bore
            inlet-guide: bore
            exhaust-springs: free length, lean, solid height, force, fitted height, before its coils meet
            inlet-springs: free length, lean, solid height, force, fitted height, before its coils meet
            exhaust-rocker: bore, clearance
            inlet-rocker: bore, clearance
            rocker-spindles: exhaust, inlet
            exhaust-pushrod: length, bend
            inlet-pushrod: length, bend
            exhaust-tappet: stem, clearance
            inlet-tappet: stem, clearance
            tappet-guides: exhaust, inlet
            cam-bush-case: bore
            cam-bush-cover: bore
            camshaft: backlash
            idler-gear: backlash
            engine-shaft-drive: run-out, bearing
            engine-shaft-timing: run-out, bearing
            crankshaft: over the flywheels
            big-end-rollers: up-and-down, diameter
            crankpin: crankpin
            crank-shims: thickness
            oil-pump: end float, clearance
            magneto: points, float
            mainshaft: run-out, end float, sleeve gear
            sleeve-gear: bore, clearance
            layshaft: journals, clearance, end float
            gear-shafts-thrust-washers: thickness
            gears: groove, dogs
            selector-forks: ears, play, bore, clearance
            selector-fork-rod: rod
            selector-fork-pins: diameter
            selector-drum: tracks, play
            clutch-friction-plates: thickness
            clutch-steel-plates: warp
            clutch-springs: free length
            clutch-basket: notches, rock
            primary-chain: length
            """;

    private static final String SIDE_VALVE = """
            barrel: width of the exhaust seat, width of the inlet seat, height of the exhaust stem, height of the inlet stem
            head: over the valves
            small-end-bush: bore
            exhaust-guide: bore
            inlet-guide: bore
            exhaust-spring: free length, lean, solid height, force, fitted height, before its coils meet
            inlet-spring: free length, lean, solid height, force, fitted height, before its coils meet
            exhaust-tappet: stem, clearance
            inlet-tappet: stem, clearance
            crankcase: exhaust tappet, inlet tappet
            cam-bushes: bore
            cam-washer: thickness
            camshaft: backlash
            crankshaft: run-out, ^crankpin$, ovality, taper, flywheel-side main journal, drive-side main journal
            big-end-shells: bore, clearance
            big-end-shims: thickness
            big-end-bolts: length
            dipper: length
            main-bearing-flywheel: bore, clearance
            main-bearing-drive: bore, clearance
            crank-thrust-washer: thickness
            side-plate-gaskets: pressed
            governor-weights: holes, pins, play
            governor-shaft: shaft, end float
            governor-spring: length
            magneto: points
            flywheel: run-out
            """;

    private static String wantedOf(Archetype archetype) {
        return switch (archetype) {
            case LYING_OVERHEAD_CAM_SINGLE -> LYING;
            case UPRIGHT_PUSHROD_SINGLE -> UPRIGHT;
            case SIDE_VALVE_STATIONARY -> SIDE_VALVE;
        };
    }

    @ParameterizedTest
    @EnumSource
    void nothingThatAFitterMeasuresIsLeftOut(Archetype archetype) {
        Structure structure = archetype.book().structure();
        assertThat(Stream.of(EVERYWHERE, wantedOf(archetype))
                        .flatMap(String::lines)
                        .flatMap(line -> missing(structure, line).stream()))
                .isEmpty();
    }

    @Test
    void whatIsLeftOutIsTold() {
        Structure structure = Archetype.SIDE_VALVE_STATIONARY.book().structure();
        assertThat(missing(structure, "barrel: ^bore$, number of fins, colour"))
                .containsExactly("barrel: number of fins", "barrel: colour");
        assertThat(missing(structure, "rocker: bore")).containsExactly("rocker: bore");
    }

    private static List<String> missing(Structure structure, String line) {
        int colon = line.indexOf(':');
        String position = line.substring(0, colon);
        List<String> names = structure.dimensions().stream()
                .filter(dimension -> dimension.of().equals(position))
                .map(Dimension::name)
                .toList();
        return COMMA.splitAsStream(line.substring(colon + 1).strip())
                .filter(wanted -> names.stream()
                        .noneMatch(name -> Pattern.compile(wanted).matcher(name).find()))
                .map(wanted -> position + ": " + wanted)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void whateverIsReadSaysHowWithWhatAndWhatIsUsual(Archetype archetype) {
        assertThat(archetype.book().structure().dimensions()).allSatisfy(dimension -> {
            assertThat(dimension.how()).as(dimension.id()).isNotEmpty();
            if (dimension.isRead()) {
                assertThat(Arrays.stream(InstrumentKind.values()).map(InstrumentKind::words))
                        .as(dimension.id())
                        .anyMatch(dimension.with()::contains);
                assertThat(dimension.usual()).as(dimension.id()).hasValueSatisfying(usual -> {
                    assertThat(usual.atLeast()).isPresent();
                    assertThat(usual.atMost()).isPresent();
                });
            } else {
                assertThat(dimension.with()).as(dimension.id()).isEmpty();
                assertThat(dimension.inspect()).as(dimension.id()).isFalse();
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void theBoreIsReadAtThreeHeightsOnTwoAxesAndAStemAtThree(Archetype archetype) {
        Structure structure = archetype.book().structure();
        assertThat(structure.dimension("bore").orElseThrow().places().all()).hasSize(6);
        assertThat(structure.dimension("exhaust-stem").orElseThrow().places().heights())
                .hasSize(3);
        assertThat(structure
                        .dimension("exhaust-guide-bore")
                        .orElseThrow()
                        .places()
                        .heights())
                .hasSize(3);
    }

    /** A wrong oversize sends the part back at once; what takes longer to measure comes after. */
    @ParameterizedTest
    @EnumSource
    void anArrivingPartIsComparedWhereTroubleShowsSoonest(Archetype archetype) {
        Structure structure = archetype.book().structure();
        assertThat(inspected(structure, "barrel")).startsWith("bore", "barrel-height");
        assertThat(inspected(structure, "piston")).startsWith("piston-skirt", "pin-bore", "compression-height");
        assertThat(inspected(structure, "exhaust-valve")).startsWith("exhaust-head", "exhaust-stem");
        assertThat(inspected(structure, "top-ring")).startsWith("ring-thickness-top", "ring-gap-top");
    }

    private static List<String> inspected(Structure structure, String position) {
        return structure.dimensions().stream()
                .filter(dimension -> dimension.inspect() && dimension.of().equals(position))
                .map(Dimension::id)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void aClearanceIsOfAHoleAndWhatRunsInItAndBothAreRead(Archetype archetype) {
        Structure structure = archetype.book().structure();
        assertThat(structure.dimensions().stream()
                        .flatMap(dimension -> dimension.derived().stream())
                        .filter(derivation -> derivation.as() == Derivation.As.CLEARANCE))
                .isNotEmpty()
                .allSatisfy(derivation -> assertThat(derivation.of())
                        .doesNotHaveDuplicates()
                        .allMatch(id -> structure.dimension(id).orElseThrow().isRead()));
        assertThat(structure.dimension("skirt-clearance").flatMap(Dimension::derived))
                .hasValue(new Derivation(Derivation.As.CLEARANCE, List.of("bore", "piston-skirt")));
    }
}
