package gudgeon.bench.web;

import gudgeon.bench.web.device.EntryCodes;
import gudgeon.bench.web.device.Network;
import gudgeon.store.certificate.WorkshopCertificate;
import gudgeon.store.device.Devices;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** A workshop whose pages are on a network too: at an address of this machine that is not the one on which the laptop finds them. */
final class Elsewhere implements AutoCloseable {
    final Shelf shelf;
    final Devices devices;
    final EntryCodes codes;
    final Bench bench;

    private Elsewhere(Shelf shelf, Devices devices, EntryCodes codes, Bench bench) {
        this.shelf = shelf;
        this.devices = devices;
        this.codes = codes;
        this.bench = bench;
    }

    static Elsewhere open(Path folder, Clock clock) {
        return open(folder, clock, outer(), Optional.empty(), Rates.USUAL);
    }

    static Elsewhere open(
            Path folder, Clock clock, InetAddress at, Optional<WorkshopCertificate> certificate, Rates rates) {
        Shelf shelf = Shelf.open(folder);
        Devices devices = Devices.in(folder);
        EntryCodes codes = new EntryCodes(clock);
        Network network = new Network(List.of(at), devices, codes, certificate);
        return new Elsewhere(
                shelf,
                devices,
                codes,
                Bench.start(shelf, new Photos(folder), List.of(), 0, Optional.of(network), rates));
    }

    /** This machine's address on a network; where it is on none, a second one of the loopback's. */
    static InetAddress outer() {
        return Network.ownAddresses().stream()
                .filter(address -> !address.isLoopbackAddress())
                .findFirst()
                .orElseGet(Elsewhere::secondLoopback);
    }

    static InetAddress secondLoopback() {
        try {
            return InetAddress.getByAddress(new byte[] {127, 0, 0, 2});
        } catch (UnknownHostException never) {
            throw new IllegalStateException(never);
        }
    }

    /** Where a phone finds the pages. */
    URI address() {
        return bench.addressesForOthers().get(0);
    }

    /** Asked by hand, for what Java's client does not let a program set; gives status line, head and body. */
    static String asked(URI server, String request) throws IOException {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(20_000);
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Override
    public void close() {
        bench.close();
        shelf.close();
    }
}
