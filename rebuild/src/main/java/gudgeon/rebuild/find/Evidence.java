package gudgeon.rebuild.find;

import java.util.List;
import java.util.Map;

/**
 * Something that was felt, read or tried, and how well each suspect explains it.
 *
 * @param entries numbers of the journal's entries that tell it
 * @param said what it was, a sentence
 * @param logLikelihood natural logarithm of the probability, or of its density, with which a suspect brings it about, by the
 *     suspect's id; the same measure for all. A suspect left out is an error of the caller
 */
public record Evidence(List<Long> entries, String said, Map<String, Double> logLikelihood) {
    public Evidence {
        entries = List.copyOf(entries);
        logLikelihood = Map.copyOf(logLikelihood);
    }
}
