package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Countable;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Way;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Rules that hang on the sizes of the parts at hand alone; asked again only when a part or a size has changed. */
final class PartsRule implements Rule {
    private final List<Rule> rules;
    private volatile Optional<Answer> last = Optional.empty();

    /** All that the rules look at, of one position. */
    private record AtHand(Position position, Optional<Part> part, Way way, long shownBy, long worked) {}

    private record Answer(EngineBook book, List<InstrumentKept> with, List<AtHand> parts, List<Alarm> alarms) {
        boolean isOf(Build build, List<AtHand> otherParts) {
            return parts.equals(otherParts) && with.equals(build.instruments()) && book.equals(build.book());
        }
    }

    PartsRule(Rule... rules) {
        this.rules = List.of(rules);
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        List<AtHand> parts = build.structure().positions().stream()
                .filter(position -> !position.sizes().isEmpty())
                .map(position -> atHand(build, position))
                .toList();
        return last
                .filter(answer -> answer.isOf(build, parts))
                .orElseGet(() -> answered(build, parts))
                .alarms()
                .stream();
    }

    private Answer answered(Build build, List<AtHand> parts) {
        Answer answer = new Answer(
                build.book(),
                build.instruments(),
                parts,
                rules.stream().flatMap(rule -> rule.alarms(build)).toList());
        last = Optional.of(answer);
        return answer;
    }

    private static AtHand atHand(Build build, Position position) {
        Optional<Part> part = build.partFor(position.id());
        return new AtHand(
                position,
                part,
                build.place(position.id()).way(),
                Laying.shownBy(build, position.id()),
                Countable.since(build, position.id(), part.map(Part::name).orElse("")));
    }
}
