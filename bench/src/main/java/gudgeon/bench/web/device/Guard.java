package gudgeon.bench.web.device;

import gudgeon.bench.web.page.Device;
import gudgeon.store.device.LetIn;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.util.Optional;

/** Who may do what: the laptop everything; a device that was let in all but letting in and putting out; any other nothing. */
public final class Guard {
    private final EnterRoom enter;

    public Guard(EnterRoom enter) {
        this.enter = enter;
    }

    /** Lets a request through, or answers it. */
    public void at(Context ctx) {
        if (Reach.isLaptop(ctx)) {
            return;
        }
        if (ctx.path().equals(DeviceRoom.PATH) || ctx.path().startsWith(DeviceRoom.PATH + "/")) {
            throw new ForbiddenResponse("Devices are let in and put out on the laptop only, at its own address.");
        }
        Optional<LetIn> device = enter.letIn(ctx);
        device.ifPresent(known -> Device.is(ctx, known.name()));
        if (device.isEmpty() && !EnterRoom.isOpen(ctx.path())) {
            enter.turnAway(ctx);
            ctx.skipRemainingHandlers();
        }
    }
}
