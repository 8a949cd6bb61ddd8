package gudgeon.bench.web.fit;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.fit.Choice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the page's form asks for: as it was typed, as it was understood, and what could not be.
 *
 * @param pistonId the piston chosen
 * @param gasketId the gasket chosen
 * @param otherId the piston to compare with, empty for none
 * @param teeth teeth moved, as typed
 * @param clearance valve clearance, as typed; empty for the book's
 * @param turned whether the piston is turned by half a turn
 * @param lengths the system in which lengths are shown
 * @param atDeg crank angle of the cursor; empty to stand at the worst gap
 * @param typed text of each size that differs from the book's, by its path
 * @param settle whether doubts are to be settled by drawing
 * @param choice what was understood
 * @param faults a sentence for each field that could not be understood, by the field's name
 */
public record Asked(
        String pistonId,
        String gasketId,
        String otherId,
        String teeth,
        String clearance,
        boolean turned,
        Lengths lengths,
        OptionalDouble atDeg,
        Map<String, String> typed,
        boolean settle,
        Choice choice,
        Map<String, String> faults) {
    /** Begins the name of every field that holds a size. */
    public static final String SIZE = "size.";

    private static final int LONGEST = 200;

    public Asked {
        typed = Map.copyOf(typed);
        faults = Map.copyOf(faults);
    }

    /** Reads the fields of a form. */
    static Asked of(Geometry book, Map<String, List<String>> fields) {
        return new Reader(book, fields).read();
    }

    /** Reads one form. */
    private static final class Reader {
        private final Geometry book;
        private final Map<String, List<String>> fields;
        private final Lengths typedIn;
        private final Lengths lengths;
        private final Map<String, String> typed = new LinkedHashMap<>();
        private final Map<String, Double> changed = new LinkedHashMap<>();
        private final Map<String, String> faults = new LinkedHashMap<>();

        Reader(Geometry book, Map<String, List<String>> fields) {
            this.book = book;
            this.fields = fields;
            this.lengths = Lengths.named(field("units"));
            this.typedIn = field("shown").isEmpty() ? lengths : Lengths.named(field("shown"));
        }

        Asked read() {
            String piston = known(
                    "piston",
                    book.piston(field("piston")).isPresent(),
                    book.pistons().get(0).id());
            String gasket = known(
                    "gasket",
                    book.gasket(field("gasket")).isPresent(),
                    book.gaskets().get(0).id());
            String other = book.piston(field("other")).isPresent() ? field("other") : "";
            boolean turned = !field("turned").isEmpty();
            int teeth = teeth();
            OptionalDouble clearance = clearance();
            sizes(piston, gasket);
            Choice choice = new Choice(Optional.of(piston), Optional.of(gasket), teeth, clearance, turned, changed);
            return new Asked(
                    piston,
                    gasket,
                    other,
                    field("teeth").isEmpty() ? "0" : field("teeth"),
                    carried(field("clearance"), Unit.MM),
                    turned,
                    lengths,
                    at(),
                    typed,
                    !field("settle").isEmpty(),
                    choice,
                    faults);
        }

        private String field(String name) {
            List<String> values = fields.getOrDefault(name, List.of());
            String text = values.isEmpty() ? "" : values.get(0).strip();
            return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        }

        private String known(String name, boolean isKnown, String first) {
            if (!isKnown && !field(name).isEmpty()) {
                faults.put(name, "The book has no " + name + " of that name; " + first + " is taken.");
            }
            return isKnown ? field(name) : first;
        }

        private int teeth() {
            String text = field("teeth").replace('−', '-');
            if (text.isEmpty() || text.matches("[+-]?\\d{1,3}")) {
                return text.isEmpty() ? 0 : Integer.parseInt(text);
            }
            faults.put("teeth", "Teeth moved is a whole number, such as 1 for one tooth later or −1 for one earlier.");
            return 0;
        }

        private OptionalDouble clearance() {
            String text = field("clearance");
            if (text.isEmpty()) {
                return OptionalDouble.empty();
            }
            OptionalDouble value = value("clearance", text, Unit.MM);
            if (value.isPresent() && value.getAsDouble() < 0) {
                faults.put("clearance", "A valve clearance is 0 or more.");
                return OptionalDouble.empty();
            }
            return value;
        }

        private OptionalDouble value(String field, String text, Unit unit) {
            TypedSize read = TypedSize.of(unit, text, typedIn.mm());
            if (read instanceof TypedSize.Refused refused) {
                faults.put(field, refused.sentence());
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(((TypedSize.Read) read).value());
        }

        /** Takes up the sizes that differ from the book's: as typed, and those that can be used by value. */
        private void sizes(String piston, String gasket) {
            String back = field("back");
            book.sizes().forEach((path, size) -> {
                String name = SIZE + path;
                boolean asBooked = !fields.containsKey(name)
                        || field(name).equals(typedIn.number(size.value(), size.unit()))
                        || path.equals(back)
                        || !SizeGroup.fitted(path, piston, gasket);
                if (!asBooked) {
                    typed.put(path, carried(field(name), size.unit()));
                    value(name, field(name), size.unit()).ifPresent(value -> changed.put(path, value));
                }
            });
        }

        /** A bare length typed in the other system gets its unit written behind it, so that nothing is rounded. */
        private String carried(String text, Unit unit) {
            boolean bare = text.matches("[-−+]?[\\d.,/ ]*\\d[\\d.,/ ]*");
            return unit == Unit.MM && typedIn != lengths && bare ? text + " " + typedIn.symbol() : text;
        }

        private OptionalDouble at() {
            String text = field("at");
            return text.matches("\\d{1,3}(\\.\\d{1,2})?") && Double.parseDouble(text) <= 720
                    ? OptionalDouble.of(Double.parseDouble(text))
                    : OptionalDouble.empty();
        }
    }
}
