/** Speed of the pages, beside a bare server of the same framework. */
@org.jspecify.annotations.NullMarked
package gudgeon.benchmarks.web;
