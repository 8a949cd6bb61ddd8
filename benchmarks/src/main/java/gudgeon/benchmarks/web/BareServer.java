package gudgeon.benchmarks.web;

import io.javalin.Javalin;
import java.util.concurrent.CountDownLatch;

/** The rival: a server of the same framework with one route, which answers a sentence. */
public final class BareServer {
    private BareServer() {}

    /** Serves at any free port until the process is ended. */
    public static void main(String[] arguments) throws InterruptedException {
        Javalin server = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.routes.get("/", ctx -> ctx.html("<!doctype html><title>Bare</title><p>All there is."));
                })
                .start("127.0.0.1", 0);
        System.out.println("The bare server is at http://127.0.0.1:" + server.port() + "/ on this machine only.");
        new CountDownLatch(1).await();
    }
}
