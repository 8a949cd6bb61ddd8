package gudgeon.rebuild.book;

import java.util.Optional;

/**
 * All that is true of one type of engine.
 *
 * @param engine which engine
 * @param geometry the figures from which a fit can be tried; an archetype has none
 * @param structure how it is put together and proved
 */
public record EngineBook(Engine engine, Optional<Geometry> geometry, Structure structure) {}
