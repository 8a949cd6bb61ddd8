package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import java.util.List;
import java.util.stream.Stream;

/** The blocks of a book about the first start, what is filled in, and running in. */
final class CommissioningForms {
    /** The slowest and fastest mean piston speed that a limit can name, in m/s; generous, common practice, no source. */
    static final double SLOWEST = 0.5;

    static final double FASTEST = 25;

    private static final int MOST_MINUTES = 60_000;

    private CommissioningForms() {}

    static final Form PROVED_BY = new Form(
            "proof of the start's points",
            "The checks that prove each point of the list before the first start.",
            Stream.of(StartPoint.values())
                    .map(point -> key(point.word(), new Value.OfIds(), "Checks that prove: " + point.what() + "."))
                    .toList());

    static final Form START = new Form(
            "first start",
            "The first start and the list before it.",
            List.of(
                    new Form.Key("step", new Value.OfText(), true, "step", "The step that is the first start."),
                    key("proved-by", new Value.OfBlock(PROVED_BY), PROVED_BY.description()),
                    key(
                            "without",
                            new Value.OfWords(StartPoint.allWords()),
                            "Points of the list that this engine does not have, such as gears.")));

    static final Form FLUID = new Form(
            "fluid",
            "What is filled in.",
            List.of(
                    Keys.id("fluid"),
                    new Form.Key("name", new Value.OfText(), true, "name", "What a fitter calls it."),
                    key("amount", new Value.OfText(), "How much, with its unit, as the maker says it."),
                    key("grade", new Value.OfText(), "Which kind."),
                    key("at", new Value.OfText(), "Where it is filled in, and to what mark."),
                    key("proved-by", new Value.OfIds(), "Checks that prove that it is in."),
                    Keys.note()));

    static final Form STAGE = new Form(
            "stage",
            "A stage of running in.",
            List.of(
                    Keys.id("stage"),
                    new Form.Key("name", new Value.OfText(), true, "name", "What a fitter calls it."),
                    new Form.Key(
                            "minutes",
                            new Value.OfWhole(1, MOST_MINUTES),
                            true,
                            "minutes",
                            "How long the engine runs in it, at least."),
                    key(
                            "heats",
                            new Value.OfWhole(0, 50),
                            "How often it is warmed and let go cold in it; none if left out."),
                    key("km", new Value.OfWhole(1, 20_000), "The distance that the maker gives for it, in km."),
                    key("load", new Value.OfText(), "How hard it may work."),
                    key("most-rpm", new Value.OfWhole(100, 20_000), "The greatest engine speed, in turns a minute."),
                    key(
                            "piston-speed",
                            new Value.OfSize(Unit.NONE, SLOWEST, FASTEST),
                            "The greatest mean piston speed in m/s, a bare number; the engine speed follows from the stroke."),
                    key("do", new Value.OfTexts(), "How it is driven, a sentence each."),
                    key(
                            "then",
                            new Value.OfIds(),
                            "What is done after it: steps, checks, joints to tighten again and fluids to change.")));

    static final Form RUNNING_IN = new Form(
            "scheme of running in",
            "How the engine is run in.",
            List.of(
                    key("source", new Value.OfText(), "Where the scheme comes from, such as a page of the manual."),
                    key("stages", new Value.OfList(STAGE), "Its stages, in order.")));

    /** The keys of the book itself. */
    static List<Form.Key> keys() {
        return List.of(
                key("start", new Value.OfBlock(START), START.description()),
                key("fluids", new Value.OfList(FLUID), "What is filled in."),
                key("running-in", new Value.OfBlock(RUNNING_IN), RUNNING_IN.description()));
    }

    private static Form.Key key(String name, Value value, String description) {
        return new Form.Key(name, value, false, name.replace('-', ' '), description);
    }
}
