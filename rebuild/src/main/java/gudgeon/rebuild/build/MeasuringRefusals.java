package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Measuring.Stocked;
import java.util.List;
import java.util.OptionalDouble;

/** Why a fact about measuring can't be taken down as it stands. */
final class MeasuringRefusals {
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_TEXT = 120;
    private static final int MOST_SHIMS = 200;
    /** Colder than dry ice and hotter than any case or bearing is warmed; common practice, no source. */
    private static final double COLDEST_DEG_C = -100;

    private static final double HOTTEST_DEG_C = 300;

    private final Build build;
    private final List<String> sentences;

    MeasuringRefusals(Build build, List<String> sentences) {
        this.build = build;
        this.sentences = sentences;
    }

    void look(Measuring fact) {
        if (fact instanceof ReadingTaken reading) {
            build.structure().dimension(reading.dimension()).ifPresent(dimension -> reading(dimension, reading));
            celsius(reading.celsius());
        } else if (fact instanceof InstrumentKept kept) {
            instrument(kept);
        } else if (fact instanceof FittingSaid fitting) {
            celsius(fitting.celsius());
        } else if (fact instanceof Stocked stocked) {
            stocked(stocked);
        }
    }

    private void reading(Dimension dimension, ReadingTaken reading) {
        if (!dimension.isRead()) {
            sentences.add("The " + dimension.name()
                    + " is worked out from other dimensions and not read. Measure those it follows from.");
        }
        if (TypedSize.of(dimension.unit(), reading.value(), 1) instanceof TypedSize.Refused refused) {
            sentences.add("The " + dimension.name() + ": " + refused.sentence());
        }
        if (reading.piece() < 1 || reading.piece() > dimension.pieces()) {
            sentences.add("The " + dimension.name() + " is measured on pieces 1 to " + dimension.pieces() + ", not "
                    + reading.piece() + ".");
        }
        List<String> places = dimension.places().all();
        if (!places.contains(reading.at())) {
            sentences.add(
                    places.equals(List.of(""))
                            ? "The " + dimension.name() + " has one place only, not '" + reading.at() + "'."
                            : "The " + dimension.name() + " has no place '" + reading.at() + "'. It is measured at: "
                                    + String.join("; ", places) + ".");
        }
        if (build.part(dimension.of(), reading.part()).isEmpty()) {
            sentences.add("No part '" + reading.part() + "' is entered for '"
                    + build.structure().name(dimension.of()) + "'. Enter it first.");
        }
        if (!reading.instrument().isEmpty()
                && build.instruments().stream()
                        .noneMatch(kept -> kept.instrument().equals(reading.instrument()))) {
            sentences.add("There is no instrument '" + reading.instrument()
                    + "' in your list. Choose one of the list, or add it first.");
        }
    }

    private void instrument(InstrumentKept kept) {
        if (kept.instrument().isBlank() || kept.instrument().length() > LONGEST_NAME) {
            sentences.add(
                    "Give the instrument a name of 1 to " + LONGEST_NAME + " letters, such as 'micrometer 25 to 50'.");
        }
        if (List.of(kept.range(), kept.resolution(), kept.error()).stream()
                .anyMatch(text -> text.length() > LONGEST_TEXT)) {
            sentences.add("Range, resolution and error are a few words, such as '0.01 mm'. Shorten them.");
        }
    }

    private void celsius(OptionalDouble said) {
        if (said.isPresent() && !(said.getAsDouble() >= COLDEST_DEG_C && said.getAsDouble() <= HOTTEST_DEG_C)) {
            sentences.add("A temperature here is " + Math.round(COLDEST_DEG_C) + " to " + Math.round(HOTTEST_DEG_C)
                    + " °C. Write it in degrees Celsius.");
        }
    }

    private void stocked(Stocked stocked) {
        if (stocked.sizes().size() > MOST_SHIMS) {
            sentences.add("At most " + MOST_SHIMS + " shims can be written for one position.");
        }
        stocked.sizes().stream().limit(MOST_SHIMS).forEach(size -> {
            TypedSize typed = TypedSize.of(Unit.MM, size, 1);
            if (typed instanceof TypedSize.Refused refused) {
                sentences.add("Shim: " + refused.sentence());
            } else if (typed instanceof TypedSize.Read read && read.value() <= 0) {
                sentences.add("Shim: a thickness is more than 0, not '" + size + "'.");
            }
        });
    }
}
