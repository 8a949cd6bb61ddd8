/** Tests of the command line. */
@org.jspecify.annotations.NullMarked
package gudgeon.bench.cli;
