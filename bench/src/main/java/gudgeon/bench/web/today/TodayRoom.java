package gudgeon.bench.web.today;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.ToTighten;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.PartsList;
import gudgeon.rebuild.start.StartList;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Where the work is picked up: {@code /builds/<id>}. */
public final class TodayRoom {
    /** More than a person will look at before beginning one. */
    private static final int MOST_NOW = 8;

    private final Pages pages;
    private final Builds builds;
    private final Alarms alarms;
    private final Clock clock;

    public TodayRoom(Pages pages, Builds builds, Alarms alarms, Clock clock) {
        this.alarms = alarms;
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.TODAY);
        Build build = opened.build();
        List<Alarm> standing = alarms.standing(build);
        pages.show(
                ctx,
                "today/page.jte",
                opened.with(Map.of(
                        "plan", Plan.of(build, clock.instant()),
                        "most", MOST_NOW,
                        "tighten", ToTighten.of(build),
                        "alarms", standing,
                        "start", StartList.of(build, standing),
                        "runIn", RunIn.of(build),
                        "inspections",
                                Inspection.all(build).stream()
                                        .filter(one -> one.outcome() != Inspection.Outcome.AGREES)
                                        .toList(),
                        "parts", PartsList.of(build, LocalDate.now(clock)),
                        "faults", faults(build))));
    }

    private static List<Fact.FaultFound> faults(Build build) {
        return build.openFaults().stream()
                .map(number -> build.entry(number).fact())
                .filter(Fact.FaultFound.class::isInstance)
                .map(Fact.FaultFound.class::cast)
                .toList();
    }
}
