/** A package that looks up, on purpose. */
@org.jspecify.annotations.NullMarked
package gudgeon.mechanics.upward;
