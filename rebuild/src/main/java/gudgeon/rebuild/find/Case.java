package gudgeon.rebuild.find;

import java.util.List;
import java.util.Map;

/**
 * All that is known of one trouble, before it is weighed.
 *
 * @param suspects who may have done it, one or more, of which at least one has odds above 0
 * @param evidence what was seen; each piece independent of the others once the suspect is given
 * @param tests tests that can still be made
 * @param explains how well a suspect explains what was seen, by its id; sentences
 * @param assumptions what was taken for granted, each with its source or that it has none; sentences
 */
public record Case(
        List<Suspect> suspects,
        List<Evidence> evidence,
        List<Test> tests,
        Map<String, List<String>> explains,
        List<String> assumptions) {
    public Case {
        suspects = List.copyOf(suspects);
        evidence = List.copyOf(evidence);
        tests = List.copyOf(tests);
        explains = Map.copyOf(explains);
        assumptions = List.copyOf(assumptions);
    }
}
