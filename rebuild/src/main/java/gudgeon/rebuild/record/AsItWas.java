package gudgeon.rebuild.record;

import gudgeon.rebuild.book.Engine;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.sentence.Amount;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/** Which engine it is, and how it was found. */
record AsItWas(Build build) {
    List<Chapter> chapters() {
        return List.of(
                new Chapter("identity", "Which engine", identity()), new Chapter("found", "As it was found", found()));
    }

    private List<Block> identity() {
        Engine engine = build.book().engine();
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                said("Engine book: " + engine.name() + (engine.maker().isEmpty() ? "" : ", " + engine.maker()) + "."));
        if (!engine.note().isEmpty()) {
            blocks.add(said(engine.note()));
        }
        build.started().ifPresent(started -> {
            if (!started.engine().isEmpty()) {
                blocks.add(said("Called: " + started.engine() + "."));
            }
            if (!started.book().isEmpty()) {
                blocks.add(said("The engine book that it was begun with has the SHA-256 hash " + started.book() + "."));
            }
        });
        if (build.size() > 0) {
            blocks.add(said("The journal has " + Amount.of(build.size(), "entry", "entries") + ", from "
                    + day(build.entry(1)) + " to " + day(build.entry(build.size())) + "."));
        }
        return blocks;
    }

    /** What was seen, read and taken off before anything was fitted. */
    private List<Block> found() {
        long last = firstFitted() - 1;
        List<Block> blocks = new ArrayList<>();
        build.started()
                .ifPresent(started ->
                        blocks.add(said("It was found " + started.found().words() + ".")));
        blocks.addAll(Extract.of(build, 1, last, AsItWas::isOfFinding));
        return blocks;
    }

    private static boolean isOfFinding(Fact fact) {
        return (fact instanceof Fact.TakenOff off && !off.remark().isEmpty())
                || fact instanceof Fact.FaultFound
                || fact instanceof Fact.Noted
                || fact instanceof Finding;
    }

    private long firstFitted() {
        return LongStream.rangeClosed(1, build.size())
                .filter(number -> build.fact(number)
                        .filter(fact -> fact instanceof Fact.Fitted || fact instanceof Fact.StepDone)
                        .isPresent())
                .findFirst()
                .orElse(build.size() + 1);
    }

    private static String day(Entry entry) {
        return entry.at().atZone(ZoneOffset.UTC).toLocalDate().toString();
    }

    private static Block said(String sentence) {
        return new Block.Said(sentence, List.of());
    }
}
