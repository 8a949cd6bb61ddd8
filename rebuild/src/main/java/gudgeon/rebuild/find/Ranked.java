package gudgeon.rebuild.find;

import java.util.List;

/**
 * A suspect in its rank.
 *
 * @param suspect the suspect
 * @param before its chance before anything was seen, from 0 to 1
 * @param chance its chance after all that was seen, from 0 to 1
 * @param explains how well it explains what was seen, each a sentence
 */
public record Ranked(Suspect suspect, double before, double chance, List<String> explains) {
    public Ranked {
        explains = List.copyOf(explains);
    }
}
