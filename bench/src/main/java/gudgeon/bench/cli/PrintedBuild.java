package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a command that prints was told: a build unless files tell it, what of it, and the file to write.
 *
 * @param build the build
 * @param name what a person calls it
 * @param what the words between build and file
 * @param file the file to write
 */
record PrintedBuild(Build build, String name, List<String> what, Path file) {
    /**
     * Sorts the words of a command line: {@code [BUILD] WHAT... FILE}.
     *
     * @param whats how many words stand between build and file
     * @param named what those words are, to say what is too much
     */
    static PrintedBuild of(AskedBuild asked, List<String> words, int whats, String named) {
        int most = whats + 2;
        if (words.size() > most) {
            throw new Unusable("'" + words.get(most) + "' is one word too many; name " + named + ".");
        }
        Optional<String> id = words.size() == most ? Optional.of(words.get(0)) : Optional.empty();
        int last = words.size() - 1;
        return new PrintedBuild(
                asked.build(id), asked.name(id), words.subList(last - whats, last), Path.of(words.get(last)));
    }
}
