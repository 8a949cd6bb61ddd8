package gudgeon.rebuild.fasten;

import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * All that is to be known at the wall when a build's joints are tightened.
 *
 * @param joints joint by joint, in the book's order
 * @param wrenches which wrench is for which joint, and what to have for the rest
 */
public record TorqueSheet(List<OfJoint> joints, WrenchPlan wrenches) {
    public TorqueSheet {
        joints = List.copyOf(joints);
    }

    /** That of a build. */
    public static TorqueSheet of(Build build) {
        WrenchPlan plan = WrenchPlan.of(build);
        return new TorqueSheet(
                JointNow.all(build).stream()
                        .map(joint -> OfJoint.of(joint, plan.wrenches()))
                        .toList(),
                plan);
    }

    /** What goes before every joint, a sentence each. */
    public List<String> opening() {
        return List.of(
                "The maker's manual comes first. A figure marked as worked out is for want of the maker's.",
                "Threads and seats clean; every fastener in by hand first. A wrench is pulled slowly, by the middle of its"
                        + " grip, until it says so, and never twice.",
                "Eyes guarded, and the work held so that nothing slips when a fastener lets go.");
    }

    /** What is to be had or can't be read of the wrenches, a sentence each. */
    public List<String> closing() {
        return Stream.concat(wrenches.wrenches().faults().stream(), wrenches.toHaveWords().stream())
                .toList();
    }

    /**
     * A joint on the sheet.
     *
     * @param tightness its order and passes
     * @param rows its holes, the first to be tightened first
     */
    public record OfJoint(Tightness tightness, List<Row> rows) {
        public OfJoint {
            rows = List.copyOf(rows);
        }

        static OfJoint of(JointNow joint, OwnWrenches wrenches) {
            Tightness tightness = Tightness.of(joint);
            List<Row> rows = new ArrayList<>();
            for (CardHole hole : Card.of(joint).holes()) {
                rows.add(new Row(hole, HoleTorque.of(joint, hole.hole()), wrenches));
            }
            return new OfJoint(tightness, rows);
        }

        /** Its name, with a capital. */
        public String title() {
            return Sentence.capital(joint().book().name());
        }

        private JointNow joint() {
            return tightness.joint();
        }

        /** What holds for all of its holes, a sentence each. */
        public List<String> sentences() {
            List<String> sentences = new ArrayList<>();
            sentences.add("Threads: " + lubricated() + ".");
            sentences.add(rows.isEmpty() ? bare() : tightness.order().why());
            if (joint().book().warps()) {
                sentences.add("It is apt to warp: loosened in the order backwards, a little at a time.");
            }
            rows.stream()
                    .flatMap(row -> row.torque().sentences().stream().skip(1))
                    .distinct()
                    .forEach(sentences::add);
            return sentences;
        }

        private String lubricated() {
            Optional<Lubrication> now = joint().lubricated();
            return now.or(() -> joint().book().lubricated())
                    .map(how -> how.words() + (now.isPresent() ? ", as the journal says" : ", as the book has it"))
                    .orElse("nobody said what is on them");
        }

        private String bare() {
            String torque = joint().book()
                    .torque()
                    .map(size -> "Torque " + WrittenTorque.newtonMetres(size.value()) + ", the maker's. ")
                    .orElse("No torque in the book: the maker's manual has it. ");
            return torque + Sentence.of(joint().book().order());
        }

        /** When it is to be tightened again; empty where it is not. */
        public Optional<String> again() {
            return Optional.of(joint().book().again())
                    .filter(when -> !when.isEmpty())
                    .map(when -> "Tighten again " + Sentence.ended(when));
        }
    }

    /**
     * A hole on the sheet.
     *
     * @param hole the hole with its turn
     * @param torque how tight
     * @param wrenches the person's wrenches
     */
    public record Row(CardHole hole, HoleTorque torque, OwnWrenches wrenches) {
        /** How tight, and who says so. */
        public String tight() {
            OptionalDouble wanted = torque.wantedNm();
            return wanted.isEmpty()
                    ? "not known"
                    : WrittenTorque.newtonMetres(wanted.getAsDouble())
                            + (torque.isComputed() ? ", worked out" : ", the maker's");
        }

        /** What to set which wrench to. */
        public String setting() {
            OptionalDouble wanted = torque.wantedNm();
            if (wanted.isEmpty() || wrenches.all().isEmpty()) {
                return "";
            }
            return wrenches.trustedFor(wanted.getAsDouble()).stream()
                    .findFirst()
                    .map(wrench -> wrench.in(wanted.getAsDouble()) + " on the " + wrench.name())
                    .orElse("none of yours can be trusted for it");
        }

        /** Whether it has had a pass. */
        public boolean had(Pass pass) {
            return pass.had().contains(hole.hole().id());
        }
    }
}
