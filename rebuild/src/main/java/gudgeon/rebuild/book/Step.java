package gudgeon.rebuild.book;

import java.util.List;

/**
 * One act of assembly.
 *
 * @param id its name in the book
 * @param name what is done, as a fitter says it
 * @param instructions how it is done, sentences
 * @param fits positions it fills
 * @param into castings or parts that it builds into, positions
 * @param needs steps that must be done first
 * @param covers positions that can't be reached or taken off while what it fits stays in place
 * @param tightens joints
 * @param oil where oil goes, sentences
 * @param grease where grease goes, sentences
 * @param sealant where sealant goes, sentences
 * @param tools what it takes
 * @param minutes likely time of work; 0 where the book does not say
 * @param setMinutes time to set, dry or cool before what stands on it
 * @param cautions what can hurt, sentences
 * @param where where it stands in the file
 */
public record Step(
        String id,
        String name,
        List<String> instructions,
        List<String> fits,
        List<String> into,
        List<String> needs,
        List<String> covers,
        List<String> tightens,
        List<String> oil,
        List<String> grease,
        List<String> sealant,
        List<String> tools,
        int minutes,
        int setMinutes,
        List<String> cautions,
        Where where) {
    public Step {
        instructions = List.copyOf(instructions);
        fits = List.copyOf(fits);
        into = List.copyOf(into);
        needs = List.copyOf(needs);
        covers = List.copyOf(covers);
        tightens = List.copyOf(tightens);
        oil = List.copyOf(oil);
        grease = List.copyOf(grease);
        sealant = List.copyOf(sealant);
        tools = List.copyOf(tools);
        cautions = List.copyOf(cautions);
    }
}
