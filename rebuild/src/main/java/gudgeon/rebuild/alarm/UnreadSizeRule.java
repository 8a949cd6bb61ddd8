package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Unread;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A size that was measured does not count, since it can't be read, or sizes that can't go together were measured. */
final class UnreadSizeRule implements Rule {
    private final Fits fits;

    UnreadSizeRule(Fits fits) {
        this.fits = fits;
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        Optional<AsMeasured> parts = AsMeasured.of(build);
        Map<String, Unread> byPosition = new LinkedHashMap<>();
        parts.ifPresent(found -> found.unread().stream()
                .filter(Unread::garbled)
                .forEach(size -> byPosition.putIfAbsent(size.position(), size)));
        Stream<Alarm> unread = byPosition.values().stream()
                .map(size -> alarm(size.position(), size.sentence(), build, size.position()));
        Stream<Alarm> impossible = parts
                .filter(found -> !found.laid().isEmpty())
                .filter(found -> fits.of(found).isEmpty())
                .map(found -> found.laid().get(found.laid().size() - 1).position())
                .map(position -> alarm(
                        position.id(),
                        "The sizes measured on the " + position.name() + " can't go together with the others.",
                        build,
                        position.id()))
                .stream();
        return Stream.concat(unread, impossible);
    }

    private static Alarm alarm(String at, String what, Build build, String position) {
        long number = Laying.shownBy(build, position);
        return new Alarm(
                AlarmKind.UNREAD,
                Severity.LOOK,
                at,
                what,
                "The trial fit goes on with the book's size, as if nothing had been measured.",
                "Correct the entry, or measure it again.",
                number > 0 ? List.of(number) : List.of(),
                List.of());
    }
}
