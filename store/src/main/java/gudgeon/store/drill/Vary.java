package gudgeon.store.drill;

import java.util.List;
import java.util.Set;

/**
 * What may differ from variant to variant of a drill beyond names, devices, times and units.
 *
 * @param both sizes that vary alike in the mistake and in its twin
 * @param fault sizes of the mistake, every one of them within it
 * @param sound sizes of the twin, none of them a mistake
 * @param anyOrder numbers of entries of both journals that may be told in any order among themselves
 * @param asWritten fields whose very writing is the mistake, such as a torque in a wrong unit
 */
public record Vary(
        List<Span> both, List<Span> fault, List<Span> sound, List<List<Integer>> anyOrder, Set<String> asWritten) {
    /** Nothing but what varies of every drill. */
    static final Vary NOTHING = new Vary(List.of(), List.of(), List.of(), List.of(), Set.of());

    public Vary {
        both = List.copyOf(both);
        fault = List.copyOf(fault);
        sound = List.copyOf(sound);
        anyOrder = anyOrder.stream().map(List::copyOf).toList();
        asWritten = Set.copyOf(asWritten);
    }

    /**
     * How far a size may go.
     *
     * @param entry number of its entry
     * @param field which field, with a dot before the size's name inside it: {@code sizes.compression-height}
     * @param from the least
     * @param to the greatest
     */
    public record Span(int entry, String field, double from, double to) {}
}
