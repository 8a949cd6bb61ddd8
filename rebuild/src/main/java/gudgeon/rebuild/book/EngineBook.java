package gudgeon.rebuild.book;

import java.util.Optional;

/**
 * All that is true of one type of engine.
 *
 * @param engine which engine
 * @param geometry the figures from which a fit can be tried; an archetype has none
 * @param structure how it is put together and proved
 * @param ignition the spark as the book wants it, if it says so
 * @param commissioning what it says of putting the engine into service
 */
public record EngineBook(
        Engine engine,
        Optional<Geometry> geometry,
        Structure structure,
        Optional<Ignition> ignition,
        Commissioning commissioning) {
    /** A book that says nothing of the spark and of putting into service. */
    public EngineBook(Engine engine, Optional<Geometry> geometry, Structure structure) {
        this(engine, geometry, structure, Optional.empty(), Commissioning.NOT_SAID);
    }

    /** How it is run in: the book's own scheme, else common practice. */
    public RunningIn runningIn() {
        return commissioning.ownScheme().orElseGet(() -> CommonRunningIn.of(structure, commissioning));
    }
}
