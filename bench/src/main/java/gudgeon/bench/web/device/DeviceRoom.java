package gudgeon.bench.web.device;

import gudgeon.bench.print.label.Code;
import gudgeon.bench.web.page.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Who is let in, and the code that lets another in; on the laptop only: {@code /devices}. */
public final class DeviceRoom {
    /** Where it is; nothing below it is answered to another machine. */
    public static final String PATH = "/devices";
    /** Where the certificate that a phone is to trust is fetched. */
    public static final String CERTIFICATE = "/workshop.crt";

    private final Pages pages;
    private final Reach reach;
    private final Clock clock;

    public DeviceRoom(Pages pages, Reach reach, Clock clock) {
        this.pages = pages;
        this.reach = reach;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get(PATH, this::show);
        routes.post(PATH + "/code", this::issue);
        routes.post(PATH + "/out", this::putOut);
        routes.get(CERTIFICATE, this::certificate);
    }

    /** A device as the page shows it. */
    public record Line(String id, String name, String since, String lastSeen) {}

    /** An address with its code to scan. */
    public record Way(URI address, Optional<Code> code) {}

    private void show(Context ctx) {
        Optional<EntryCode> code =
                reach.network().flatMap(network -> network.codes().current());
        ctx.header("Cache-Control", "no-store");
        pages.show(
                ctx,
                "device/page.jte",
                Map.of(
                        "network", reach.network(),
                        "lines", lines(),
                        "code", code,
                        "until", code.map(good -> time(good.until())).orElse(""),
                        "ways", ways(code)));
    }

    private List<Line> lines() {
        return reach.network().stream()
                .flatMap(network -> network.devices().all().stream())
                .map(device -> new Line(device.id(), device.name(), day(device.since()), day(device.lastSeen())))
                .toList();
    }

    private List<Way> ways(Optional<EntryCode> code) {
        return reach.others().stream()
                .map(address -> new Way(
                        address,
                        code.flatMap(good -> Code.of(
                                address.resolve("enter?code=" + good.digits()).toString()))))
                .toList();
    }

    private String day(Instant at) {
        return DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH).format(at.atZone(clock.getZone()));
    }

    private String time(Instant at) {
        return DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH).format(at.atZone(clock.getZone()));
    }

    private Network network() {
        return reach.network().orElseThrow(NotFoundResponse::new);
    }

    private void issue(Context ctx) {
        network().codes().issue();
        ctx.redirect(PATH + "#code", HttpStatus.SEE_OTHER);
    }

    private void putOut(Context ctx) {
        network().devices().putOut(Optional.ofNullable(ctx.formParam("id")).orElse(""));
        ctx.redirect(PATH, HttpStatus.SEE_OTHER);
    }

    private void certificate(Context ctx) {
        ctx.contentType("application/x-x509-ca-cert")
                .header("Content-Disposition", "attachment; filename=\"gudgeon-workshop.crt\"")
                .result(network()
                        .certificate()
                        .orElseThrow(NotFoundResponse::new)
                        .file());
    }
}
