package gudgeon.rebuild.build;

import gudgeon.mechanics.bolt.StrengthClass;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.mechanics.thread.UnknownFastener;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Piled;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WitnessMarked;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Why a fact about fasteners can't be taken down as it stands. */
final class FasteningRefusals {
    private static final int LONGEST_NAME = 80;
    private static final int MOST_HOLES = 200;
    private static final int MOST_PILED = 999;
    private static final int MOST_PASSES = 9;
    /** No joint of a small engine is larger. */
    private static final double FARTHEST_MM = 2000;
    /** Two holes can't lie nearer than the smallest screw is thick. */
    private static final double NEAREST_MM = 1;

    private final Build build;
    private final Refusals refusals;

    FasteningRefusals(Build build, Refusals refusals) {
        this.build = build;
        this.refusals = refusals;
    }

    void look(Fastening fact) {
        if (fact instanceof JointMapped mapped) {
            mapped(mapped);
        } else if (fact instanceof HoleMeasured measured) {
            hole(measured.joint(), measured.hole());
            thread(measured.thread());
            length("What is clamped", measured.stack());
            length("The depth of the thread", measured.depth());
        } else if (fact instanceof FastenerOut out) {
            hole(out.joint(), out.hole());
            fastener(out.thread(), out.length());
        } else if (fact instanceof HoleGiven given) {
            hole(given.joint(), given.hole());
            fastener(given.thread(), given.length());
        } else if (fact instanceof Piled piled) {
            piled(piled);
        } else if (fact instanceof WrenchKept kept) {
            kept(kept);
        } else {
            ofTightening(fact);
        }
    }

    private void ofTightening(Fastening fact) {
        if (fact instanceof WrenchChosen chosen) {
            chosen(chosen);
        } else if (fact instanceof Tightened tightened) {
            hole(tightened.joint(), tightened.hole());
            if (tightened.pass() < 1 || tightened.pass() > MOST_PASSES) {
                refusals.refuse("A pass is 1 to " + MOST_PASSES + ", not " + tightened.pass() + ".");
            }
            torque(tightened.torque()).ifPresent(nm -> bearable(tightened, nm));
        } else if (fact instanceof TightenedAgain again) {
            torque(again.torque());
        } else if (fact instanceof WitnessMarked marked) {
            marked.holes().forEach(hole -> hole(marked.joint(), hole));
            if (marked.holes().isEmpty()) {
                refusals.refuse("No hole is ticked. Tick each whose fastener you marked across.");
            }
        }
    }

    private void mapped(JointMapped mapped) {
        String joint = build.structure().name(mapped.joint());
        if (mapped.holes().isEmpty()) {
            refusals.refuse("No hole of the " + joint + " has a place. Write where each is, in mm.");
        }
        if (mapped.holes().size() > MOST_HOLES || mapped.outline().size() > MOST_HOLES) {
            refusals.refuse("At most " + MOST_HOLES + " holes and corners can be mapped for one joint.");
            return;
        }
        if (mapped.outline().size() == 1 || mapped.outline().size() == 2) {
            refusals.refuse("An outline has three corners or more. Add corners, or leave the outline out.");
        }
        if (Stream.concat(mapped.outline().stream(), mapped.holes().values().stream())
                .anyMatch(point -> Math.max(Math.abs(point.x()), Math.abs(point.y())) > FARTHEST_MM)) {
            refusals.refuse("A place is at most " + Math.round(FARTHEST_MM)
                    + " mm from the corner that places are counted from. Write millimetres.");
        }
        onOneSpot(mapped);
    }

    private void onOneSpot(JointMapped mapped) {
        List<Map.Entry<String, Point>> places = List.copyOf(new TreeMap<>(mapped.holes()).entrySet());
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                Point one = places.get(i).getValue();
                Point other = places.get(j).getValue();
                if (Math.hypot(one.x() - other.x(), one.y() - other.y()) < NEAREST_MM) {
                    refusals.refuse("The holes " + places.get(i).getKey() + " and "
                            + places.get(j).getKey() + " lie on one spot. Put one of them right.");
                }
            }
        }
    }

    private void piled(Piled piled) {
        refusals.said(piled.kind(), "a name for the kind, such as 'M6 x 25 cheese head'");
        if (piled.count() < 0 || piled.count() > MOST_PILED) {
            refusals.refuse("Of one kind there are 0 to " + MOST_PILED + " in the heap, not " + piled.count() + ".");
        }
        if (piled.thread().isEmpty() || piled.length().isEmpty()) {
            refusals.refuse("Write thread and length of the kind, such as M6 and 25 mm; with ± where it is not sure.");
        }
        fastener(piled.thread(), piled.length());
        if (!piled.strength().isEmpty() && StrengthClass.find(piled.strength()).isEmpty()) {
            refusals.refuse("'" + piled.strength()
                    + "' is no strength class. Write what is stamped on the head, such as 8.8, or leave it empty.");
        }
    }

    private void kept(WrenchKept kept) {
        if (kept.wrench().isBlank() || kept.wrench().length() > LONGEST_NAME) {
            refusals.refuse(
                    "Give the wrench a name of 1 to " + LONGEST_NAME + " letters, such as 'small click wrench'.");
        }
        OptionalDouble percent = kept.errorPercent();
        if (percent.isPresent() && !(percent.getAsDouble() > 0 && percent.getAsDouble() <= 50)) {
            refusals.refuse("By how much a wrench may err is more than 0 and at most 50 % of the reading.");
        }
    }

    private void chosen(WrenchChosen chosen) {
        if (build.told(WrenchKept.class, Fastening.WRENCHES).stream()
                .noneMatch(told -> told.fact().wrench().equals(chosen.wrench()))) {
            refusals.refuse("There is no torque wrench '" + chosen.wrench()
                    + "' in your list. Choose one of the list, or add it first.");
        }
        torque(chosen.setting());
        between("An adapter's length", chosen.adapterMm(), 0, 1000, "mm");
        between("An adapter's angle to the arm", chosen.adapterDeg(), -180, 180, "°");
        between("A wrench's arm", chosen.armMm(), 20, 2000, "mm");
    }

    private void between(String what, OptionalDouble said, int least, int most, String unit) {
        if (said.isPresent() && !(said.getAsDouble() >= least && said.getAsDouble() <= most)) {
            refusals.refuse(what + " is " + least + " to " + most + " " + unit + ".");
        }
    }

    private void hole(String joint, String hole) {
        Optional<Joint> known = build.structure().joint(joint);
        boolean mapped = build.told(JointMapped.class, joint).stream()
                .anyMatch(told -> told.fact().holes().containsKey(hole));
        if (known.isPresent() && known.get().hole(hole).isEmpty() && !mapped) {
            refusals.refuse("The " + known.get().name() + " has no hole '" + hole + "'. Choose one of its map.");
        }
    }

    private void fastener(String thread, String length) {
        thread(thread);
        length("The length", length);
    }

    private void thread(String written) {
        try {
            if (!written.isEmpty()) {
                ScrewThread.of(written);
            }
        } catch (UnknownFastener unknown) {
            refusals.refuse(unknown.sentence());
        }
    }

    /** A thread that the book names, if it is one: a book that names none is no reason to refuse what was done. */
    private static Optional<ScrewThread> readable(String written) {
        try {
            return Optional.of(ScrewThread.of(written));
        } catch (UnknownFastener unknown) {
            return Optional.empty();
        }
    }

    private void length(String what, String written) {
        if (written.isEmpty()) {
            return;
        }
        TypedSize typed = TypedSize.of(Unit.MM, written, 1);
        if (typed instanceof TypedSize.Refused refused) {
            refusals.refuse(what + ": " + refused.sentence());
        } else if (typed instanceof TypedSize.Read read && !(read.value() > 0)) {
            refusals.refuse(what + " is more than 0 mm, not '" + written + "'.");
        }
    }

    private Optional<Double> torque(String written) {
        if (written.isEmpty()) {
            return Optional.empty();
        }
        TypedSize typed = TypedSize.of(Unit.NEWTON_METRE, written, 1);
        if (typed instanceof TypedSize.Refused refused) {
            refusals.refuse("The torque: " + refused.sentence());
            return Optional.empty();
        }
        double nm = ((TypedSize.Read) typed).value();
        if (!(nm > 0)) {
            refusals.refuse("A torque is more than 0 N·m, not '" + written + "'.");
            return Optional.empty();
        }
        return Optional.of(nm);
    }

    /** No fastener can have had more than what twists off a plain shank of its size, made of the strongest class there is. */
    private void bearable(Tightened tightened, double nm) {
        build.structure()
                .joint(tightened.joint())
                .flatMap(joint -> joint.hole(tightened.hole()))
                .map(Hole::thread)
                .flatMap(FasteningRefusals::readable)
                .ifPresent(thread -> {
                    double most = twistsOffNm(thread.majorMm());
                    if (nm > most) {
                        refusals.refuse("A " + thread.designation() + " of the strongest class twists off at "
                                + Math.round(most) + " N·m; it can't have had '" + tightened.torque()
                                + "'. Look at figure and unit.");
                    }
                });
    }

    /** Torsion of a round bar at the shear strength of class 12.9: τ π d³ / 16, in N·m from mm and MPa. */
    private static double twistsOffNm(double diameterMm) {
        return StrengthClass.of("12.9").shearMpa() * Math.PI * Math.pow(diameterMm, 3) / 16 / 1000;
    }
}
