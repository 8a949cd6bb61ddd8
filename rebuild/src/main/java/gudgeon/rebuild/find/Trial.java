package gudgeon.rebuild.find;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** A test as the trade makes it: which cause brings which of its answers about. */
final class Trial {
    static final String ASSUMPTION =
            "A cause brings its answer of a test about in 90 of 100 cases: common practice, no source.";

    /** How surely a cause brings its answer about: common practice, no source. */
    private static final double SURELY = 0.9;

    private final String id;
    private final String name;
    private final List<String> how;
    private final List<String> cautions;
    private final int minutes;
    private Optional<Pattern> opens = Optional.empty();
    private final Map<String, String> answers = new LinkedHashMap<>();
    private final Map<String, List<String>> brings = new HashMap<>();

    Trial(String id, String name, int minutes, List<String> how, List<String> cautions) {
        this.id = id;
        this.name = name;
        this.minutes = minutes;
        this.how = List.copyOf(how);
        this.cautions = List.copyOf(cautions);
    }

    /** Something that has to come off first, by what it is called. */
    Trial opens(String position) {
        opens = Optional.of(Pattern.compile(position));
        return this;
    }

    /** An answer, and the causes that bring it about. */
    Trial answer(String answer, String words, String... causes) {
        answers.put(answer, words);
        brings.put(answer, List.of(causes));
        return this;
    }

    /** The answer of every cause that no other one names. */
    Trial otherwise(String answer, String words) {
        return answer(answer, words);
    }

    Test in(Reach reach, List<Cause> causes) {
        String rest = answers.keySet().stream()
                .filter(answer -> brings.getOrDefault(answer, List.of()).isEmpty())
                .findFirst()
                .orElseThrow();
        List<Answer> all = new ArrayList<>();
        answers.forEach((answer, words) -> {
            Map<String, Double> chances = new HashMap<>();
            for (Cause cause : causes) {
                String its = brings.entrySet().stream()
                        .filter(entry -> entry.getValue().contains(cause.id()))
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .orElse(rest);
                chances.put(cause.id(), its.equals(answer) ? SURELY : (1 - SURELY) / (answers.size() - 1));
            }
            all.add(new Answer(answer, words, chances));
        });
        return new Test(
                id,
                name,
                how,
                cautions,
                minutes,
                opens.flatMap(pattern -> reach.called(pattern).stream().findFirst()),
                all);
    }
}
