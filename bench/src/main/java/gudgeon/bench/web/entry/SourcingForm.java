package gudgeon.bench.web.entry;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.store.source.PartsFile;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns what a form about buying and machining sent into facts. An order and an arrival may hold several lines: the positions ticked
 * as {@code line}, what is said of each in fields that end with its id, such as {@code count.piston}.
 */
final class SourcingForm {
    private final Build build;
    private final Form form;

    SourcingForm(Build build, Form form) {
        this.build = build;
        this.form = form;
    }

    /** The facts, in the order in which they are told; none after a refusal. */
    List<Fact> facts() {
        String position = form.text("position");
        String part = form.text("part");
        String order = form.text("order");
        String type = form.text("type");
        return switch (type) {
            case "offered" ->
                List.of(new Sourcing.Offered(
                        position, part, origin(""), form.text("from"), form.text("price"), days(), sizes("")));
            case "ordered" -> ordered();
            case "arrived" -> arrived(order);
            case "postage-paid" -> List.of(new Sourcing.PostagePaid(order, form.text("price")));
            case "returned" ->
                List.of(new Sourcing.Returned(
                        order, position, part, form.whole("count", "Count", 1), form.text("why"), form.text("refund")));
            case "work-sent" ->
                List.of(new Sourcing.WorkSent(
                        position, part, form.text("to"), form.text("work"), form.text("price"), days()));
            case "work-back" -> List.of(new Sourcing.WorkBack(position, part, form.text("remark")));
            case "parts-file" -> ofFile();
            case "pace-set" ->
                List.of(new Sourcing.PaceSet(
                        form.number("hours", "Hours a week").orElse(0)));
            default -> {
                form.refuse("This form says nothing Gudgeon knows ('" + type + "'). Open its page again.");
                yield List.of();
            }
        };
    }

    /** What was understood of a spreadsheet's file; the person saw what was not, and said to go on. */
    private List<Fact> ofFile() {
        List<Fact> facts = PartsFile.of(build, form.text("text")).facts();
        if (facts.isEmpty()) {
            form.refuse("The file says nothing that is not in the journal already.");
        }
        return facts;
    }

    private List<Fact> ordered() {
        String order = form.text("order").isEmpty() ? freeOrder() : form.text("order");
        Optional<Days> days = days();
        Optional<LocalDate> promised = promised();
        List<Fact> facts = new ArrayList<>();
        for (Line line : lines()) {
            String of = line.suffix();
            facts.add(new Sourcing.Ordered(
                    order,
                    line.position(),
                    form.text("part" + of),
                    origin(of),
                    count(line),
                    form.text("from"),
                    form.text("price" + of),
                    days,
                    promised,
                    sizes(of)));
        }
        if (!form.text("postage").isEmpty() && !facts.isEmpty()) {
            facts.add(new Sourcing.PostagePaid(order, form.text("postage")));
        }
        return facts;
    }

    private List<Fact> arrived(String order) {
        List<Fact> facts = new ArrayList<>();
        for (Line line : lines()) {
            String remark = form.text("remark" + line.suffix());
            facts.add(new Sourcing.Arrived(
                    order, line.position(), count(line), remark.isEmpty() ? form.text("remark") : remark));
        }
        return facts;
    }

    /**
     * One position of an order.
     *
     * @param suffix how the names of the fields about it end
     */
    private record Line(String position, String suffix) {}

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        if (!form.text("position").isEmpty()) {
            lines.add(new Line(form.text("position"), ""));
        }
        form.texts("line").forEach(position -> lines.add(new Line(position, "." + position)));
        if (lines.isEmpty()) {
            form.refuse("Nothing is ticked. Tick each part that it is about.");
        }
        return lines;
    }

    private int count(Line line) {
        int quantity = build.structure()
                .position(line.position())
                .map(Position::quantity)
                .orElse(1);
        return form.whole("count" + line.suffix(), "Count", line.suffix().isEmpty() ? 1 : quantity);
    }

    /** A number for an order that nobody named. */
    private String freeOrder() {
        List<String> taken = build.told(Sourcing.Ordered.class).stream()
                .map(told -> told.fact().order())
                .toList();
        int n = 1;
        while (taken.contains(Integer.toString(n))) {
            n++;
        }
        return Integer.toString(n);
    }

    /** Where a part comes from, if that is said. */
    Optional<Origin> origin(String suffix) {
        return form.text("origin" + suffix).isEmpty()
                ? Optional.empty()
                : Optional.of(form.choice("origin" + suffix, "Origin", Origin.ORIGINAL));
    }

    /** Sizes by the id of their dimension. */
    Map<String, String> sizes(String suffix) {
        return form.starting("size" + suffix + ".");
    }

    private Optional<LocalDate> promised() {
        String text = form.text("promised");
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException notOne) {
            form.refuse("Promised for: '" + text + "' is not a day. Write it as year-month-day, such as 2024-05-31.");
            return Optional.empty();
        }
    }

    /** The likely days alone are least and most as well. */
    Optional<Days> days() {
        OptionalInt likely = form.optionalWhole("likely", "Days, likely");
        OptionalInt least = form.optionalWhole("least", "Days, fewest");
        OptionalInt most = form.optionalWhole("most", "Days, most");
        if (likely.isEmpty()) {
            if (least.isPresent() || most.isPresent()) {
                form.refuse("Days: write the likeliest number as well as the fewest or the most.");
            }
            return Optional.empty();
        }
        int middle = likely.getAsInt();
        try {
            return Optional.of(new Days(least.orElse(middle), middle, most.orElse(middle)));
        } catch (IllegalArgumentException outOfOrder) {
            form.refuse("Days: they run from the fewest over the likeliest to the most, 0 to " + Days.MOST
                    + ". Write them in that order, such as 3, 5 and 10.");
            return Optional.empty();
        }
    }
}
