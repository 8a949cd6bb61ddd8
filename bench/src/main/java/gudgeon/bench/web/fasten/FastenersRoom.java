package gudgeon.bench.web.fasten;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Allocation;
import gudgeon.rebuild.fasten.OwnWrenches;
import gudgeon.rebuild.fasten.WrenchPlan;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.Piled;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The joints with what is open, {@code /builds/<id>/fasteners}; the heap of fasteners, {@code .../heap}; and the torque wrenches,
 * {@code .../wrenches}.
 */
public final class FastenersRoom {
    private final Pages pages;
    private final Builds builds;

    public FastenersRoom(Pages pages, Builds builds) {
        this.pages = pages;
        this.builds = builds;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/fasteners", this::joints);
        routes.get("/builds/{build}/fasteners/heap", this::heap);
        routes.get("/builds/{build}/fasteners/wrenches", this::wrenches);
    }

    private void joints(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        Build build = opened.build();
        pages.show(
                ctx,
                "fasten/page.jte",
                opened.with(Map.of(
                        "joints",
                        JointView.all(build),
                        "heap",
                        Heap.of(build),
                        "allocation",
                        Allocation.of(build),
                        "plan",
                        WrenchPlan.of(build))));
    }

    private void heap(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        List<Piled> heap = Heap.of(opened.build());
        Optional<Piled> chosen = heap.stream()
                .filter(one -> one.kind().equals(ctx.queryParam("change")))
                .findFirst();
        pages.show(ctx, "fasten/heap.jte", opened.with(Map.of("heap", heap, "chosen", chosen)));
    }

    /**
     * A torque wrench as the list shows it.
     *
     * @param sentences what it can be trusted for, or why its figures can't be used
     */
    public record WrenchLine(WrenchKept kept, List<String> sentences) {
        static WrenchLine of(WrenchKept kept) {
            OwnWrenches alone = OwnWrenches.of(List.of(kept));
            return new WrenchLine(
                    kept,
                    alone.all().isEmpty()
                            ? alone.faults()
                            : alone.all().stream().map(one -> one.sentence()).toList());
        }
    }

    private void wrenches(Context ctx) {
        Opened opened = builds.open(ctx, Tab.FASTENERS);
        Build build = opened.build();
        Map<String, WrenchKept> kept = new LinkedHashMap<>();
        build.told(WrenchKept.class, Fastening.WRENCHES)
                .forEach(told -> kept.put(told.fact().wrench(), told.fact()));
        Optional<WrenchKept> chosen =
                Optional.ofNullable(ctx.queryParam("change")).flatMap(name -> Optional.ofNullable(kept.get(name)));
        pages.show(
                ctx,
                "fasten/wrenches.jte",
                opened.with(Map.of(
                        "lines",
                        kept.values().stream().map(WrenchLine::of).toList(),
                        "plan",
                        WrenchPlan.of(build),
                        "chosen",
                        chosen)));
    }
}
