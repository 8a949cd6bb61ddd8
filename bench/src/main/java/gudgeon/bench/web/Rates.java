package gudgeon.bench.web;

import gudgeon.bench.web.device.Reach;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.DoSHandler;
import org.eclipse.jetty.util.Callback;

/**
 * How fast devices on the network may ask. A page with all that belongs to it is about a dozen requests; a person turning pages as fast
 * as they can stays below five pages a second. The laptop itself is not held back: who sits there can end the program.
 *
 * @param aSecond requests a second of one address, going on
 * @param atOnce requests of one address at once
 */
record Rates(int aSecond, int atOnce) {
    /** What 50 devices in a workshop need, each for itself. */
    static final Rates USUAL = new Rates(60, 240);

    private static final int MOST_ADDRESSES = 1_000;
    private static final Duration FORGOTTEN = Duration.ofSeconds(30);
    private static final String SENTENCE =
            "This device asks for more than Gudgeon answers. Wait a few seconds, then go on.\n";

    void on(Server server) {
        DoSHandler rates = new DoSHandler(
                DoSHandler.ID_FROM_REMOTE_ADDRESS,
                new DoSHandler.LeakingBucketTrackerFactory(aSecond, atOnce, FORGOTTEN),
                Rates::refuse,
                MOST_ADDRESSES);
        rates.exclude(request -> Reach.isLaptop(Request.getLocalAddr(request)));
        server.setHandler(rates);
    }

    private static boolean refuse(Request request, Response response, Callback callback) {
        response.setStatus(HttpStatus.TOO_MANY_REQUESTS_429);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain;charset=utf-8");
        response.getHeaders().put(HttpHeader.RETRY_AFTER, 5);
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.write(true, ByteBuffer.wrap(SENTENCE.getBytes(StandardCharsets.UTF_8)), callback);
        return true;
    }
}
