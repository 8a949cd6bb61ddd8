package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckWaived;
import gudgeon.rebuild.journal.Fact.StepBegun;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.lesson.NextTime;
import gudgeon.rebuild.source.PriceRefusals;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A fact of every kind, told to a build with markup in each of its texts. A text that is refused keeps its form and is told a second
 * time as an archive might bring it: past the forms, which refuse it.
 */
final class PlantedFacts {
    private static final ObjectMapper JSON = new ObjectMapper();
    /** What later facts call a thing by. */
    private static final Set<String> NAMES = Set.of("part", "order", "option", "wrench", "kind", "instrument", "hunt");
    /** What a fact is about: with markup in it, it stands nowhere but in the journal, so it is told beside the fact itself. */
    private static final Set<String> ABOUT =
            Set.of("on", "at", "test", "answer", "suspect", "lesson", "photo", "hole", "item");

    /** What may hold a fact of a kind that is not sealed. */
    private static final List<Class<?>> ROOMS = List.of(
            Fact.class, Measuring.class, Sourcing.class, Deciding.class, Fastening.class, Finding.class, Proving.class);

    private final Shelf shelf;
    private final String id;
    private final Planted planted;
    private final String photo;
    private final Map<String, String> named = new HashMap<>();
    private final List<Fact> asFromElsewhere = new ArrayList<>();
    private final Set<String> kinds = new TreeSet<>();

    PlantedFacts(Shelf shelf, String id, Planted planted, String photo) {
        this.shelf = shelf;
        this.id = id;
        this.planted = planted;
        this.photo = photo;
    }

    /** Tells a fact of every kind, and then what the forms refuse. */
    void tell() throws IOException {
        try (InputStream stream = PlantedFacts.class.getResourceAsStream("/every-fact.jsonl")) {
            String lines = new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
            for (String line : lines.lines().toList()) {
                look(renamed(fact(line)));
            }
        }
        assertThat(kinds).as("a fact of every kind").isEqualTo(everyKind());
        asFromElsewhere.forEach(this::append);
    }

    /** All but the two that the shelf itself tells: that it was started, and that its book was changed. */
    private static Set<String> everyKind() {
        Set<String> all = new TreeSet<>();
        records(Fact.class).forEach(kind -> all.add(kind.getSimpleName()));
        all.removeAll(Set.of("Started", "BookChanged"));
        assertThat(all).hasSizeGreaterThan(60);
        return all;
    }

    private static Stream<Class<?>> records(Class<?> kind) {
        if (kind.isRecord()) {
            return Stream.of(kind);
        }
        return kind.isSealed()
                ? Stream.of(kind.getPermittedSubclasses()).flatMap(PlantedFacts::records)
                : ROOMS.stream()
                        .flatMap(room -> Stream.of(room.getDeclaredClasses()))
                        .filter(one -> one.isRecord() && kind.isAssignableFrom(one));
    }

    private Build build() {
        return shelf.build(id).orElseThrow();
    }

    private Fact fact(String line) throws IOException {
        ObjectNode entry = (ObjectNode) JSON.readTree(line);
        goesWithTheBuild(entry);
        entry.put("key", "x")
                .put("at", "2026-01-01T09:00:00Z")
                .put("device", "bench")
                .put("seen", 0);
        Reading read = EntryJson.read(entry.toString());
        assertThat(read).as(line).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) read).entries().get(0).fact();
    }

    /** Fills in what only the build can tell. */
    private void goesWithTheBuild(ObjectNode entry) {
        Build build = build();
        switch (entry.get("type").asText()) {
            case "photographed" -> entry.put("photo", photo);
            case "corrected" -> entry.put("entry", build.entry(2).key());
            case "lesson-decided" ->
                entry.put("lesson", NextTime.of(build).lessons().get(0).id());
            case "reading-taken" ->
                entry.put(
                        "where",
                        build.structure()
                                .dimension("bore")
                                .orElseThrow()
                                .places()
                                .all()
                                .get(0));
            case "start-signed" -> {
                ArrayNode open = entry.putArray("open");
                build.unproven("first-start").stream().map(Check::name).forEach(open::add);
            }
            default -> {}
        }
    }

    private void look(Fact plain) {
        kinds.add(plain.getClass().getSimpleName());
        if (plain instanceof StepBegun begun) {
            build().unproven(begun.step()).forEach(check -> append(new CheckWaived(check.id(), "seen before")));
        }
        Build build = build();
        assertThat(refusals(build, plain)).as("%s", plain).isEmpty();
        Fact told = plain;
        List<Fact> beside = new ArrayList<>();
        for (Slot slot : Slot.of(plain)) {
            Fact alone = slot.with(plain, planted.in(slot.field()));
            List<String> refusals = refusals(build, alone);
            if (!refusals.isEmpty()) {
                planted.refuse(slot.field(), refusals);
                if (EntryJson.against(alone).isEmpty()) {
                    asFromElsewhere.add(alone);
                }
            } else if (isReference(slot, plain)) {
                beside.add(alone);
            } else {
                told = slot.with(told, planted.in(slot.field()));
                if (NAMES.contains(slot.name())) {
                    named.put(slot.text(plain), planted.in(slot.field()));
                }
            }
        }
        append(told);
        beside.forEach(this::append);
    }

    /** Whether a text says what a fact is about, and is no name given here. */
    private boolean isReference(Slot slot, Fact plain) {
        return ABOUT.contains(slot.name())
                || named.containsValue(slot.text(plain))
                || (NAMES.contains(slot.name()) && slot.text(plain).isEmpty());
    }

    /** A fact that calls things by the names that they have here. */
    private Fact renamed(Fact plain) {
        Fact fact = plain;
        for (Slot slot : Slot.of(plain)) {
            String known = named.get(slot.text(plain));
            if (NAMES.contains(slot.name()) && known != null) {
                fact = slot.with(fact, known);
            }
        }
        return fact;
    }

    private static List<String> refusals(Build build, Fact fact) {
        return Stream.of(Refusals.of(build, fact), PriceRefusals.of(List.of(fact)), EntryJson.against(fact))
                .flatMap(List::stream)
                .toList();
    }

    private void append(Fact fact) {
        long seen = build().size();
        Entry entry = new Entry(
                "planted-" + seen, Instant.parse("2026-01-01T09:00:00Z"), planted.in("Entry.device"), seen, fact);
        assertThat(shelf.append(id, List.of(entry))).as("%s", fact).isInstanceOf(Outcome.Kept.class);
    }
}
