package gudgeon.rebuild.book;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Form.Value;
import gudgeon.rebuild.book.SizeText.NotASize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads sizes, as text or as a block, with the doubts of the instruments they were measured with. */
final class SizeReader {
    private final Map<String, Instrument> instruments;
    private final Faults faults;

    SizeReader(Map<String, Instrument> instruments, Faults faults) {
        this.instruments = instruments;
        this.faults = faults;
    }

    Faults faults() {
        return faults;
    }

    /** The size that stands at a path, or a stand-in after its fault was told. */
    Size read(Node entry, String path, String label, Value.OfSize span) {
        if (entry.where().line() == 0) {
            return standIn(path, label, span);
        }
        Optional<Size> size = entry instanceof Node.Block block
                ? ofBlock(block, path, label, span)
                : entry instanceof Node.Text text ? ofText(text, path, label, span) : ofList(entry, path);
        return size.filter(read -> SpanCheck.passes(read, span, faults)).orElseGet(() -> standIn(path, label, span));
    }

    private Optional<Size> ofList(Node entry, String path) {
        faults.fault(
                entry.where(),
                path,
                "Here stands a list, where a size is wanted.",
                "Write one size, or {readings: [...]} for repeat readings.");
        return Optional.empty();
    }

    private Optional<Size> ofText(Node.Text text, String path, String label, Value.OfSize span) {
        return parsed(text, path, span.unit()).map(size -> {
            List<Doubt> doubts = new ArrayList<>();
            size.halfWidth().ifPresent(half -> doubts.add(Doubt.stated(half)));
            Optional<String> with =
                    size.instrument().filter(id -> addInstrument(id, span.unit(), text.where(), path, doubts));
            return new Size(
                    path,
                    label,
                    span.unit(),
                    new Quantity(size.value(), doubts),
                    text.text().strip(),
                    with,
                    List.of(),
                    "",
                    "",
                    text.where());
        });
    }

    private Optional<Size> ofBlock(Node.Block block, String path, String label, Value.OfSize span) {
        Fields fields = new Fields(Forms.SIZE, block, path, "", this);
        Optional<String> unit = Optional.of(fields.text("unit")).filter(text -> !text.isEmpty());
        List<Double> readings = readings(fields, unit, path, span.unit());
        if (!fields.has("value") && !fields.has("readings")) {
            faults.fault(block.where(), path, "The size has neither 'value' nor 'readings'.", "Add one of them.");
            return Optional.empty();
        }
        Optional<SizeText> value =
                fields.has("value") ? inBlock(fields, "value", unit, path, span.unit()) : Optional.empty();
        if (value.isEmpty() && readings.isEmpty()) {
            return Optional.empty();
        }
        List<Doubt> doubts = new ArrayList<>();
        value.flatMap(SizeText::halfWidth).ifPresent(half -> doubts.add(Doubt.stated(half)));
        if (fields.has("doubt")) {
            inBlock(fields, "doubt", unit, path, span.unit())
                    .filter(doubt -> notNegative(doubt.value(), fields, path))
                    .ifPresent(doubt -> doubts.add(Doubt.stated(doubt.value())));
        }
        String with = value.flatMap(SizeText::instrument).orElseGet(() -> fields.text("with"));
        Optional<String> instrument = Optional.of(with)
                .filter(id -> !id.isEmpty() && addInstrument(id, span.unit(), fields.where("with"), path, doubts));
        double estimate = value.map(SizeText::value)
                .orElseGet(() -> readings.stream().mapToDouble(d -> d).average().orElseThrow());
        if (readings.size() > 1) {
            double[] taken = readings.stream().mapToDouble(d -> d).toArray();
            doubts.add(Doubt.repeatReadings(taken));
            estimate = Quantity.meanOf(taken).value();
            checkMean(value, estimate, fields, path);
        }
        return Optional.of(new Size(
                path,
                label,
                span.unit(),
                new Quantity(estimate, doubts),
                written(fields, unit),
                instrument,
                readings,
                fields.text("note"),
                fields.text("source"),
                block.where()));
    }

    private boolean notNegative(double doubt, Fields fields, String path) {
        if (doubt < 0) {
            faults.fault(
                    fields.where("doubt"),
                    path + ".doubt",
                    "The doubt is below zero.",
                    "Write how far off it may be, without a sign.");
        }
        return doubt >= 0;
    }

    private void checkMean(Optional<SizeText> value, double mean, Fields fields, String path) {
        value.filter(stated -> Math.abs(stated.value() - mean) > 0.05)
                .ifPresent(stated -> faults.doubt(
                        fields.where("value"),
                        path + ".value",
                        "The value " + Words.number(stated.value()) + " is not the mean of the readings, "
                                + Words.number(mean) + ".",
                        "The mean is used; take out the value, or put the readings right."));
    }

    private List<Double> readings(Fields fields, Optional<String> unit, String path, Unit wanted) {
        List<Double> readings = new ArrayList<>();
        if (!fields.has("readings")) {
            return readings;
        }
        if (!(fields.entry("readings") instanceof Node.Items items)) {
            faults.fault(
                    fields.where("readings"),
                    path + ".readings",
                    "Here stands " + fields.entry("readings").kind() + ", where a list of readings is wanted.",
                    "Write them as [21.02, 21.00, 21.03].");
            return readings;
        }
        if (items.items().isEmpty()) {
            faults.fault(
                    items.where(), path + ".readings", "The list of readings is empty.", "Write one reading or more.");
        }
        for (Node item : items.items()) {
            withUnit(item, unit, path + ".readings", wanted).ifPresent(size -> readings.add(size.value()));
        }
        return readings;
    }

    private Optional<SizeText> inBlock(Fields fields, String key, Optional<String> unit, String path, Unit wanted) {
        return withUnit(fields.entry(key), unit, path + "." + key, wanted);
    }

    /** A size that takes the block's unit where it carries none. */
    private Optional<SizeText> withUnit(Node entry, Optional<String> unit, String path, Unit wanted) {
        if (!(entry instanceof Node.Text text)) {
            faults.fault(
                    entry.where(),
                    path,
                    "Here stands " + entry.kind() + ", where a size is wanted.",
                    "Write a number.");
            return Optional.empty();
        }
        Optional<SizeText> bare = parsed(text, path, wanted);
        if (unit.isEmpty() || bare.isEmpty() || bare.get().unit().isPresent()) {
            return bare;
        }
        String[] parts = text.text().split("(?=±|\\+/-|\\+-|\\swith\\s)", 2);
        String joined = parts[0] + " " + unit.get() + (parts.length > 1 ? " " + parts[1] : "");
        return parsed(new Node.Text(joined, text.where()), path, wanted);
    }

    private Optional<SizeText> parsed(Node.Text text, String path, Unit wanted) {
        try {
            SizeText size = SizeText.of(text.text());
            if (size.unit().isPresent() && size.unit().get() != wanted) {
                faults.fault(
                        text.where(),
                        path,
                        "'" + Words.shortened(text.text()) + "' is in "
                                + named(size.unit().get()) + ", where "
                                + (wanted == Unit.NONE ? "a plain number" : named(wanted)) + " is wanted.",
                        "Check the unit, and that the figure stands at the right key.");
                return Optional.empty();
            }
            return Optional.of(size);
        } catch (NotASize e) {
            faults.fault(text.where(), path, e.sentence(), "Write a number" + example(wanted) + ".");
            return Optional.empty();
        }
    }

    private boolean addInstrument(String id, Unit unit, Where where, String path, List<Doubt> doubts) {
        Instrument instrument = instruments.get(id);
        if (instrument == null) {
            String known = instruments.isEmpty()
                    ? "Add it under 'instruments' with its resolution and error."
                    : Words.nearest(id, instruments.keySet())
                            .map(near -> "Did you mean '" + near + "'?")
                            .orElse("Known are: " + String.join(", ", instruments.keySet()) + ".");
            faults.fault(where, path, "The instrument '" + Words.shortened(id) + "' is not in the book.", known);
            return false;
        }
        if (instrument.unit() != unit) {
            faults.fault(
                    where,
                    path,
                    "The " + id + " measures " + named(instrument.unit()) + ", but " + named(unit) + " is wanted here.",
                    "Name the instrument it was measured with, or write the unit at the instrument, such as 'error: 0.5 deg'.");
            return false;
        }
        doubts.add(Doubt.resolution(instrument.resolution()));
        doubts.add(Doubt.permissibleError(instrument.error()));
        return true;
    }

    /** A size to go on reading with: in its span, without doubt, known by its line 0. */
    static Size standIn(String path, String label, Value.OfSize span) {
        double value = span.low() <= 0 && span.high() >= 0 ? 0 : span.low();
        return new Size(
                path,
                label,
                span.unit(),
                Quantity.exact(value),
                "",
                Optional.empty(),
                List.of(),
                "",
                "",
                new Where(0, 0));
    }

    private static String written(Fields fields, Optional<String> unit) {
        String value =
                fields.entry("value") instanceof Node.Text text ? text.text().strip() : "";
        if (fields.entry("readings") instanceof Node.Items items && value.isEmpty()) {
            value = items.items().stream()
                    .map(item -> item instanceof Node.Text text ? text.text() : "")
                    .collect(Collectors.joining(", "));
        }
        String doubt =
                fields.entry("doubt") instanceof Node.Text text && !text.text().isEmpty()
                        ? " ± " + text.text().strip()
                        : "";
        return value + unit.map(u -> " " + u).orElse("") + doubt;
    }

    private static String named(Unit unit) {
        return switch (unit) {
            case MM -> "millimetres";
            case DEGREES -> "degrees";
            case CM3 -> "cubic centimetres";
            case KPA -> "kilopascals";
            case NEWTON -> "newtons";
            case NEWTON_METRE -> "newton metres";
            case CELSIUS -> "degrees Celsius";
            case PERCENT -> "per cent";
            case NONE -> "a plain number";
        };
    }

    private static String example(Unit unit) {
        return switch (unit) {
            case MM -> " with its unit and doubt if you can, such as '21.0 mm ± 0.02', '0.827 in' or '8 thou'";
            case DEGREES -> " of degrees, such as '25' or '25 ± 0.5'";
            case CM3 -> " of cubic centimetres, such as '9.8 cm3 ± 0.1'";
            case KPA -> " of kilopascals, such as '900' or '9 bar'";
            case NEWTON -> " of newtons, such as '180'";
            case NEWTON_METRE -> " of newton metres, such as '9 N.m ± 1'";
            case CELSIUS -> " of degrees Celsius, such as '100 degC'";
            case PERCENT -> " of per cent, such as '10'";
            case NONE -> ", such as '1.1'";
        };
    }
}
