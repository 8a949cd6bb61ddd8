/** Speed of what a rebuild is worked out from: folding, alarms, plan, order, undoing. */
@org.jspecify.annotations.NullMarked
package gudgeon.benchmarks.rebuild;
