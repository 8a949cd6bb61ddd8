package gudgeon.rebuild.find;

import java.util.List;
import java.util.Optional;

/**
 * A test that tells suspects apart.
 *
 * @param id its stable name, which the journal keeps
 * @param name what is done, in a few words
 * @param how what to do, each a sentence
 * @param cautions what can hurt, each a sentence
 * @param minutes work of the test itself, above 0
 * @param opens the position, step or check that has to be got at before it can be made; empty where nothing comes off
 * @param answers what may come of it, two or more
 */
public record Test(
        String id,
        String name,
        List<String> how,
        List<String> cautions,
        int minutes,
        Optional<String> opens,
        List<Answer> answers) {
    public Test {
        how = List.copyOf(how);
        cautions = List.copyOf(cautions);
        answers = List.copyOf(answers);
        if (minutes <= 0 || answers.size() < 2) {
            throw new IllegalArgumentException("a test takes time and has two answers or more: " + id);
        }
    }

    /** Its answer of that id. */
    public Optional<Answer> answer(String answer) {
        return answers.stream().filter(one -> one.id().equals(answer)).findFirst();
    }

    /** How likely an answer comes if a suspect is the cause, from 0 to 1. */
    public double chance(Answer answer, Suspect suspect) {
        return answer.chances().getOrDefault(suspect.id(), 1.0 / answers.size());
    }
}
