package gudgeon.rebuild.build;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Corrected;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which entries of a journal were put right by later ones. */
final class Corrections {
    private Corrections() {}

    /**
     * What is true in place of each corrected entry, by its key; empty where nothing is. A correction counts unless it was corrected
     * itself; of several of one entry the last counts. It can only be of an entry before it.
     */
    static Map<String, Optional<Fact>> of(List<Entry> entries) {
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            first.putIfAbsent(entries.get(i).key(), i);
        }
        Map<String, Optional<Fact>> corrections = new HashMap<>();
        // from the last backwards, so that whether a correction counts is known before it is looked at
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            int at = i;
            if (first.getOrDefault(entry.key(), at) == at) {
                corrections
                        .getOrDefault(entry.key(), Optional.of(entry.fact()))
                        .filter(Corrected.class::isInstance)
                        .map(Corrected.class::cast)
                        .filter(correction -> first.getOrDefault(correction.entry(), at) < at)
                        .ifPresent(correction -> corrections.putIfAbsent(correction.entry(), correction.instead()));
            }
        }
        return corrections;
    }
}
