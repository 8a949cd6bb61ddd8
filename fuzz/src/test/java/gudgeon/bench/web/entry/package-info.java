/** The forms of the pages under fuzzing. */
@org.jspecify.annotations.NullMarked
package gudgeon.bench.web.entry;
