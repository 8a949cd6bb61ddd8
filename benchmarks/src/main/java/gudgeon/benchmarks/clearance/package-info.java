/** How quickly the gaps are found, beside a plain dense sampling of the same problem. */
@org.jspecify.annotations.NullMarked
package gudgeon.benchmarks.clearance;
