/** Proof that labels lie where the sheet has them, and that their codes can be read. */
@org.jspecify.annotations.NullMarked
package gudgeon.bench.print.label;
