package gudgeon.bench.web.assemble;

import gudgeon.bench.web.fasten.JointView;
import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Photographs;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Computed;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** One step or check at a time, in large type: {@code /builds/<id>/assemble}. */
public final class AssembleRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public AssembleRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/assemble", this::show);
    }

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.ASSEMBLE);
        Build build = opened.build();
        Plan plan = Plan.of(build, clock.instant());
        Optional<String> at = Optional.ofNullable(ctx.queryParam("at"))
                .or(() -> plan.now().stream().map(Doable::id).findFirst());
        Map<String, Object> values = new HashMap<>();
        values.put("plan", plan);
        values.put("photos", new Photographs(build, opened.frame()));
        Optional<Step> step = at.flatMap(build.structure()::step);
        Optional<Check> check = at.flatMap(build.structure()::check);
        if (step.isPresent()) {
            values.put("step", step.get());
            values.put("unproven", build.unproven(step.get().id()));
            values.put("joints", JointView.of(build, step.get()));
            values.put("hole", Optional.ofNullable(ctx.queryParam("hole")).orElse(""));
            pages.show(ctx, "assemble/step.jte", opened.with(values));
        } else if (check.isPresent()) {
            values.put("check", check.get());
            values.put("computed", Computed.of(build, check.get()));
            pages.show(ctx, "assemble/check.jte", opened.with(values));
        } else if (at.isPresent()) {
            throw new NotFoundResponse();
        } else {
            pages.show(ctx, "assemble/none.jte", opened.with(values));
        }
    }
}
