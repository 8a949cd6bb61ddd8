package gudgeon.rebuild.source;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.source.OrderLine.State;
import gudgeon.rebuild.source.SizeCompared.Agrees;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to write to a seller when a part is short, late or not what was ordered: facts with their figures, and what is asked for.
 *
 * @param to who it goes to, as the person writes the name; may be empty
 * @param subject what it is about, one line
 * @param paragraphs the letter, without names of people
 */
public record SellersLetter(String to, String subject, List<String> paragraphs) {
    public SellersLetter {
        paragraphs = List.copyOf(paragraphs);
    }

    /**
     * The letter about an order of which something is short, too many, late or was not ordered.
     *
     * @return empty where nothing of it is
     */
    public static Optional<SellersLetter> of(Build build, String order, LocalDate today) {
        List<OrderLine> wrong = Arrivals.of(build, today).of(order).stream()
                .filter(line -> line.state() != State.COME && line.state() != State.ON_ITS_WAY)
                .toList();
        if (wrong.isEmpty()) {
            return Optional.empty();
        }
        List<String> paragraphs = new ArrayList<>(List.of(greeting(order)));
        wrong.forEach(line -> paragraphs.add(counted(line)));
        if (wrong.stream().anyMatch(line -> line.state() == State.SHORT || line.state() == State.LATE)) {
            paragraphs.add("Please tell me when I can expect what is missing, or refund it.");
        }
        if (wrong.stream().anyMatch(line -> line.state() == State.TOO_MANY || line.state() == State.NOT_ORDERED)) {
            paragraphs.add("Please tell me whether and how you want back what I did not order.");
        }
        String from = wrong.stream()
                .map(OrderLine::from)
                .filter(name -> !name.isEmpty())
                .findFirst()
                .orElse("");
        return Optional.of(new SellersLetter(from, subject(order, "not complete as ordered"), paragraphs));
    }

    /**
     * The letter about a part that does not agree.
     *
     * @return empty where the inspection does not refuse it
     */
    public static Optional<SellersLetter> of(Build build, Inspection inspection) {
        if (inspection.outcome() != Inspection.Outcome.REFUSE) {
            return Optional.empty();
        }
        Optional<Ordered> ordered = build.told(Ordered.class, inspection.position()).stream()
                .map(Told::fact)
                .filter(order -> order.part().isEmpty() || order.part().equals(inspection.part()))
                .reduce((before, later) -> later);
        String order = ordered.map(Ordered::order).orElse("");
        List<String> paragraphs = new ArrayList<>(List.of(greeting(order)));
        paragraphs.add("The " + inspection.name() + " is not as wanted:");
        inspection.sizes().stream()
                .filter(size -> size.agrees() == Agrees.NO)
                .forEach(size -> paragraphs.add(measured(size)));
        inspection
                .differing()
                .forEach(what -> paragraphs.add(Sentence.capital(what) + ": differs from the part that it replaces."));
        paragraphs.add(
                "It has not been fitted. Please tell me whether you can send one that agrees, or how to return it"
                        + " against a refund.");
        return Optional.of(new SellersLetter(
                ordered.map(Ordered::from).orElse(""),
                subject(order, inspection.name() + " not as wanted"),
                paragraphs));
    }

    /** The letter as one text. */
    public String text() {
        return subject + "\n\n" + String.join("\n\n", paragraphs) + "\n";
    }

    private static String subject(String order, String what) {
        return (order.isEmpty() ? "My order: " : "Order " + order + ": ") + what;
    }

    private static String greeting(String order) {
        return "I am writing about my order" + (order.isEmpty() ? "." : " " + order + ".");
    }

    private static String counted(OrderLine line) {
        String part = line.name() + (line.part().isEmpty() ? "" : " (" + line.part() + ")");
        return Sentence.capital(part) + ": ordered " + line.ordered() + ", arrived " + line.came() + "."
                + (line.state() == State.LATE
                        ? line.due()
                                .map(day -> " It was to be here by " + day + ".")
                                .orElse("")
                        : "");
    }

    private static String measured(SizeCompared size) {
        String wanted = size.ordered().isEmpty() ? size.booked() : size.ordered();
        return Sentence.capital(size.label()) + ": wanted " + (wanted.isEmpty() ? "as the old part" : wanted)
                + ", found "
                + size.found() + (size.old().isEmpty() ? "." : "; the part it replaces has " + size.old() + ".")
                + (size.mates().isEmpty() ? "" : " " + String.join(" ", size.mates()));
    }
}
