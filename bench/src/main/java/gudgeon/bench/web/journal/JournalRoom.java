package gudgeon.bench.web.journal;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Telling;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All that was done and found, the newest first: {@code /builds/<id>/journal}. */
public final class JournalRoom {
    private static final int A_PAGE = 100;
    private static final Duration LATEST_TICK = Duration.ofHours(12);

    private final Pages pages;
    private final Builds builds;
    private final ZoneId zone;

    /**
     * The room.
     *
     * @param zone where the workshop is, for the times shown
     */
    public JournalRoom(Pages pages, Builds builds, ZoneId zone) {
        this.pages = pages;
        this.builds = builds;
        this.zone = zone;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.get("/builds/{build}/journal", this::show);
    }

    /**
     * An entry as the page shows it.
     *
     * @param number its number, from 1
     * @param key its key
     * @param when date and time in the workshop
     * @param device which device sent it
     * @param sentence what it says
     * @param struck whether it was corrected
     * @param about the position, step or check it is about, may be empty
     * @param photo content hash of its photo, may be empty
     * @param clockBack whether its time lies well before that of the entry before it on the same device
     */
    public record Line(
            long number,
            String key,
            String when,
            String device,
            String sentence,
            boolean struck,
            String about,
            String photo,
            boolean clockBack) {}

    private void show(Context ctx) {
        Opened opened = builds.open(ctx, Tab.JOURNAL);
        Build build = opened.build();
        String searched = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        long from = Optional.ofNullable(ctx.queryParam("from"))
                .filter(text -> text.matches("\\d{1,9}"))
                .map(Long::parseLong)
                .map(number -> Math.min(build.size(), number + A_PAGE / 2))
                .orElse(build.size());
        List<Line> lines = new ArrayList<>();
        long next = from;
        while (next >= 1 && lines.size() < A_PAGE) {
            Line line = line(build, next--);
            if (line.sentence().toLowerCase(Locale.ROOT).contains(searched.toLowerCase(Locale.ROOT))) {
                lines.add(line);
            }
        }
        pages.show(ctx, "journal/page.jte", opened.with(Map.of("lines", lines, "searched", searched, "older", next)));
    }

    private Line line(Build build, long number) {
        Entry entry = build.entry(number);
        String when = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH)
                .format(entry.at().atZone(zone));
        return new Line(
                number,
                entry.key(),
                when,
                entry.device(),
                Telling.of(entry.fact(), build.structure()),
                build.isCorrected(number),
                entry.fact().about(),
                entry.fact() instanceof Fact.Photographed photo ? photo.photo() : "",
                clockBack(build, entry, number));
    }

    /** A tick that a page kept for a while may be late, but one device does not go back in time unless its clock does. */
    private static boolean clockBack(Build build, Entry entry, long number) {
        return number > 1
                && build.entry(number - 1).device().equals(entry.device())
                && entry.at().plus(LATEST_TICK).isBefore(build.entry(number - 1).at());
    }
}
