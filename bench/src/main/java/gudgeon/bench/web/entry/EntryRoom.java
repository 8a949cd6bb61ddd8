package gudgeon.bench.web.entry;

import gudgeon.bench.web.page.Builds;
import gudgeon.bench.web.page.Builds.Opened;
import gudgeon.bench.web.page.Device;
import gudgeon.bench.web.page.Pages;
import gudgeon.bench.web.page.Tab;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.source.PriceRefusals;
import gudgeon.store.photo.Kept;
import gudgeon.store.shelf.Outcome;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Takes down what the forms of a build's pages send: {@code POST /builds/<id>/entries}. */
public final class EntryRoom {
    private final Pages pages;
    private final Builds builds;
    private final Clock clock;

    public EntryRoom(Pages pages, Builds builds, Clock clock) {
        this.pages = pages;
        this.builds = builds;
        this.clock = clock;
    }

    /** Opens the room. */
    public void on(RoutesConfig routes) {
        routes.post("/builds/{build}/entries", this::take);
    }

    private void take(Context ctx) {
        Opened opened = builds.open(ctx, Tab.TODAY);
        List<String> refusals = new ArrayList<>();
        Form form = new Form(ctx.formParamMap(), refusals);
        List<Fact> facts = new ArrayList<>(new FactForm(opened.build(), form).facts());
        photo(ctx, form, facts);
        refusals.addAll(Refusals.of(opened.build(), facts));
        refusals.addAll(PriceRefusals.of(facts));
        Answer answer = answer(ctx, opened, form, facts, refusals);
        String back = back(opened, form.text("back"));
        if (Pages.wantsData(ctx)) {
            ctx.json(Map.of(
                    "state",
                    answer.state(),
                    "sentences",
                    answer.sentences().stream()
                            .map(pages.localization(ctx)::text)
                            .toList(),
                    "seen",
                    answer.seen(),
                    "questions",
                    answer.questions().stream().map(Question::json).toList()));
        } else if (answer.isKept()) {
            ctx.redirect(back, HttpStatus.SEE_OTHER);
        } else {
            ctx.status(answer.state().equals("clashed") ? 409 : 422);
            pages.show(
                    ctx,
                    "entry/answer.jte",
                    opened.with(Map.of(
                            "answer",
                            answer,
                            "back",
                            answer.isAsked() && !form.text("again").isEmpty() ? back(opened, form.text("again")) : back,
                            "fields",
                            ctx.formParamMap())));
        }
    }

    private Answer answer(Context ctx, Opened opened, Form form, List<Fact> facts, List<String> refusals) {
        long seen = opened.build().size();
        if (!refusals.isEmpty()) {
            return new Answer("refused", refusals.stream().distinct().toList(), seen);
        }
        return form.questions().isEmpty() ? keep(ctx, opened, form, facts) : Answer.asked(form.questions(), seen);
    }

    /** Only back to a page of the same build. */
    private static String back(Opened opened, String back) {
        boolean here = back.equals(opened.frame().address())
                || (back.startsWith(opened.frame().address() + "/") && !back.contains(".."))
                || back.startsWith(opened.frame().address() + "?");
        return here ? back : opened.frame().address();
    }

    private void photo(Context ctx, Form form, List<Fact> facts) {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile("photo") : null;
        if (file == null || file.size() == 0) {
            return;
        }
        try (InputStream content = file.content()) {
            Kept outcome = builds.photos().keep(content);
            if (outcome instanceof Kept.Refused refused) {
                form.refuse(refused.sentence());
            } else if (outcome instanceof Kept.Photo kept) {
                facts.add(new Fact.Photographed(on(form), kept.hash(), form.text("caption")));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String on(Form form) {
        return List.of("position", "step", "check", "on").stream()
                .map(form::text)
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    private Answer keep(Context ctx, Opened opened, Form form, List<Fact> facts) {
        List<Entry> entries = entries(ctx, opened, form, facts);
        Outcome outcome = builds.shelf().append(opened.frame().id(), entries);
        if (outcome instanceof Outcome.Kept kept) {
            return new Answer("kept", List.of(), kept.lastNumber());
        }
        long last = builds.shelf()
                .build(opened.frame().id())
                .map(Build::size)
                .orElse(opened.build().size());
        return new Answer(outcome instanceof Outcome.Clashed ? "clashed" : "refused", outcome.sentences(), last);
    }

    private List<Entry> entries(Context ctx, Opened opened, Form form, List<Fact> facts) {
        String key = form.text("key").matches("[A-Za-z0-9-]{8,56}")
                ? form.text("key")
                : UUID.randomUUID().toString();
        long seen = form.optionalWhole("seen", "Last entry seen")
                .orElse((int) opened.build().size());
        String device = Device.of(ctx);
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            String own = entries.isEmpty() ? key : key + "-" + entries.size();
            entries.add(new Entry(own, at(form), device, Math.max(0, seen), fact));
        }
        return entries;
    }

    /** When it was ticked, if the page kept it for a while; else now. */
    private Instant at(Form form) {
        Instant now = clock.instant();
        try {
            Instant ticked = Instant.parse(form.text("ticked"));
            return ticked.isAfter(now) ? now : ticked;
        } catch (DateTimeParseException notSaid) {
            return now;
        }
    }
}
