package gudgeon.rebuild.find;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A suspect of a trouble that no size tells of, as the trade knows it.
 *
 * @param id its stable name, which the journal keeps
 * @param name what a fitter calls it
 * @param odds how likely it is against the others before anything was seen; common practice, no source
 * @param lies what its positions are called in a book
 * @param shows how it shows, a sentence
 */
record Cause(String id, String name, double odds, Pattern lies, String shows) {
    /** Of a cause that lies at no position of a book. */
    static final String NOWHERE = "(?!)";

    private static final String BASIS = "; common practice, no source.";

    static Cause of(String id, String name, double odds, String lies, String shows) {
        return new Cause(id, name, odds, Pattern.compile(lies), shows);
    }

    Suspect in(Reach reach) {
        List<String> at = reach.called(lies);
        return new Suspect(
                id,
                name,
                odds,
                "Odds " + (odds == 1 ? "1" : String.valueOf(odds)) + " against the other causes" + BASIS,
                at,
                shows,
                Optional.empty());
    }
}
