package gudgeon.bench.cli;

import gudgeon.bench.web.Bench;
import gudgeon.bench.web.device.EntryCode;
import gudgeon.bench.web.device.EntryCodes;
import gudgeon.bench.web.device.Network;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.store.certificate.WorkshopCertificate;
import gudgeon.store.device.Devices;
import java.net.InetAddress;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Whether the pages are served on the workshop's network too, and how. */
final class LocalNetwork {
    @Option(
            names = "--lan",
            description =
                    "serves phones and tablets on the local network too; each is let in by a code that is shown here")
    private boolean lan;

    @Option(
            names = "--tls",
            description = "encrypts what goes over the network, with a certificate of the workshop's own")
    private boolean tls;

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            description = "this machine's address to serve at; may be given again; without it, all on private networks")
    private List<String> named = List.of();

    /**
     * The network as asked for; empty without {@code --lan}.
     *
     * @throws Unusable if what is asked for can't be
     */
    Optional<Network> in(Path dataFolder) {
        if (!lan) {
            if (tls || !named.isEmpty()) {
                throw new Unusable("--tls and --address go with --lan: without it, nothing leaves this machine.");
            }
            return Optional.empty();
        }
        List<InetAddress> addresses = addresses();
        Instant now = Instant.now();
        return Optional.of(new Network(
                addresses,
                Devices.in(dataFolder),
                new EntryCodes(Clock.systemUTC()),
                tls ? Optional.of(WorkshopCertificate.in(dataFolder, addresses, now)) : Optional.empty()));
    }

    private List<InetAddress> addresses() {
        List<InetAddress> own = Network.ownAddresses();
        List<InetAddress> addresses = named.isEmpty()
                ? Network.privateAddresses()
                : named.stream().map(text -> address(text, own)).toList();
        if (addresses.isEmpty()) {
            throw new Unusable("This machine has no address on a private network. Connect it to the workshop's network,"
                    + " or name an address of its own with --address; it has " + words(own) + ".");
        }
        boolean certifiable = addresses.stream().allMatch(one -> one.isSiteLocalAddress() || one.isLoopbackAddress());
        if (tls && !certifiable) {
            throw new Unusable("The workshop's certificate speaks for private networks only (10.x.x.x, 172.16.x.x to"
                    + " 172.31.x.x, 192.168.x.x), so that it is of no use elsewhere; leave out --tls or --address.");
        }
        return addresses;
    }

    private static InetAddress address(String text, List<InetAddress> own) {
        return own.stream()
                .filter(one -> one.getHostAddress().equals(text.strip()))
                .findFirst()
                .orElseThrow(() -> new Unusable(
                        text.contains(":")
                                ? "'" + text
                                        + "' is an address of IPv6; the pages are served at those of IPv4 only, of which this"
                                        + " machine has " + words(own) + "."
                                : "'" + text + "' is no address of this machine; it has " + words(own) + "."));
    }

    private static String words(List<InetAddress> addresses) {
        return Sentence.list(addresses.stream().map(InetAddress::getHostAddress).toList());
    }

    /** What the person is told at the start: where the pages are on the network, and a first code. */
    static List<String> sentences(Network network, Bench bench) {
        EntryCode code = network.codes().issue();
        List<String> sentences = new ArrayList<>();
        sentences.add("On the workshop's network it is at "
                + Sentence.list(
                        bench.addressesForOthers().stream().map(URI::toString).toList())
                + ".");
        sentences.add("A device is let in by the code " + code.shown() + " until "
                + DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH)
                        .format(code.until().atZone(ZoneId.systemDefault()))
                + "; for another, and to put devices out, open "
                + bench.address().resolve("devices") + ".");
        sentences.add(network.certificate()
                .map(certificate ->
                        "What goes between them is encrypted. The workshop's certificate has the fingerprint "
                                + certificate.fingerprint() + ".")
                .orElse("What goes between them is not encrypted; --tls encrypts it."));
        return sentences;
    }
}
