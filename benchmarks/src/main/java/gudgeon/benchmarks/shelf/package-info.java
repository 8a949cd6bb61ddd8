/** Speed of what is kept on disk, beside doing it bare. */
@org.jspecify.annotations.NullMarked
package gudgeon.benchmarks.shelf;
