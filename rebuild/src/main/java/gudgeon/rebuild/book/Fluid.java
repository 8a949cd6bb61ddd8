package gudgeon.rebuild.book;

import java.util.List;

/**
 * What is filled in.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param amount how much, with its unit, as the maker says it; may be empty
 * @param grade which kind; may be empty
 * @param at where it is filled in, and to what mark; may be empty
 * @param provedBy checks that prove that it is in; none where it is to be ticked
 * @param note the writer's note, may be empty
 */
public record Fluid(
        String id, String name, String amount, String grade, String at, List<String> provedBy, String note) {
    public Fluid {
        provedBy = List.copyOf(provedBy);
    }
}
