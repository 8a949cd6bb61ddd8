package gudgeon.rebuild.book;

/**
 * Which engine the book is of.
 *
 * @param name the engine's name
 * @param maker its maker, may be empty
 * @param note the writer's note, may be empty
 */
public record Engine(String name, String maker, String note) {}
