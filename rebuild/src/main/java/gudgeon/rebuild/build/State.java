package gudgeon.rebuild.build;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Origin;
import java.util.Map;
import java.util.Optional;
import org.pcollections.HashTreePMap;
import org.pcollections.HashTreePSet;
import org.pcollections.PMap;
import org.pcollections.PSet;
import org.pcollections.PVector;
import org.pcollections.TreePVector;

/** What a fold has come to; persistent collections, so that each entry costs little and the state before it stays. */
record State(
        PVector<Entry> entries,
        PSet<String> keys,
        PMap<String, Optional<Fact>> corrected,
        PVector<Long> unknown,
        PVector<Clash> clashes,
        Optional<Started> started,
        Standing standing,
        PMap<String, PVector<Part>> parts,
        PMap<String, Map<String, String>> sizes,
        PMap<String, Long> faults,
        Optional<Long> tight,
        PMap<Origin, Double> chances,
        long minutes,
        PMap<String, PVector<Long>> about) {
    static final State NOTHING_YET = new State(
            TreePVector.empty(),
            HashTreePSet.empty(),
            HashTreePMap.empty(),
            TreePVector.empty(),
            TreePVector.empty(),
            Optional.empty(),
            Standing.NOTHING_YET,
            HashTreePMap.empty(),
            HashTreePMap.empty(),
            HashTreePMap.empty(),
            Optional.empty(),
            HashTreePMap.empty(),
            0,
            HashTreePMap.empty());
}
