/** Proof that paper is true. */
@org.jspecify.annotations.NullMarked
package gudgeon.bench.print.fasten;
