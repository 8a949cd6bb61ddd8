package gudgeon.store.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.store.shelf.ShelfFault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DevicesTest {
    private static final Instant NOW = Instant.parse("2026-05-02T09:00:00Z");

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("devices.json");
    }

    @Test
    void aRestartKeepsADeviceIn() {
        String token = Devices.in(folder).letIn(" Ann's phone ", NOW);
        assertThat(Devices.in(folder).showing(token, NOW.plusSeconds(60)))
                .hasValueSatisfying(device -> assertThat(device.name()).isEqualTo("Ann's phone"));
    }

    @Test
    void theFileDoesNotTellWhatADeviceShows() throws IOException {
        String token = Devices.in(folder).letIn("phone", NOW);
        String written = Files.readString(file());
        assertThat(written).contains("phone").doesNotContain(token);
        assertThat(Devices.in(folder).all().get(0).tokenHash()).matches("[0-9a-f]{64}");
        assertThat(Devices.in(folder).showing(Devices.in(folder).all().get(0).tokenHash(), NOW))
                .as("the hash itself opens nothing")
                .isEmpty();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-------");
    }

    @Test
    void aTokenHas256RandomBits() {
        Devices devices = Devices.in(folder);
        Set<String> tokens = new HashSet<>();
        for (int n = 0; n < 100; n++) {
            String token = devices.letIn("phone " + n, NOW);
            assertThat(Base64.getUrlDecoder().decode(token)).hasSize(32);
            tokens.add(token);
        }
        assertThat(tokens).hasSize(100);
    }

    @Test
    void whoIsPutOutStaysOut() {
        Devices devices = Devices.in(folder);
        String one = devices.letIn("one", NOW);
        String other = devices.letIn("other", NOW.plusSeconds(1));
        assertThat(devices.all()).extracting(LetIn::name).containsExactly("other", "one");
        assertThat(devices.putOut(devices.all().get(1).id())).isTrue();
        assertThat(devices.showing(one, NOW)).isEmpty();
        assertThat(devices.showing(other, NOW)).isPresent();
        assertThat(Devices.in(folder).showing(one, NOW)).isEmpty();
        assertThat(devices.putOut("nobody")).isFalse();
    }

    @Test
    void whoWasNotSeenForLongIsOut() {
        Devices devices = Devices.in(folder);
        String token = devices.letIn("phone", NOW);
        Instant later = NOW.plus(Devices.LONGEST_AWAY);
        assertThat(devices.showing(token, later)).as("seen on the last day").isPresent();
        assertThat(Devices.in(folder).showing(token, later.plus(Duration.ofDays(80))))
                .as("being seen was written down")
                .isPresent();
        assertThat(devices.showing(token, later.plus(Devices.LONGEST_AWAY).plusSeconds(1)))
                .isEmpty();
    }

    @Test
    void aNameIsOneThatCanBeToldApart() {
        Devices devices = Devices.in(folder);
        devices.letIn("Ann's phone", NOW);
        assertThat(devices.against("ann's PHONE "))
                .hasValueSatisfying(said -> assertThat(said).contains("is let in already"));
        assertThat(devices.against(" ")).isPresent();
        assertThat(devices.against("a\nb")).isPresent();
        assertThat(devices.against("x".repeat(41))).isPresent();
        assertThat(devices.against("Ann's tablet")).isEmpty();
    }

    @Test
    void aDamagedListIsSaidAndNobodyIsLetInByIt() throws IOException {
        Files.writeString(file(), "{\"devices\": [{\"id\": 1");
        assertThatThrownBy(() -> Devices.in(folder))
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining("devices.json")
                .hasMessageContaining("let the devices in anew");
    }
}
