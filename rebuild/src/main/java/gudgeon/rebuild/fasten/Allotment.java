package gudgeon.rebuild.fasten;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Things of several kinds allotted to places at the least cost: a minimum-cost flow by successive shortest paths (Ahuja, Magnanti
 * and Orlin, Network Flows, 1993, chapter 9), exact. The paths run over the kinds alone, which are few, however many places there
 * are. A place that no kind serves is left empty.
 *
 * @param kinds the kind at each place, {@link #EMPTY} where none is left for it
 * @param alternatives for each place the kinds, or the number of kinds for "left empty", that it has in other allotments of the
 *     same cost; none where it is forced
 * @param cost the sum of the costs
 */
record Allotment(List<Integer> kinds, List<BitSet> alternatives, long cost) {
    /** No kind. */
    static final int EMPTY = -1;

    /** The cost at which a kind can't serve a place. */
    static final int UNFIT = Integer.MAX_VALUE;

    Allotment {
        kinds = List.copyOf(kinds);
        alternatives = List.copyOf(alternatives);
    }

    /**
     * The allotment of the least cost.
     *
     * @param cost of a kind at a place, {@code cost[place][kind]}: 0 or more, or {@link #UNFIT}
     * @param counts how many of each kind there are, 0 or more
     * @param empty for each place what it costs to leave it empty, 0 or more
     */
    static Allotment of(int[][] cost, int[] counts, int[] empty) {
        return new Search(cost, counts, empty).allotment();
    }

    /** The search; kind number {@code none} stands for "left empty" and is never used up. */
    private static final class Search {
        private static final long FAR = Long.MAX_VALUE / 4;

        private final int[][] cost;
        private final int[] empty;
        private final int none;
        private final int[] spare;
        private final int[] at;
        /** For each pair of kinds the least that moving one place from the first to the second costs, and that place. */
        private final long[][] move;

        private final int[][] mover;

        Search(int[][] cost, int[] counts, int[] empty) {
            none = counts.length;
            this.cost = cost;
            this.empty = empty;
            spare = Arrays.copyOf(counts, none + 1);
            spare[none] = cost.length;
            at = new int[cost.length];
            Arrays.fill(at, EMPTY);
            move = new long[none + 1][none + 1];
            mover = new int[none + 1][none + 1];
            for (long[] row : move) {
                Arrays.fill(row, FAR);
            }
        }

        Allotment allotment() {
            for (int place = 0; place < cost.length; place++) {
                serve(place);
            }
            long sum = 0;
            List<Integer> kinds = new ArrayList<>();
            for (int place = 0; place < at.length; place++) {
                sum += cost(place, at[place]);
                kinds.add(at[place] == none ? EMPTY : at[place]);
            }
            return new Allotment(kinds, alternatives(), sum);
        }

        private long cost(int place, int kind) {
            if (kind == none) {
                return empty[place];
            }
            return cost[place][kind] == UNFIT ? FAR : cost[place][kind];
        }

        /** Gives a place a kind by the cheapest chain of moves that ends at a kind of which one is left. */
        private void serve(int place) {
            long[] far = new long[none + 1];
            int[] from = new int[none + 1];
            Arrays.fill(from, EMPTY);
            for (int kind = 0; kind <= none; kind++) {
                far[kind] = cost(place, kind);
            }
            relax(far, from);
            int end = none;
            for (int kind = 0; kind <= none; kind++) {
                if (spare[kind] > 0 && far[kind] < far[end]) {
                    end = kind;
                }
            }
            spare[end]--;
            BitSet touched = new BitSet();
            for (int kind = end; from[kind] != EMPTY; kind = from[kind]) {
                at[mover[from[kind]][kind]] = kind;
                touched.set(kind);
                end = from[kind];
            }
            at[place] = end;
            touched.set(end);
            touched.stream().forEach(this::findMoves);
        }

        /** Bellman and Ford's shortest paths over the kinds. */
        private void relax(long[] far, int[] from) {
            for (boolean shorter = true; shorter; ) {
                shorter = false;
                for (int kind = 0; kind <= none; kind++) {
                    for (int next = 0; far[kind] < FAR && next <= none; next++) {
                        if (move[kind][next] < FAR && far[kind] + move[kind][next] < far[next]) {
                            far[next] = far[kind] + move[kind][next];
                            from[next] = kind;
                            shorter = true;
                        }
                    }
                }
            }
        }

        private void findMoves(int kind) {
            Arrays.fill(move[kind], FAR);
            for (int place = 0; place < at.length; place++) {
                if (at[place] == kind) {
                    for (int next = 0; next <= none; next++) {
                        long more = cost(place, next) >= FAR ? FAR : cost(place, next) - cost(place, kind);
                        if (next != kind && more < move[kind][next]) {
                            move[kind][next] = more;
                            mover[kind][next] = place;
                        }
                    }
                }
            }
        }

        /**
         * A place may have another kind at the same cost if moving it there lies on a round of moves that costs nothing. By the
         * shortest distances as prices, such a round is made of moves that are exactly paid for.
         */
        private List<BitSet> alternatives() {
            long[] price = new long[none + 2];
            BitSet[] paid = paidMoves(price);
            BitSet[] reach = new BitSet[none + 2];
            for (int kind = 0; kind < reach.length; kind++) {
                reach[kind] = reached(paid, kind);
            }
            List<BitSet> all = new ArrayList<>();
            for (int place = 0; place < at.length; place++) {
                BitSet others = new BitSet();
                int kind = at[place];
                for (int next = 0; next <= none; next++) {
                    if (next != kind
                            && cost(place, next) < FAR
                            && price[kind] + cost(place, next) - cost(place, kind) == price[next]
                            && reach[next].get(kind)) {
                        others.set(next);
                    }
                }
                all.add(others);
            }
            return all;
        }

        /** The moves that are exactly paid for; the last node is the heap, to which and from which one may go back for nothing. */
        private BitSet[] paidMoves(long[] price) {
            int heap = none + 1;
            long[][] all = new long[none + 2][none + 2];
            int[] used = new int[none + 1];
            Arrays.stream(at).forEach(kind -> used[kind]++);
            for (int kind = 0; kind <= none; kind++) {
                all[kind] = Arrays.copyOf(move[kind], none + 2);
                all[kind][heap] = spare[kind] > 0 ? 0 : FAR;
                all[heap][kind] = used[kind] > 0 ? 0 : FAR;
            }
            all[heap][heap] = FAR;
            for (boolean shorter = true; shorter; ) {
                shorter = false;
                for (int i = 0; i < all.length; i++) {
                    for (int j = 0; j < all.length; j++) {
                        if (all[i][j] < FAR && price[i] + all[i][j] < price[j]) {
                            price[j] = price[i] + all[i][j];
                            shorter = true;
                        }
                    }
                }
            }
            BitSet[] paid = new BitSet[all.length];
            for (int i = 0; i < all.length; i++) {
                paid[i] = new BitSet();
                for (int j = 0; j < all.length; j++) {
                    paid[i].set(j, all[i][j] < FAR && price[i] + all[i][j] == price[j]);
                }
            }
            return paid;
        }

        private static BitSet reached(BitSet[] paid, int from) {
            BitSet reached = new BitSet();
            Deque<Integer> open = new ArrayDeque<>(List.of(from));
            reached.set(from);
            while (!open.isEmpty()) {
                BitSet next = (BitSet) paid[open.remove()].clone();
                next.andNot(reached);
                reached.or(next);
                next.stream().forEach(open::add);
            }
            return reached;
        }
    }
}
