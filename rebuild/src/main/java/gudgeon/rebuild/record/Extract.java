package gudgeon.rebuild.record;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Telling;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;

/** Sentences of a journal. */
final class Extract {
    private Extract() {}

    /** What the facts of some kind say that count, in order, each with its entry. */
    static List<Block> of(Build build, Predicate<Fact> which) {
        return of(build, 1, build.size(), which);
    }

    /** The same of the entries from one number to another. */
    static List<Block> of(Build build, long from, long to, Predicate<Fact> which) {
        return LongStream.rangeClosed(from, to)
                .boxed()
                .flatMap(number -> build
                        .fact(number)
                        .filter(which)
                        .map(fact -> (Block) new Block.Said(Telling.of(fact, build.structure()), List.of(number)))
                        .stream())
                .toList();
    }
}
