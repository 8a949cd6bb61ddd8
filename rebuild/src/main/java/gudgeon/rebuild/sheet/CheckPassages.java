package gudgeon.rebuild.sheet;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;

/** What there is to say of a check, in the order in which a hand needs it. */
final class CheckPassages {
    private final Check check;
    private final Structure structure;
    private final List<Passage> passages = new ArrayList<>();

    CheckPassages(Check check, Structure structure) {
        this.check = check;
        this.structure = structure;
    }

    List<Passage> all() {
        names("holds", check.holds());
        add("tools", check.tools().isEmpty() ? List.of() : List.of(String.join(", ", check.tools())));
        add("how", how());
        add("reading", check.expect().map(Expect::words).stream().toList());
        names("proves", check.clears());
        names("only after", check.after());
        add("void by", disturbedBy());
        add("so late", check.late().isEmpty() ? List.of() : List.of(check.late()));
        add("time", check.minutes() > 0 ? List.of("about " + Amount.time(check.minutes())) : List.of());
        return passages;
    }

    private List<String> how() {
        List<String> how = new ArrayList<>(List.of(Sentence.of(check.how().words())));
        how.addAll(check.instructions());
        return how;
    }

    private List<String> disturbedBy() {
        List<String> by = new ArrayList<>(
                check.disturbedBy().stream().map(structure::name).toList());
        if (check.disturbedByBlasting()) {
            by.add("blasting any of what it proves");
        }
        return by.isEmpty() ? List.of() : List.of(String.join("; ", by));
    }

    private void names(String heading, List<String> ids) {
        add(
                heading,
                ids.isEmpty()
                        ? List.of()
                        : List.of(String.join(
                                "; ", ids.stream().map(structure::name).toList())));
    }

    private void add(String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            passages.add(new Passage(heading, lines));
        }
    }
}
