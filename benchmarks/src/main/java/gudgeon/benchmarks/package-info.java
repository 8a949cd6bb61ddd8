/** Speed, as ratios within one run. */
@org.jspecify.annotations.NullMarked
package gudgeon.benchmarks;
