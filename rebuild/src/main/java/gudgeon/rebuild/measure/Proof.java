package gudgeon.rebuild.measure;

import java.util.List;

/**
 * What would prove an unproven size.
 *
 * @param instruments what to read with, the person's own; empty where one has to be borrowed
 * @param outcome what would then be proved, at the value read now
 * @param sentence what to do
 */
public record Proof(List<String> instruments, Outcome outcome, String sentence) {
    public Proof {
        instruments = List.copyOf(instruments);
    }
}
