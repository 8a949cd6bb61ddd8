/** The command line under fuzzing. */
@org.jspecify.annotations.NullMarked
package gudgeon.bench.cli;
