package gudgeon.bench.web.source;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.schedule.Schedule;
import gudgeon.store.source.CalendarFile;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;

/** When it will be done, and what that hangs on: {@code /builds/<id>/parts/schedule}; the same as a calendar file. */
public final class ScheduleRoom {
    /** More than a person will look at before the first is done. */
    private static final int MOST_AT_ONCE = 6;

    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public ScheduleRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/parts/schedule", this::show);
        routes.get("/builds/{build}/parts/calendar.ics", this::calendar);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        Build build = opened.build();
        Schedule schedule = schedule(build);
        pages.show(
                ctx,
                "source/schedule.jte",
                opened.with(Map.of("schedule", schedule, "hours", hours(build), "most", MOST_AT_ONCE)));
    }

    private Schedule schedule(Build build) {
        return Schedule.of(build, Plan.of(build, clock.instant()), LocalDate.now(clock));
    }

    private void calendar(Context ctx) {
        Opened opened = builds.open(ctx, Tab.PARTS);
        ctx.contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"gudgeon.ics\"")
                .result(CalendarFile.text(
                        schedule(opened.build()), opened.frame().id(), clock.instant()));
    }

    /** The hours a week that were said last, as a field shows them. */
    private static String hours(Build build) {
        return build.told(PaceSet.class).stream()
                .map(told -> BigDecimal.valueOf(told.fact().hours())
                        .stripTrailingZeros()
                        .toPlainString())
                .reduce("", (before, later) -> later);
    }
}
