package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to move to bring a cam into time, in sentences. */
record CamMove(CamTimed cam) {
    List<String> sentences() {
        if (cam.zone() == Zone.IN) {
            return List.of("Leave it as it is.");
        }
        List<String> all = new ArrayList<>();
        if (cam.toothDeg().isEmpty()) {
            all.add(
                    "The book does not say how many teeth the cam's sprocket has ('cam: {sprocket-teeth: ...}'), so it can't be told"
                            + " in teeth. One tooth is 720° divided by their number.");
            return all;
        }
        double tooth = cam.toothDeg().getAsDouble();
        int teeth = cam.teethLate();
        double rest = cam.lateDeg().value() - teeth * tooth;
        if (teeth == 0) {
            all.add(lessThanHalf(tooth));
        } else {
            all.add(move(teeth, tooth));
            if (!cam.limits().holds(rest)) {
                all.add("That leaves it " + Angle.late(rest) + ", which whole teeth do not take out. " + noHalf());
            }
            unsure(tooth, teeth).ifPresent(all::add);
        }
        all.add("Then turn twice by hand, plug out, and read it anew.");
        return all;
    }

    private static String move(int teeth, double tooth) {
        String one = "One tooth of the cam's sprocket is " + Angle.text(tooth) + " of the crank: it stands "
                + CamTiming.teeth(teeth) + ". ";
        String many = Math.abs(teeth) == 1 ? "one tooth" : Math.abs(teeth) + " teeth";
        return one + "Hold the crank still, take the chain off the cam's sprocket, turn the sprocket by " + many
                + (teeth > 0 ? " the way it runs" : " against the way it runs") + ", and lay the chain on again.";
    }

    private String lessThanHalf(double tooth) {
        String half = "That is less than half a tooth: one tooth is " + Angle.text(tooth)
                + " of the crank, so moving one would put it farther out the other way. ";
        return cam.zone() == Zone.UNPROVEN
                ? half
                        + "Read it more closely first: true top dead centre by the stop, more lifts, turned forward only."
                : half + noHalf();
    }

    /** The book has no place for offset keys or slotted sprockets, so none is promised. */
    private static String noHalf() {
        return "Half teeth can't be had with a chain between keyed sprockets. Look at the marks, at key and keyways, at a stretched chain"
                + " and at the disc; an offset key or a slotted sprocket moves the rest where the maker has one.";
    }

    /** The share of the doubt in which another number of teeth is the right one. */
    private Optional<String> unsure(double tooth, int teeth) {
        ToleranceInterval near = new ToleranceInterval((teeth - 0.5) * tooth, (teeth + 0.5) * tooth);
        double wrong = Conformity.of(cam.lateDeg(), near).outside();
        return wrong < 0.05
                ? Optional.empty()
                : Optional.of("Another number of teeth is right with a chance of " + Math.round(100 * wrong)
                        + " %: read more closely before you move it.");
    }
}
