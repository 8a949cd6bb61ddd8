package gudgeon.bench.web.device;

import gudgeon.bench.web.page.Cookies;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.store.device.LetIn;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where a device on the network shows the code, and all that one sees that is not let in: {@code /enter}. */
public final class EnterRoom {
    private static final String PATH = "/enter";
    private static final String COOKIE = "gudgeon-in";

    private final Pages pages;
    private final Reach reach;
    private final Clock clock;

    public EnterRoom(Pages pages, Reach reach, Clock clock) {
        this.pages = pages;
        this.reach = reach;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get(PATH, ctx -> show(ctx, List.of()));
        routes.post(PATH, this::enter);
    }

    /** What a device that is not let in may see: this page, what it is made of, and the certificate. */
    static boolean isOpen(String path) {
        return path.equals(PATH)
                || path.equals("/light.css")
                || path.equals(DeviceRoom.CERTIFICATE)
                || path.startsWith("/assets/");
    }

    /** The device that a request comes from; empty if it is not let in. */
    Optional<LetIn> letIn(Context ctx) {
        String token = Cookies.brought(ctx, COOKIE);
        return token.isEmpty()
                ? Optional.empty()
                : reach.network().flatMap(network -> network.devices().showing(token, clock.instant()));
    }

    /** Answers a request of a device that is not let in. */
    void turnAway(Context ctx) {
        ctx.status(HttpStatus.UNAUTHORIZED);
        if (Pages.wantsData(ctx)) {
            ctx.json(Map.of(
                    "state",
                    "outside",
                    "sentences",
                    List.of(pages.localization(ctx)
                            .text("This device is not let in any more. Open " + PATH
                                    + ", type the code that the laptop shows, and come back; this waits until then.")),
                    "seen",
                    0));
        } else {
            show(ctx, List.of());
        }
    }

    private void show(Context ctx, List<String> refusals) {
        if (Reach.isLaptop(ctx)) {
            ctx.redirect(DeviceRoom.PATH, HttpStatus.SEE_OTHER);
            return;
        }
        ctx.header("Cache-Control", "no-store");
        pages.show(
                ctx,
                "device/enter.jte",
                Map.of(
                        "code", sent(ctx, "code").replaceAll("[^0-9]", ""),
                        "name",
                                Optional.of(sent(ctx, "name"))
                                        .filter(name -> !name.isEmpty())
                                        .orElse(Device.kind(ctx)),
                        "to", ctx.path().equals(PATH) ? sent(ctx, "to") : wanted(ctx),
                        "encrypted",
                                reach.network().flatMap(Network::certificate).isPresent(),
                        "refusals", refusals));
    }

    private static String wanted(Context ctx) {
        return ctx.method().equals(HandlerType.GET)
                ? ctx.path()
                        + Optional.ofNullable(ctx.queryString())
                                .map(query -> "?" + query)
                                .orElse("")
                : "";
    }

    private static String sent(Context ctx, String field) {
        return Optional.ofNullable(ctx.formParam(field))
                .or(() -> Optional.ofNullable(ctx.queryParam(field)))
                .orElse("")
                .strip();
    }

    private void enter(Context ctx) {
        Optional<Network> network = reach.network().filter(given -> !Reach.isLaptop(ctx));
        if (network.isEmpty()) {
            ctx.redirect(DeviceRoom.PATH, HttpStatus.SEE_OTHER);
            return;
        }
        EntryCodes.Tried tried =
                network.get().codes().attempt(sent(ctx, "code"), ctx.req().getRemoteAddr());
        if (tried instanceof EntryCodes.Tried.Right right) {
            let(ctx, network.get(), right.code());
        } else if (tried instanceof EntryCodes.Tried.Refused refused) {
            refuse(ctx, refused.sentence());
        }
    }

    private void let(Context ctx, Network network, EntryCode code) {
        String name = sent(ctx, "name");
        Optional<String> against = network.devices().against(name);
        if (against.isPresent()) {
            refuse(ctx, against.get());
        } else if (!network.codes().spend(code)) {
            refuse(ctx, "Another device was let in with this code first. Ask for a new one on the laptop.");
        } else {
            Cookies.give(ctx, COOKIE, network.devices().letIn(name, clock.instant()));
            ctx.redirect(to(sent(ctx, "to")), HttpStatus.SEE_OTHER);
        }
    }

    private void refuse(Context ctx, String sentence) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, List.of(sentence));
    }

    /** Only a page of this server. */
    private static String to(String wanted) {
        return wanted.matches("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\]]*") && !wanted.startsWith(PATH) ? wanted : "/";
    }
}
