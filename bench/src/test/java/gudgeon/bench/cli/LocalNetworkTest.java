package gudgeon.bench.cli;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class LocalNetworkTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "--lan --address ::1|'::1' is an address of IPv6; the pages are served at those of IPv4 only",
                "--lan --address 203.0.113.7|'203.0.113.7' is no address of this machine; it has",
                "--address 127.0.0.1|--tls and --address go with --lan"
            })
    void whatCanNotBeServedAtIsRefusedWithItsReason(String options, String sentence) {
        LocalNetwork network = CommandLine.populateCommand(new LocalNetwork(), options.split(" ", -1));
        assertThatThrownBy(() -> network.in(folder))
                .isInstanceOf(Unusable.class)
                .hasMessageContaining(sentence);
    }
}
