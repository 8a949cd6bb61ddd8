package gudgeon.bench.web.device;

import gudgeon.store.certificate.WorkshopCertificate;
import io.javalin.config.JettyConfig;
import io.javalin.http.Context;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * How far the pages reach. They are always served on the loopback, where only the laptop itself is; and where a network is given,
 * on each of its addresses too, and on no other.
 */
public final class Reach {
    private static final String LOOPBACK = "127.0.0.1";
    /** Open connections from the network; 50 browsers hold up to six each. */
    private static final int MOST_CONNECTIONS = 400;

    private final Optional<Network> network;
    private final List<ServerConnector> opened = new ArrayList<>();

    public Reach(Optional<Network> network) {
        this.network = network;
    }

    /** Has a server listen so far and no further. */
    public void on(JettyConfig jetty, int port) {
        jetty.addConnector((server, http) -> connector(server, LOOPBACK, port, new HttpConnectionFactory(http)));
        network.ifPresent(given -> given.hosts()
                .forEach(host -> jetty.addConnector((server, http) -> beyond(server, http, given, host, port))));
    }

    private Connector beyond(Server server, HttpConfiguration http, Network given, String host, int port) {
        ServerConnector connector = given.certificate()
                .map(certificate -> connector(server, host, port, encrypted(certificate), secure(http)))
                .orElseGet(() -> connector(server, host, port, new HttpConnectionFactory(http)));
        server.addBean(new NetworkConnectionLimit(MOST_CONNECTIONS, connector));
        return connector;
    }

    private ServerConnector connector(Server server, String host, int port, ConnectionFactory... factories) {
        ServerConnector connector = new ServerConnector(server, factories);
        connector.setHost(host);
        connector.setPort(port);
        opened.add(connector);
        return connector;
    }

    private static SslConnectionFactory encrypted(WorkshopCertificate certificate) {
        SslContextFactory.Server context = new SslContextFactory.Server();
        context.setKeyStore(certificate.server());
        context.setKeyStorePassword(WorkshopCertificate.password());
        context.setIncludeProtocols("TLSv1.2", "TLSv1.3");
        return new SslConnectionFactory(context, "http/1.1");
    }

    private static HttpConnectionFactory secure(HttpConfiguration http) {
        HttpConfiguration secure = new HttpConfiguration(http);
        // the addresses are numbers, for which no server name is sent
        secure.addCustomizer(new SecureRequestCustomizer(false));
        return new HttpConnectionFactory(secure);
    }

    /** The network, if the pages are served there. */
    public Optional<Network> network() {
        return network;
    }

    /** Where the laptop itself finds the pages. */
    public URI laptop() {
        return URI.create("http://" + LOOPBACK + ":" + opened.get(0).getLocalPort() + "/");
    }

    /** Where other devices find the pages; none without a network. */
    public List<URI> others() {
        return network.stream()
                .flatMap(given -> opened.stream()
                        .skip(1)
                        .map(one ->
                                URI.create(given.scheme() + "://" + one.getHost() + ":" + one.getLocalPort() + "/")))
                .toList();
    }

    /** Whether a request came in on the loopback, where nobody but this machine can send one. */
    public static boolean isLaptop(Context ctx) {
        return isLaptop(ctx.req().getLocalAddr());
    }

    /** Whether a request came in on the loopback, by the address at which it came in. */
    public static boolean isLaptop(String localAddress) {
        return LOOPBACK.equals(localAddress);
    }
}
