package gudgeon.bench.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;

/**
 * What a command said at the terminal.
 *
 * @param code its exit code
 * @param out what it printed
 * @param err what it complained of
 */
record Terminal(int code, String out, String err) {
    /** Runs a command; whatever was typed, it never ends in a stack trace. */
    static Terminal run(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] typed = Stream.of(words).map(Object::toString).toArray(String[]::new);
        int code = Gudgeon.run(new PrintWriter(out, true), new PrintWriter(err, true), typed);
        assertThat(out + "" + err).doesNotContain("\tat ").doesNotContain("Exception");
        return new Terminal(code, out.toString(), err.toString());
    }
}
