package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.WrenchRange;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Which of the person's wrenches is for which joint, and what to buy or borrow for those that none of them can do.
 *
 * @param wrenches the person's wrenches
 * @param jobs each torque of each joint that has one
 */
public record WrenchPlan(OwnWrenches wrenches, List<Job> jobs) {
    public WrenchPlan {
        jobs = List.copyOf(jobs);
    }

    /**
     * A torque that a joint is tightened to.
     *
     * @param joint the joint
     * @param wantedNm the torque, N·m
     * @param computed whether it is worked out and not the maker's
     * @param by the wrenches that can be trusted for it, the best first
     */
    public record Job(JointNow joint, double wantedNm, boolean computed, List<OwnWrench> by) {
        public Job {
            by = List.copyOf(by);
        }

        /** Which wrench to take, a sentence. */
        public String sentence() {
            String what = Sentence.capital(joint.book().name()) + ", " + WrittenTorque.newtonMetres(wantedNm)
                    + (computed ? " (worked out)" : "") + ": ";
            return by.isEmpty()
                    ? what + "none of your wrenches can be trusted for this."
                    : what + "the " + by.get(0).name() + ", set to " + by.get(0).in(wantedNm) + ".";
        }
    }

    /** That of a build. */
    public static WrenchPlan of(Build build) {
        OwnWrenches wrenches = OwnWrenches.of(build);
        List<Job> jobs = JointNow.all(build).stream()
                .flatMap(joint -> HoleTorque.all(joint).stream())
                .filter(torque -> torque.wantedNm().orElse(0) > 0)
                .map(torque -> job(wrenches, torque))
                .distinct()
                .toList();
        return new WrenchPlan(wrenches, jobs);
    }

    private static Job job(OwnWrenches wrenches, HoleTorque torque) {
        double wanted = torque.wantedNm().orElseThrow();
        return new Job(torque.joint(), wanted, torque.isComputed(), wrenches.trustedFor(wanted));
    }

    /** Those that no wrench can be trusted for. */
    public List<Job> unserved() {
        return jobs.stream().filter(job -> job.by().isEmpty()).toList();
    }

    /**
     * The wrench that would serve most of what is not served: one whose trusted range begins at one of these torques, for any other
     * could be slid up to it. Of several that serve as many, the smallest.
     */
    public Optional<WrenchRange> toHave() {
        TreeSet<Double> torques =
                new TreeSet<>(unserved().stream().map(Job::wantedNm).toList());
        return torques.stream()
                .map(least -> new WrenchRange(least, WrenchRange.mostFor(least)))
                .max(Comparator.comparingLong(this::serves)
                        .thenComparing(WrenchRange::mostNm, Comparator.reverseOrder()));
    }

    private long serves(WrenchRange range) {
        return unserved().stream().filter(job -> range.trusts(job.wantedNm())).count();
    }

    /** What to have for those that none can do, a sentence; empty when all are served. */
    public Optional<String> toHaveWords() {
        return toHave().map(range -> {
            double most = unserved().stream()
                    .mapToDouble(Job::wantedNm)
                    .filter(range::trusts)
                    .max()
                    .orElseThrow();
            return "Buy or borrow a wrench that reaches at least " + WrittenTorque.newtonMetres(most) + " and at most "
                    + WrittenTorque.newtonMetres(range.mostNm()) + ", with "
                    + WrittenTorque.newtonMetres(range.leastNm()) + " on its scale: it serves "
                    + Amount.of(serves(range), "of the torque", "of the torques") + " that none of yours can do.";
        });
    }

    /** All of it, a sentence each: joint by joint, what to have, and what can't be read. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>(wrenches.faults());
        jobs.stream().map(Job::sentence).distinct().forEach(sentences::add);
        toHaveWords().ifPresent(sentences::add);
        return sentences;
    }
}
