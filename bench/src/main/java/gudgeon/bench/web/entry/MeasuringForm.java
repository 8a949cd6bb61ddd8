package gudgeon.bench.web.entry;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Measuring.Stocked;
import gudgeon.rebuild.journal.Method;
import gudgeon.rebuild.measure.Slip;
import gudgeon.rebuild.measure.Slips;
import gudgeon.rebuild.reading.OwnInstruments;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns what a form about measuring sent into facts. */
final class MeasuringForm {
    private final Build build;
    private final Form form;

    MeasuringForm(Build build, Form form) {
        this.build = build;
        this.form = form;
    }

    /** The facts of a form of that type; empty if it is not one about measuring. */
    Optional<List<Fact>> facts(String type) {
        return switch (type) {
            case "reading-taken" -> Optional.of(reading().stream().toList());
            case "readings" -> Optional.of(readings());
            case "reading-corrected" -> Optional.of(corrected());
            case "instrument-kept" -> Optional.of(List.of(instrument()));
            case "fitting-said" ->
                Optional.of(List.of(new FittingSaid(
                        form.text("position"),
                        form.choice("method", "How it was put in", Method.WARMED),
                        form.number("celsius", "Temperature"),
                        form.text("remark"))));
            case "stocked" -> Optional.of(List.of(new Stocked(form.text("position"), stocked())));
            default -> Optional.empty();
        };
    }

    private Optional<Fact> reading() {
        String dimension = form.text("dimension");
        String value = form.text("value");
        if (value.isEmpty()) {
            form.refuse("No reading was written. Write what the instrument shows.");
            return Optional.empty();
        }
        return reading(
                build, "value", dimension, form.whole("piece", "Piece", 1), form.text("at"), form.text("instrument"));
    }

    /**
     * A reading that stands in a field; none where the person will read again.
     *
     * @param before the build as the readings before it leave it
     */
    private Optional<Fact> reading(
            Build before, String field, String dimension, int piece, String at, String instrument) {
        SlipAnswer answer = SlipAnswer.of(form, field);
        if (answer.again()) {
            return Optional.empty();
        }
        ReadingTaken reading = new ReadingTaken(
                dimension,
                form.text("part"),
                piece,
                at,
                answer.value().orElseGet(() -> withUnit(form.text(field), dimension)),
                instrument,
                form.number("celsius", "Temperature"),
                Stream.of(form.text("remark"), answer.remark())
                        .filter(said -> !said.isEmpty())
                        .reduce((one, other) -> one + " " + other)
                        .orElse(""));
        askAbout(before, field, reading);
        return Optional.of(reading);
    }

    /** Asks about a reading that looks like a slip, unless that was answered already. */
    private void askAbout(Build before, String field, ReadingTaken reading) {
        List<Slip> slips = Slips.of(before, reading);
        if (!slips.isEmpty() && form.text("answer." + field).isEmpty()) {
            form.ask(new Question(field, reading.value(), slips));
        }
    }

    /** A bare number in the unit that the form says, else in that of the dimension. */
    private String withUnit(String written, String dimension) {
        Unit unit = build.structure().dimension(dimension).map(Dimension::unit).orElse(Unit.NONE);
        boolean bare = written.matches("[-+\u2212]?[\\d\\s.,/]+");
        if (!bare || unit == Unit.NONE) {
            return written;
        }
        return written + (unit == Unit.MM && form.text("unit").equals("in") ? " in" : " " + unit.symbol());
    }

    /** All that was typed in from the sheet of one position; each field is named by dimension, piece and place. */
    private List<Fact> readings() {
        List<Fact> facts = new ArrayList<>();
        for (Dimension dimension : build.structure().dimensionsOf(form.text("position"))) {
            for (int piece = 1; piece <= dimension.pieces(); piece++) {
                readings(dimension, piece, facts);
            }
        }
        boolean again = form.starting("answer.").containsValue("again");
        if (facts.isEmpty() && !again) {
            form.refuse("No reading was written. Write one or more.");
        }
        return facts;
    }

    private void readings(Dimension dimension, int piece, List<Fact> to) {
        List<String> places = dimension.places().all();
        for (int place = 0; place < places.size(); place++) {
            String field = "reading." + dimension.id() + "." + piece + "." + place;
            if (!form.text(field).isEmpty()) {
                String instrument = form.text("instrument." + dimension.id());
                reading(build.asIf(to), field, dimension.id(), piece, places.get(place), instrument)
                        .ifPresent(to::add);
            }
        }
    }

    /** A reading put right, or struck out where nothing is written in its place. */
    private List<Fact> corrected() {
        String key = form.text("entry");
        Optional<ReadingTaken> wrong = build.entries().stream()
                .filter(entry -> entry.key().equals(key))
                .map(Entry::fact)
                .filter(ReadingTaken.class::isInstance)
                .map(ReadingTaken.class::cast)
                .findFirst();
        if (wrong.isEmpty()) {
            form.refuse("There is no such reading in this journal. Choose it from the sheet.");
            return List.of();
        }
        if (SlipAnswer.of(form, "value").again()) {
            return List.of();
        }
        Fact struckOut = new Fact.Corrected(key, form.text("why"), Optional.empty());
        return form.text("value").isEmpty()
                ? List.of(struckOut)
                : List.of(new Fact.Corrected(
                        key, form.text("why"), Optional.of(instead(wrong.get(), build.asIf(List.of(struckOut))))));
    }

    private Fact instead(ReadingTaken wrong, Build without) {
        SlipAnswer answer = SlipAnswer.of(form, "value");
        ReadingTaken right = new ReadingTaken(
                wrong.dimension(),
                wrong.part(),
                wrong.piece(),
                wrong.at(),
                answer.value().orElseGet(() -> withUnit(form.text("value"), wrong.dimension())),
                wrong.instrument(),
                wrong.celsius(),
                answer.remark());
        askAbout(without, "value", right);
        return right;
    }

    private Fact instrument() {
        InstrumentKept kept = new InstrumentKept(
                form.text("instrument"),
                form.choice("kind", "Kind", InstrumentKind.CALLIPER),
                form.text("range"),
                form.text("resolution"),
                form.text("error"),
                checked(),
                form.text("remark"));
        OwnInstruments.of(List.of(kept)).faults().forEach(form::refuse);
        return kept;
    }

    private Optional<LocalDate> checked() {
        String text = form.text("checked");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException notOne) {
            form.refuse("Last checked: '" + text + "' is not a day. Write year, month and day, such as 2026-03-31.");
            return Optional.empty();
        }
    }

    /** One for each piece, parted by semicolons or lines. */
    private List<String> stocked() {
        return Stream.of(form.text("sizes").split("[;\\n]"))
                .map(String::strip)
                .filter(size -> !size.isEmpty())
                .toList();
    }
}
