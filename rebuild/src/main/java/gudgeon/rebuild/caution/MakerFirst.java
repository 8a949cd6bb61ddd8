package gudgeon.rebuild.caution;

import java.util.List;

/** What comes before anything that Gudgeon says, in the words that page, print and record share. */
public final class MakerFirst {
    private static final List<String> SENTENCES = List.of(
            "The maker's manual comes first, then the safety sheet of each product, then the rules of the place where you work.",
            "Some work belongs to those licensed or equipped for it: removing asbestos, welding tanks, gas and mains, pressing and truing cranks.",
            "The cautions are those usual for each step. They are not all that can happen, and they clear nobody.",
            "What Gudgeon writes is a record of what was read and done, and no certificate of safety, roadworthiness or value.");

    private MakerFirst() {}

    /** It, a sentence each. */
    public static List<String> sentences() {
        return SENTENCES;
    }
}
