package gudgeon.bench.web.print;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.fasten.CardLayout;
import gudgeon.bench.print.fasten.CardLayout.Asked;
import gudgeon.bench.print.fasten.CardPrint;
import gudgeon.bench.print.fasten.TorquePrint;
import gudgeon.bench.print.tick.TickPrint;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.fasten.Card;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.TorqueSheet;
import gudgeon.rebuild.tick.TickList;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * PDF files of a build's fasteners: {@code /builds/<id>/print/card/<joint>}, the same by a form as
 * {@code /builds/<id>/print/card?joint=<joint>}, and {@code /builds/<id>/print/torque}, each with {@code paper=A4}.
 */
public final class PrintRoom {
    private final Pages pages;
    private final Builds builds;
    private final Pdf pdf = new Pdf();

    public PrintRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/print/card", ctx -> card(ctx, Optional.ofNullable(ctx.queryParam("joint"))));
        routes.get("/builds/{build}/print/card/{joint}", ctx -> card(ctx, Optional.of(ctx.pathParam("joint"))));
        routes.get("/builds/{build}/print/torque", this::torque);
        routes.get("/builds/{build}/print/list", this::list);
    }

    private void card(Context ctx, Optional<String> named) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        JointNow joint = named.flatMap(id -> JointNow.of(opened.build(), id)).orElseThrow(NotFoundResponse::new);
        Asked asked = CardLayout.of(Card.of(joint), paper(ctx));
        if (asked instanceof Asked.Ready ready) {
            give(ctx, new CardPrint(in(ctx)).of(opened.frame().name(), ready.layout()), "card-" + joint.id());
        } else if (asked instanceof Asked.Refused refused) {
            ctx.status(422);
            pages.fault(ctx, "There is no card yet", refused.sentence());
        }
    }

    private void torque(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        give(
                ctx,
                new TorquePrint(in(ctx)).of(opened.frame().name(), TorqueSheet.of(opened.build()), paper(ctx)),
                "torque-sheet");
    }

    private void list(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PRINTS);
        TickList.Kind kind = Optional.ofNullable(ctx.queryParam("of"))
                .flatMap(TickList.Kind::of)
                .orElseThrow(NotFoundResponse::new);
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        TickList list = TickList.of(kind, opened.build(), today);
        give(ctx, new TickPrint(in(ctx)).of(opened.frame().name(), list, paper(ctx), today), "list-" + kind.word());
    }

    private Pdf in(Context ctx) {
        return pdf.in(pages.localization(ctx));
    }

    private static Paper paper(Context ctx) {
        return Optional.ofNullable(ctx.queryParam("paper")).flatMap(Paper::of).orElse(Paper.A4);
    }

    private static void give(Context ctx, byte[] file, String name) {
        ctx.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + name.replaceAll("[^\\w.-]", "-") + ".pdf\"")
                .result(file);
    }
}
