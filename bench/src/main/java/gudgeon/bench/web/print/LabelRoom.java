package gudgeon.bench.web.print;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.label.BagAddress;
import gudgeon.bench.print.label.CommonSheet;
import gudgeon.bench.print.label.LabelPages;
import gudgeon.bench.print.label.LabelPrint;
import gudgeon.bench.print.label.SheetWish;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Photographs;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.bag.Bag;
import gudgeon.rebuild.bag.BagLabel;
import gudgeon.rebuild.plan.Plan;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URI;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Labels for bags, and the page that a label's code opens: {@code /builds/<id>/print/labels} and
 * {@code /builds/<id>/bag?of=<bag>}.
 */
public final class LabelRoom {
    private static final int MOST_EMPTY = 500;

    private final Pages pages;
    private final Builds builds;
    private final Supplier<List<URI>> addresses;
    private final Clock clock;
    private final Pdf pdf = new Pdf();

    /**
     * The room.
     *
     * @param addresses where other devices find the pages; codes hold no other address
     */
    public LabelRoom(Pages pages, Builds builds, Supplier<List<URI>> addresses, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.addresses = addresses;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/print/labels", this::labels);
        routes.get("/builds/{build}/bag", this::bag);
    }

    private void bag(Context ctx) {
        Opened opened = builds.open(ctx, Tab.STRIP);
        pages.show(
                ctx,
                "print/bag.jte",
                opened.with(Map.of(
                        "bag", Bag.of(opened.build(), text(ctx, "of", "")),
                        "waiting", Plan.of(opened.build(), clock.instant()).waiting(),
                        "zone", clock.getZone(),
                        "photos", new Photographs(opened.build(), opened.frame()))));
    }

    private void labels(Context ctx) {
        Opened opened = builds.open(ctx, Tab.STRIP);
        List<String> faults = new ArrayList<>();
        int first = number(ctx, "first", 1, faults);
        int empty = number(ctx, "empty", 0, faults);
        if (empty < 0 || empty > MOST_EMPTY) {
            faults.add("There can be from 1 to " + MOST_EMPTY + " empty labels, not " + empty + ".");
        }
        BagAddress.Asked bench = address(text(ctx, "address", ""));
        if (bench instanceof BagAddress.Asked.Refused refused) {
            faults.add(refused.sentence());
        }
        SheetWish.Read sheet = wish(ctx).read();
        if (sheet instanceof SheetWish.Read.Refused refused) {
            faults.addAll(refused.sentences());
        }
        if (faults.isEmpty()
                && bench instanceof BagAddress.Asked.Usable usable
                && sheet instanceof SheetWish.Read.Sheet found) {
            List<BagLabel> labels =
                    empty > 0 ? BagLabel.empty(opened.build(), empty) : BagLabel.all(opened.build(), clock.getZone());
            BagAddress codes = new BagAddress(
                    usable.bench(), opened.frame().id(), opened.frame().name());
            answer(ctx, LabelPages.of(labels, found.sheet(), first, codes, ctx.queryParam("trial") != null));
        } else {
            refuse(ctx, faults);
        }
    }

    private BagAddress.Asked address(String asked) {
        boolean served = asked.isEmpty()
                || addresses.get().stream().anyMatch(one -> one.toString().equals(asked));
        return served
                ? BagAddress.typed(asked)
                : new BagAddress.Asked.Refused("'" + asked + "' is no address at which other devices reach Gudgeon now:"
                        + " choose one from the list, which holds some once it is started with serve --lan.");
    }

    private static SheetWish wish(Context ctx) {
        return new SheetWish(
                text(ctx, "sheet", CommonSheet.A4_24.word()),
                text(ctx, "paper", "A4"),
                text(ctx, "grid", ""),
                text(ctx, "size", ""),
                text(ctx, "gap", ""),
                text(ctx, "margin", ""));
    }

    private void answer(Context ctx, LabelPages.Asked asked) {
        if (asked instanceof LabelPages.Asked.Ready ready) {
            ctx.contentType("application/pdf")
                    .header("Content-Disposition", "inline; filename=\"bag-labels.pdf\"")
                    .result(new LabelPrint(pdf.in(pages.localization(ctx))).of(ready.pages()));
        } else if (asked instanceof LabelPages.Asked.Refused refused) {
            refuse(ctx, refused.sentences());
        }
    }

    private void refuse(Context ctx, List<String> sentences) {
        ctx.status(422);
        pages.fault(ctx, "These labels can't be printed", String.join(" ", sentences));
    }

    private static String text(Context ctx, String field, String otherwise) {
        return Optional.ofNullable(ctx.queryParam(field))
                .filter(value -> !value.isBlank())
                .orElse(otherwise);
    }

    private static int number(Context ctx, String field, int otherwise, List<String> faults) {
        String written = text(ctx, field, String.valueOf(otherwise));
        try {
            return Integer.parseInt(written.strip());
        } catch (NumberFormatException notOne) {
            faults.add("'" + written + "' is not a whole number that can be used for labels.");
            return otherwise;
        }
    }
}
