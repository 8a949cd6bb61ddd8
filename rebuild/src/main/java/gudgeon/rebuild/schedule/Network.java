package gudgeon.rebuild.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * Bench work of one person, what it waits for, and when it is done. Whenever the person is free and anything can be done, it is done,
 * what most time hangs on first: with one pair of hands and no time to set, no other way ends sooner.
 */
final class Network {
    /** What decides the end where it is neither a delivery nor a setting: the hours at the bench. */
    static final int THE_BENCH = -1;

    private static final int NOTHING = -1;
    private static final int MINUTES_A_DAY = 24 * 60;

    /**
     * A step or check to be done.
     *
     * @param id its id
     * @param minutes likely time at the bench
     * @param after the jobs, by their place in the list, that must be done and set before
     * @param awaits the deliveries, by their place in the list, that must have come before
     * @param setDays days it has to set before what stands on it
     */
    record Job(String id, double minutes, List<Integer> after, List<Integer> awaits, double setDays) {
        Job {
            after = List.copyOf(after);
            awaits = List.copyOf(awaits);
        }
    }

    /** How one course of events came out. */
    static final class Outcome {
        private final double[] free;
        private final double[] ends;
        private final double end;
        private final int decidedBy;

        private Outcome(double[] free, double[] ends, double end, int decidedBy) {
            this.free = free;
            this.ends = ends;
            this.end = end;
            this.decidedBy = decidedBy;
        }

        /** When a job could be begun, in days. */
        private double freeAt(int job) {
            return free[job];
        }

        /** When a job was done, in days. */
        double endOf(int job) {
            return ends[job];
        }

        /** When all of them were done and set, in days. */
        double end() {
            return end;
        }

        /** The delivery that the end hung on, or {@link #THE_BENCH}. */
        int decidedBy() {
            return decidedBy;
        }
    }

    private final List<Job> jobs;
    private final List<List<Integer>> behind = new ArrayList<>();
    /** The jobs that await each delivery. */
    private final Map<Integer, List<Integer>> awaiting = new HashMap<>();

    /** The time that hangs on each job, its own with it; only to choose by. */
    private final double[] tail;

    /**
     * @param jobs the jobs, each behind those that it comes after
     */
    Network(List<Job> jobs) {
        this.jobs = List.copyOf(jobs);
        jobs.forEach(job -> behind.add(new ArrayList<>()));
        for (int job = 0; job < jobs.size(); job++) {
            for (int first : jobs.get(job).after()) {
                behind.get(first).add(job);
            }
            for (int delivery : jobs.get(job).awaits()) {
                awaiting.computeIfAbsent(delivery, none -> new ArrayList<>()).add(job);
            }
        }
        tail = new double[jobs.size()];
        for (int job = jobs.size() - 1; job >= 0; job--) {
            double longest = behind.get(job).stream()
                    .mapToDouble(next -> tail[next])
                    .max()
                    .orElse(0);
            tail[job] = longest
                    + jobs.get(job).minutes()
                    + MINUTES_A_DAY * jobs.get(job).setDays();
        }
    }

    /**
     * Whether it came out the same had one delivery come on another day, later than it did: every job that awaits it had to wait
     * longer for something else, so that nobody would have noticed.
     */
    boolean isSame(Outcome outcome, int delivery, double later) {
        for (int job : awaiting.getOrDefault(delivery, List.of())) {
            if (outcome.freeAt(job) < later) {
                return false;
            }
        }
        return true;
    }

    /** How it comes out if a minute's work takes so many days, and the deliveries come at these days from now. */
    Outcome run(double daysAMinute, double[] arrivals) {
        return new Course(daysAMinute, arrivals).outcome();
    }

    /** One course of events. */
    private final class Course {
        private final double daysAMinute;
        /** When each job can be begun, as far as is known. */
        private final double[] free = new double[jobs.size()];
        /** What that hangs on: a delivery, or the setting of a job; neither where nothing had to be waited for. */
        private final int[] freedByDelivery = new int[jobs.size()];

        private final int[] freedBySetting = new int[jobs.size()];
        /** The job that kept the person busy until each was begun; none where the person waited. */
        private final int[] busyWith = new int[jobs.size()];

        private final int[] open = new int[jobs.size()];
        private final double[] ends = new double[jobs.size()];
        private final PriorityQueue<Integer> waiting =
                new PriorityQueue<>(Comparator.comparingDouble((Integer job) -> free[job]));
        private final PriorityQueue<Integer> ready = new PriorityQueue<>(
                Comparator.comparingDouble((Integer job) -> -tail[job]).thenComparing(Comparator.naturalOrder()));

        Course(double daysAMinute, double[] arrivals) {
            this.daysAMinute = daysAMinute;
            Arrays.fill(freedByDelivery, NOTHING);
            Arrays.fill(freedBySetting, NOTHING);
            for (int job = 0; job < jobs.size(); job++) {
                for (int delivery : jobs.get(job).awaits()) {
                    if (arrivals[delivery] > free[job]) {
                        free[job] = arrivals[delivery];
                        freedByDelivery[job] = delivery;
                    }
                }
                open[job] = jobs.get(job).after().size();
                if (open[job] == 0) {
                    waiting.add(job);
                }
            }
        }

        Outcome outcome() {
            double now = 0;
            int before = NOTHING;
            int last = NOTHING;
            double end = 0;
            while (!waiting.isEmpty() || !ready.isEmpty()) {
                while (!waiting.isEmpty() && free[waiting.element()] <= now) {
                    ready.add(waiting.remove());
                }
                boolean idle = ready.isEmpty();
                int job = idle ? waiting.remove() : ready.remove();
                busyWith[job] = idle ? NOTHING : before;
                now = Math.max(now, free[job]) + jobs.get(job).minutes() * daysAMinute;
                ends[job] = now;
                release(job);
                before = job;
                if (last == NOTHING || now + jobs.get(job).setDays() >= end) {
                    last = job;
                    end = now + jobs.get(job).setDays();
                }
            }
            return new Outcome(free, ends, end, decider(last));
        }

        private void release(int job) {
            double set = ends[job] + jobs.get(job).setDays();
            for (int next : behind.get(job)) {
                if (set > free[next]) {
                    free[next] = set;
                    freedByDelivery[next] = NOTHING;
                    freedBySetting[next] = job;
                }
                open[next]--;
                if (open[next] == 0) {
                    waiting.add(next);
                }
            }
        }

        /** From the end back through all that had to be just when it was, to what began it. */
        private int decider(int last) {
            int job = last;
            while (job != NOTHING) {
                if (busyWith[job] != NOTHING) {
                    job = busyWith[job];
                } else if (freedByDelivery[job] != NOTHING) {
                    return freedByDelivery[job];
                } else {
                    job = freedBySetting[job];
                }
            }
            return THE_BENCH;
        }
    }
}
