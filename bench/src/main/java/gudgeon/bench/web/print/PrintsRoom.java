package gudgeon.bench.web.print;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.fasten.CardLayout;
import gudgeon.bench.print.label.CommonSheet;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.bag.Bag;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Card;
import gudgeon.rebuild.fasten.JointNow;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** All that can be printed of a build, and what each is for: {@code /builds/<id>/prints}. */
public final class PrintsRoom {
    private final Pages pages;
    private final Builds builds;
    private final Supplier<List<URI>> addresses;

    /**
     * The room.
     *
     * @param addresses where other devices find the pages
     */
    public PrintsRoom(Pages pages, Builds builds, Supplier<List<URI>> addresses) {
        this.pages = pages;
        this.builds = builds;
        this.addresses = addresses;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/prints", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PRINTS);
        Build build = opened.build();
        pages.show(
                ctx,
                "print/prints.jte",
                opened.with(Map.of(
                        "bags",
                        Bag.all(build).stream()
                                .filter(bag -> !bag.left().isEmpty())
                                .toList(),
                        "addresses",
                        addresses.get(),
                        "sheets",
                        List.of(CommonSheet.values()),
                        "cards",
                        cards(build),
                        "papers",
                        List.of(Paper.values()))));
    }

    /** Joints of which there is a card. */
    private static List<JointNow> cards(Build build) {
        return build.structure().joints().stream()
                .flatMap(joint -> JointNow.of(build, joint.id()).stream())
                .filter(joint -> CardLayout.of(Card.of(joint), Paper.A4) instanceof CardLayout.Asked.Ready)
                .toList();
    }
}
