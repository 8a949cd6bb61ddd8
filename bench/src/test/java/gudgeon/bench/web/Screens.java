package gudgeon.bench.web;

import gudgeon.bench.LongRun;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** The screens that a whole run through the pages is made on: the phone in every build, the laptop too in the long run. */
final class Screens {
    private Screens() {}

    static Stream<Arguments> ofARun() {
        return Stream.of(Arguments.of(360, 740, "dark"), Arguments.of(1366, 768, "light"))
                .limit(LongRun.of(1, 2));
    }
}
