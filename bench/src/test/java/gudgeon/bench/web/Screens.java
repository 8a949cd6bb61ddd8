package gudgeon.bench.web;

import gudgeon.bench.LongRun;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** The screens on which pages are tried: fewer in every build, all in the long run. */
final class Screens {
    private Screens() {}

    /** Of a whole run through the pages: the phone in every build. */
    static Stream<Arguments> ofARun() {
        return Stream.of(Arguments.of(360, 740, "dark"), Arguments.of(1366, 768, "light"))
                .limit(LongRun.of(1, 2));
    }

    /** Of a page by itself: in every build each width once and each light once, since colours do not go by width nor order by light. */
    static Stream<Arguments> ofAPage() {
        return Stream.of(
                        Arguments.of(360, 740, "dark"),
                        Arguments.of(1366, 768, "light"),
                        Arguments.of(360, 740, "light"),
                        Arguments.of(1366, 768, "dark"))
                .limit(LongRun.of(2, 4));
    }
}
