package gudgeon.store.drill;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.book.Position;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Tells a drill in another way: other sizes, order, names, units, notes between, hands and times. What it means stays. */
final class Telling {
    private static final int MOST_NOTES = 4;

    private final Drill drill;
    private final long seed;
    private final int number;

    Telling(Drill drill, long seed, int number) {
        this.drill = drill;
        this.seed = seed;
        this.number = number;
    }

    Variant variant() {
        List<Line> fault =
                told(drill.fault(), drill.vary().fault(), (int) drill.expected().due());
        List<Line> sound = told(drill.sound(), drill.vary().sound(), 0);
        return new Variant(drill, number, drill.expected().dueAt(due(fault)), Variant.text(fault), Variant.text(sound));
    }

    /** The entry at which it shows: with entries that may be told in any order, the last of them. */
    private int due(List<Line> fault) {
        int written = (int) drill.expected().due();
        List<Integer> showing = drill.vary().anyOrder().stream()
                .filter(group -> group.contains(written))
                .findFirst()
                .orElse(List.of(written));
        int due = 0;
        for (int i = 0; i < fault.size(); i++) {
            due = showing.contains(fault.get(i).number()) ? i + 1 : due;
        }
        return due;
    }

    private List<Line> told(List<Line> written, List<Vary.Span> own, int due) {
        List<Line> lines = new ArrayList<>(written.stream().map(Line::copy).toList());
        drill.vary().both().forEach(span -> Sizes.vary(lines, span, chance("both " + span)));
        own.forEach(span -> Sizes.vary(lines, span, chance("own " + span)));
        List<Line> ordered = new Order(drill.vary().anyOrder(), due).shuffled(lines, chance("order"));
        Names.rename(ordered, drill, chance("names"));
        ordered.forEach(line -> Units.rewrite(line, drill.vary().asWritten(), chance("units " + line.number())));
        return Hands.given(withNotes(ordered), chance("hands"));
    }

    private Random chance(String of) {
        return new Random((seed + " " + drill.name() + " " + number + " " + of).hashCode());
    }

    /** Notes that have nothing to do with it come between, some of them struck again. */
    private List<Line> withNotes(List<Line> lines) {
        Random chance = chance("notes");
        List<Line> all = new ArrayList<>(lines);
        int notes = chance.nextInt(MOST_NOTES + 1);
        for (int note = 1; note <= notes; note++) {
            int at = 1 + chance.nextInt(all.size());
            String key = "note-" + note;
            all.add(at, new Line(note(chance, key), 0));
            if (chance.nextBoolean()) {
                ObjectNode struck = written("corrected")
                        .put("key", "struck-" + key)
                        .put("entry", key)
                        .put("why", "meant another engine");
                all.add(at + 1 + chance.nextInt(all.size() - at), new Line(struck, 0));
            }
        }
        return Collections.unmodifiableList(all);
    }

    private ObjectNode note(Random chance, String key) {
        List<Position> positions = drill.book().structure().positions();
        Optional<Position> on =
                positions.isEmpty() ? Optional.empty() : Optional.of(positions.get(chance.nextInt(positions.size())));
        return written("noted")
                .put("key", key)
                .put("on", on.map(Position::id).orElse(""))
                .put("text", "Rain. \"Kettle\" on; back at <5>.");
    }

    private ObjectNode written(String type) {
        return drill.fault().get(0).json().objectNode().put("type", type).put("version", 1);
    }
}
