/** Proof that bags tell what lies in them. */
@org.jspecify.annotations.NullMarked
package gudgeon.rebuild.bag;
