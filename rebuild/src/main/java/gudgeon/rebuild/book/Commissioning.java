package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;

/**
 * What the book says of putting the engine into service.
 *
 * @param start the first start
 * @param fluids what is filled in
 * @param ownScheme the book's own scheme of running in, if it has one
 */
public record Commissioning(FirstStart start, List<Fluid> fluids, Optional<RunningIn> ownScheme) {
    /** That of a book that says nothing of it. */
    public static final Commissioning NOT_SAID = new Commissioning(FirstStart.NOT_SAID, List.of(), Optional.empty());

    public Commissioning {
        fluids = List.copyOf(fluids);
    }

    /** The fluid of that id. */
    public Optional<Fluid> fluid(String id) {
        return fluids.stream().filter(fluid -> fluid.id().equals(id)).findFirst();
    }
}
