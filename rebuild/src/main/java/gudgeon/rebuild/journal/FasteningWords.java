package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;
import static gudgeon.rebuild.journal.Naming.with;

import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Loosened;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.Piled;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WitnessMarked;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import gudgeon.rebuild.sentence.Amount;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What an entry about fasteners says. */
record FasteningWords(Naming naming) {
    String sentence(Fastening fact) {
        if (fact instanceof Fastening.OfJoint ofJoint) {
            return ofJoint(ofJoint, naming.name(ofJoint.joint()));
        }
        if (fact instanceof Piled piled) {
            return "In the heap: " + piled.count() + " of '" + piled.kind() + "'"
                    + with(", ", fastener(piled.thread(), piled.length(), piled.head()))
                    + with(", class ", piled.strength())
                    + "." + and(piled.remark());
        }
        WrenchKept kept = (WrenchKept) fact;
        return "Torque wrench '" + kept.wrench() + "'" + with(": ", kept.range()) + with(", in steps of ", kept.step())
                + number(", may err by ", kept.errorPercent(), " % of the reading") + "." + and(kept.remark());
    }

    private String ofJoint(Fastening.OfJoint fact, String joint) {
        if (fact instanceof FastenerOut out) {
            return "Out of " + hole(joint, out.hole()) + ": " + fastener(out.thread(), out.length(), out.head()) + "."
                    + and(out.remark());
        }
        if (fact instanceof HoleGiven given) {
            return "For " + hole(joint, given.hole()) + ": " + fastener(given.thread(), given.length(), given.head())
                    + (given.kind().isEmpty() ? "" : " ('" + given.kind() + "')") + "." + and(given.remark());
        }
        if (fact instanceof Tightened tightened) {
            return "Tightened, pass " + tightened.pass() + ": " + hole(joint, tightened.hole())
                    + with(" to ", tightened.torque()) + with(" with ", tightened.wrench()) + "."
                    + and(tightened.remark());
        }
        if (fact instanceof WrenchChosen chosen) {
            return "For " + joint + " the wrench '" + chosen.wrench() + "'" + with(" set to ", chosen.setting())
                    + number(", with an adapter of ", chosen.adapterMm(), " mm")
                    + number(" at ", chosen.adapterDeg(), "°")
                    + number(", its arm ", chosen.armMm(), " mm") + "." + and(chosen.remark());
        }
        return ofWhole(fact, joint);
    }

    private String ofWhole(Fastening.OfJoint fact, String joint) {
        if (fact instanceof JointMapped mapped) {
            return "Map of " + joint + ": " + Amount.of(mapped.holes().size(), "hole") + with(", ", mapped.how()) + ".";
        }
        if (fact instanceof HoleMeasured measured) {
            String what = Stream.of(
                            with("thread ", measured.thread()),
                            with("clamps ", measured.stack()),
                            with("thread usable for ", measured.depth()),
                            with("cut in ", measured.into()))
                    .filter(text -> !text.isEmpty())
                    .collect(Collectors.joining(", "));
            return "Measured at " + hole(joint, measured.hole()) + ": " + what + ".";
        }
        if (fact instanceof Lubricated lubricated) {
            return "The threads of " + joint + " are " + lubricated.how().words() + ".";
        }
        if (fact instanceof Loosened loosened) {
            return "Loosened: " + joint + "." + and(loosened.why());
        }
        if (fact instanceof WitnessMarked marked) {
            return "Marked across, so that a turn shows: " + joint
                    + (marked.holes().isEmpty() ? "" : ", " + holes(marked.holes())) + ".";
        }
        TightenedAgain again = (TightenedAgain) fact;
        return "Tightened again: " + joint + with(" to ", again.torque()) + "." + and(again.remark());
    }

    private static String hole(String joint, String hole) {
        return joint + ", hole " + hole;
    }

    private static String holes(List<String> holes) {
        return (holes.size() == 1 ? "hole " : "holes ") + String.join(", ", holes);
    }

    private static String fastener(String thread, String length, String head) {
        return Stream.of(thread, length, head).filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
    }

    private static String number(String before, OptionalDouble value, String after) {
        return value.isEmpty()
                ? ""
                : before
                        + BigDecimal.valueOf(value.getAsDouble())
                                .stripTrailingZeros()
                                .toPlainString()
                        + after;
    }
}
