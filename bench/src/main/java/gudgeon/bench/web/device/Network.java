package gudgeon.bench.web.device;

import gudgeon.store.certificate.WorkshopCertificate;
import gudgeon.store.device.Devices;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The workshop's network, where the pages are to be served there too.
 *
 * @param addresses this machine's addresses on it
 * @param devices which devices are let in
 * @param codes what lets another in
 * @param certificate with it, all is encrypted; without, nothing is
 */
public record Network(
        List<InetAddress> addresses, Devices devices, EntryCodes codes, Optional<WorkshopCertificate> certificate) {
    public Network {
        addresses = List.copyOf(addresses);
    }

    /** This machine's addresses on private networks (RFC 1918), which no one reaches from outside; those are served unless named. */
    public static List<InetAddress> privateAddresses() {
        return ownAddresses().stream().filter(InetAddress::isSiteLocalAddress).toList();
    }

    /** All IPv4 addresses of this machine. */
    public static List<InetAddress> ownAddresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(Network::isUp)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(Inet4Address.class::isInstance)
                    .sorted(Comparator.comparing(InetAddress::getHostAddress))
                    .toList();
        } catch (SocketException none) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface one) {
        try {
            return one.isUp();
        } catch (SocketException gone) {
            return false;
        }
    }

    /** The protocol's name in an address. */
    public String scheme() {
        return certificate.isPresent() ? "https" : "http";
    }

    Stream<String> hosts() {
        return addresses.stream().map(InetAddress::getHostAddress);
    }
}
